#include "app/batch/workshop.hpp"

#include <algorithm>
#include <mutex>
#include <set>

#include "app/batch/file_name.hpp"
#include "app/sheets/sheets.hpp"
#include "app/words/language.hpp"
#include "core/assess/side_by_side.hpp"

namespace loam::batch {

namespace {

// Between working out and painting the languages change, so not every row waits for the last climate, and not every
// assessment is held at once.
constexpr std::size_t rows_at_once = 64;

// These print no remedy but that of a danger.
bool prints_remedies(sheets::Sheet sheet)
{
    using enum sheets::Sheet;
    return sheet != shopping && sheet != budget && sheet != running && sheet != year && sheet != winter_rest;
}

QStringList lent_names(const Job& job, const Adopter& who)
{
    QStringList names;
    for (const plan::OwnedItem& one : job.lent) {
        const catalog::Item* item = catalog::find_item(job.catalogs.at(who.language).prices, one.item);
        names << QString::fromStdString(item != nullptr ? item->name : one.item);
    }
    return names;
}

bool leaves_danger_open(const assess::Assessment& assessment)
{
    return std::any_of(assessment.findings.begin(), assessment.findings.end(),
                       [](const Finding& finding) { return finding.verdict == Verdict::danger && !finding.remedy; });
}

} // namespace

// The search for remedies takes as long as all before it, and is left out where no page would show its answer.
std::optional<Workshop::Finished> Workshop::assess_one(std::size_t adopter, assess::Workspace& workspace,
                                                       const std::stop_token& stop) const
{
    const Adopter& who = adopters_[adopter];
    const catalog::Catalog& catalog = job_.catalogs.at(who.language);
    const auto until = [&](assess::Until stage) {
        return assess::assess(who.plan, catalog, job_.date, workspace, stop, {}, stage);
    };
    auto assessment = until(assess::Until::courses);
    if (!assessment) {
        return std::nullopt;
    }
    std::vector<sheets::Sheet> sheets = job_.sheets.value_or(sheets::usual_sheets(*assessment));
    if (std::any_of(sheets.begin(), sheets.end(), prints_remedies) || leaves_danger_open(*assessment)) {
        assessment = until(assess::Until::remedies);
        if (!assessment) {
            return std::nullopt;
        }
    }
    return Finished{adopter, std::move(*assessment), std::move(sheets)};
}

std::vector<Workshop::Finished> Workshop::assess_groups(const std::vector<Group>& groups, const std::stop_token& stop)
{
    std::vector<Group> climates;
    for (const Group& group : groups) {
        if (climates.empty() || climates.back().climate != group.climate) {
            climates.push_back({group.climate, {}});
        }
        std::vector<std::size_t>& all = climates.back().adopters;
        all.insert(all.end(), group.adopters.begin(), group.adopters.end());
    }
    std::vector<assess::Workspace> workspaces(climates.size());
    if (last_ && last_climate_ == climates.front().climate) {
        workspaces.front() = std::move(*last_);
    }
    std::vector<std::vector<Finished>> by_group(climates.size());
    assess::side_by_side(climates.size(), [&](std::size_t g) {
        for (const std::size_t adopter : climates[g].adopters) {
            if (auto one = assess_one(adopter, workspaces[g], stop)) {
                by_group[g].push_back(std::move(*one));
            }
        }
    });
    last_climate_ = climates.back().climate;
    last_ = std::move(workspaces.back());
    std::vector<Finished> all;
    for (std::vector<Finished>& group : by_group) {
        std::move(group.begin(), group.end(), std::back_inserter(all));
    }
    return all;
}

QString Workshop::paint_one(const Finished& one) const
{
    const Adopter& who = adopters_[one.adopter];
    const sheets::Request request{.plan = who.plan,
                                  .assessment = one.assessment,
                                  .catalog = job_.catalogs.at(who.language),
                                  .formatter = words::formatter_in(who.language, who.units),
                                  .paper = job_.paper,
                                  .sheets = one.sheets,
                                  .printed_by = job_.printed_by,
                                  .lent = lent_names(job_, who)};
    Record record = record_of(one.assessment);
    record.row = who.row;
    record.fingerprint = QString::fromLatin1(who.fingerprint);
    record.file = pdf_name(who.row, who.name);
    return folder_.put(record, sheets::pdf_of(request));
}

QString Workshop::paint(const std::vector<Finished>& finished, const std::function<void(std::size_t)>& on_made)
{
    std::set<QString> languages;
    for (const Finished& one : finished) {
        languages.insert(adopters_[one.adopter].language);
    }
    QString error;
    std::mutex telling;
    for (const QString& language : languages) {
        words::speak(language, QLocale(language));
        std::vector<const Finished*> own;
        for (const Finished& one : finished) {
            if (adopters_[one.adopter].language == language) {
                own.push_back(&one);
            }
        }
        assess::side_by_side(own.size(), [&](std::size_t i) {
            const QString failure = paint_one(*own[i]);
            const std::lock_guard guard(telling);
            error = error.isEmpty() ? failure : error;
            if (failure.isEmpty()) {
                on_made(++made_);
            }
        });
    }
    return error;
}

QString Workshop::make(std::vector<Group> work, const std::stop_token& stop,
                       const std::function<void(std::size_t, std::size_t)>& on_progress)
{
    std::stable_sort(work.begin(), work.end(),
                     [](const Group& left, const Group& right) { return left.climate < right.climate; });
    std::size_t total = 0;
    for (const Group& group : work) {
        total += group.adopters.size();
    }
    const auto tell = [&](std::size_t done) {
        if (on_progress) {
            on_progress(done, total);
        }
    };
    tell(0);
    for (std::size_t next = 0; next < work.size() && !stop.stop_requested();) {
        std::vector<Group> batch;
        for (std::size_t rows = 0; next < work.size() && rows < rows_at_once; ++next) {
            rows += work[next].adopters.size();
            batch.push_back(work[next]);
        }
        if (QString error = paint(assess_groups(batch, stop), tell); !error.isEmpty()) {
            return error;
        }
    }
    return {};
}

} // namespace loam::batch
