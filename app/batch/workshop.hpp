// Where the sheets are made: climates by groups, then pages by languages, both on all cores. Internal to app/batch.
#pragma once

#include <QByteArray>
#include <atomic>
#include <functional>
#include <optional>
#include <stop_token>
#include <vector>

#include "app/batch/folder.hpp"
#include "app/batch/groups.hpp"
#include "core/assess/assess.hpp"

namespace loam::batch {

class Workshop {
public:
    Workshop(const Job& job, const std::vector<Adopter>& adopters, Folder& folder)
        : job_(job), adopters_(adopters), folder_(folder)
    {
    }

    // Returns why a file could not be written, else an empty text. What was begun when `stop` was requested is left.
    QString make(std::vector<Group> work, const std::stop_token& stop,
                 const std::function<void(std::size_t, std::size_t)>& on_progress);

    std::size_t made() const { return made_; }

private:
    // Worked out and not yet painted.
    struct Finished {
        std::size_t adopter = 0;
        assess::Assessment assessment;
        std::vector<sheets::Sheet> sheets;
    };

    // Those of one climate lie beside one another.
    std::vector<Finished> assess_groups(const std::vector<Group>& groups, const std::stop_token& stop);
    std::optional<Finished> assess_one(std::size_t adopter, assess::Workspace& workspace,
                                       const std::stop_token& stop) const;
    QString paint(const std::vector<Finished>& finished, const std::function<void(std::size_t)>& on_made);
    QString paint_one(const Finished& one) const;

    const Job& job_;
    const std::vector<Adopter>& adopters_;
    Folder& folder_;
    std::atomic<std::size_t> made_ = 0;
    // Of the climate that was worked on last: its next rows may follow.
    std::size_t last_climate_ = 0;
    std::optional<assess::Workspace> last_;
};

} // namespace loam::batch
