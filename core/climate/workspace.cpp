#include "core/climate/workspace.hpp"

#include "core/climate/fine_scratch.hpp"

namespace loam::climate {

FineScratch& ScratchRoom::use()
{
    if (!room_)
        room_ = std::make_shared<FineScratch>();
    return *room_;
}

namespace {

Workspace::Level part_for(const Workspace::Level& whole, const std::string& case_id)
{
    Workspace::Level part{.starts = {}, .prepared = whole.prepared, .conditioner = whole.conditioner, .scratch = {}};
    if (const auto* values = start_of(whole, case_id))
        part.starts.push_back({case_id, *values});
    return part;
}

void take_back(Workspace::Level& whole, const Workspace::Level& part)
{
    whole.prepared = part.prepared;
    whole.conditioner = part.conditioner;
    for (const Workspace::Start& start : part.starts)
        keep_start(whole, start.case_id, start.values);
}

bool begin_like(Workspace::Level& level, const std::string& case_id, const std::string& other_id)
{
    const auto* values = start_of(level, other_id);
    if (values == nullptr)
        return false;
    const std::vector<double> copy = *values;
    keep_start(level, case_id, copy);
    return true;
}

} // namespace

Workspace part_for(const Workspace& whole, const std::string& case_id)
{
    return {.field = part_for(whole.field, case_id),
            .ranges = part_for(whole.ranges, case_id),
            .course = part_for(whole.course, case_id)};
}

void take_back(Workspace& whole, const Workspace& part)
{
    take_back(whole.field, part.field);
    take_back(whole.ranges, part.ranges);
    take_back(whole.course, part.course);
}

bool knows(const Workspace& workspace, const std::string& case_id)
{
    return start_of(workspace.field, case_id) != nullptr;
}

bool begin_like(Workspace& workspace, const std::string& case_id, const std::string& other_id)
{
    begin_like(workspace.ranges, case_id, other_id);
    return begin_like(workspace.field, case_id, other_id);
}

const std::vector<double>* start_of(const Workspace::Level& level, const std::string& case_id)
{
    for (const Workspace::Start& start : level.starts)
        if (start.case_id == case_id)
            return &start.values;
    return nullptr;
}

void keep_start(Workspace::Level& level, const std::string& case_id, const std::vector<double>& values)
{
    for (Workspace::Start& start : level.starts)
        if (start.case_id == case_id) {
            start.values = values;
            return;
        }
    level.starts.push_back({case_id, values});
}

} // namespace loam::climate
