#include <algorithm>
#include <atomic>

#include "app/batch/folder.hpp"
#include "app/batch/groups.hpp"
#include "app/batch/job.hpp"
#include "app/batch/papers.hpp"
#include "app/batch/said.hpp"
#include "app/batch/workshop.hpp"
#include "app/words/language.hpp"
#include "core/assess/side_by_side.hpp"

namespace loam::batch {

namespace {

std::vector<Adopter> adopters_of(const Job& job)
{
    std::vector<Adopter> adopters(job.list.rows.size());
    const Template shared = job.shared();
    assess::side_by_side(adopters.size(),
                         [&](std::size_t i) { adopters[i] = adopter_of(job.list, job.list.rows[i], shared); });
    return adopters;
}

QString refused_row(std::size_t row)
{
    return Said::tr("Row %1 says something else than when its sheets were made. Ask for that row alone to make them "
                    "again, or name another folder.")
        .arg(row);
}

class Run {
public:
    Run(const Job& job, const Asked& asked) : job_(job), asked_(asked), adopters_(adopters_of(job)) {}

    Outcome go()
    {
        for (const Adopter& adopter : adopters_) {
            outcome_.failed.insert(outcome_.failed.end(), adopter.problems.begin(), adopter.problems.end());
        }
        if (asked_.row && !is_good(*asked_.row)) {
            return end(Trouble::row,
                       Said::tr("Row %1 is not in the list, or has something wrong with it.").arg(*asked_.row));
        }
        QString error;
        folder_ = Folder::open(job_, asked_, error);
        if (!folder_) {
            return end(Trouble::folder, error);
        }
        std::vector<Group> work = groups_to_do(error);
        if (!error.isEmpty()) {
            return end(Trouble::folder, error);
        }
        Workshop workshop(job_, adopters_, *folder_);
        error = workshop.make(work, asked_.stop, asked_.on_progress);
        outcome_.made = workshop.made();
        words::speak(job_.language, QLocale(job_.language));
        if (!error.isEmpty()) {
            return end(Trouble::folder, error);
        }
        outcome_.stopped = asked_.stop.stop_requested();
        return outcome_.stopped || !all_made() ? outcome_ : write_papers();
    }

private:
    Outcome end(Trouble trouble, const QString& error)
    {
        outcome_.trouble = trouble;
        outcome_.error = error;
        return outcome_;
    }

    bool is_good(std::size_t row) const
    {
        return std::any_of(adopters_.begin(), adopters_.end(),
                           [&](const Adopter& one) { return one.row == row && one.problems.empty(); });
    }

    // What is done already and unchanged is passed over, what was changed in the folder is left alone and told.
    bool has_to_be_made(const Adopter& adopter, QString& error)
    {
        if (asked_.row) {
            return adopter.row == *asked_.row;
        }
        const auto found = folder_->records().find(adopter.row);
        if (found == folder_->records().end() || !folder_->is_there(found->second)) {
            return true;
        }
        if (found->second.fingerprint != QString::fromLatin1(adopter.fingerprint)) {
            error = refused_row(adopter.row);
        } else if (!folder_->is_untouched(found->second)) {
            outcome_.touched.push_back(adopter.row);
        }
        ++outcome_.before;
        return false;
    }

    std::vector<Group> groups_to_do(QString& error)
    {
        std::vector<Group> work;
        const std::vector<Group> all = groups_of(adopters_);
        for (const Group& group : asked_.row ? all : slice_of_groups(all, asked_.slice)) {
            Group left{group.climate, {}};
            for (const std::size_t i : group.adopters) {
                if (has_to_be_made(adopters_[i], error)) {
                    left.adopters.push_back(i);
                }
            }
            if (!left.adopters.empty()) {
                work.push_back(std::move(left));
            }
        }
        return work;
    }

    bool all_made() const
    {
        return std::all_of(adopters_.begin(), adopters_.end(), [&](const Adopter& adopter) {
            const auto found = folder_->records().find(adopter.row);
            return !adopter.problems.empty() ||
                   (found != folder_->records().end() && folder_->is_there(found->second) &&
                    found->second.fingerprint == QString::fromLatin1(adopter.fingerprint));
        });
    }

    // One of many slices leaves the papers to whoever puts the slices together.
    Outcome write_papers()
    {
        if (asked_.slice.of > 1) {
            return outcome_;
        }
        const ClubOrder order = club_order(job_, adopters_);
        QString error = folder_->put_paper(QStringLiteral("club-order.csv"), order.csv);
        const auto put = [&](const char* name, const QByteArray& text) {
            error = error.isEmpty() ? folder_->put_paper(QLatin1String(name), text) : error;
        };
        put("club-order.txt", order.text);
        put("summary.csv", summary_csv(folder_->records()));
        put("failed.csv", failed_csv(outcome_.failed));
        error = error.isEmpty() ? folder_->put_together() : error;
        outcome_.complete = error.isEmpty();
        return error.isEmpty() ? outcome_ : end(Trouble::folder, error);
    }

    const Job& job_;
    const Asked& asked_;
    std::vector<Adopter> adopters_;
    std::unique_ptr<Folder> folder_;
    Outcome outcome_;
};

} // namespace

Outcome run(const Job& job, const Asked& asked)
{
    return Run(job, asked).go();
}

} // namespace loam::batch
