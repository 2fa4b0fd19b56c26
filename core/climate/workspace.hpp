// What the caller keeps between calls to start the next one warm.
#pragma once

#include <memory>
#include <string>
#include <vector>

namespace loam::climate {

struct Prepared;    // inside the module
struct Conditioner; // inside the module
struct FineScratch; // inside the module

// Room for a solver. A copy begins with none of its own, so that two are never used at once by the same hands.
class ScratchRoom {
public:
    ScratchRoom() = default;
    ScratchRoom(const ScratchRoom& /*other*/) {}
    ScratchRoom(ScratchRoom&&) noexcept = default;
    ScratchRoom& operator=(const ScratchRoom& /*other*/) { return *this; } // NOLINT: nothing is handed over
    ScratchRoom& operator=(ScratchRoom&&) noexcept = default;
    ~ScratchRoom() = default;

    FineScratch& use(); // made at the first use

private:
    std::shared_ptr<FineScratch> room_;
};

// May be empty. Copies are independent of each other and may be used at the same time.
struct Workspace {
    struct Start {
        std::string case_id;
        std::vector<double> values;
    };
    // Kept for one width of cells.
    struct Level {
        std::vector<Start> starts;
        std::shared_ptr<const Prepared> prepared; // of the last box
        std::shared_ptr<const Conditioner> conditioner;
        ScratchRoom scratch;
    };
    Level field;
    Level ranges;
    Level course;
};

// A part of `whole` to solve one case with, and back again; so that cases can be solved side by side.
Workspace part_for(const Workspace& whole, const std::string& case_id);
void take_back(Workspace& whole, const Workspace& part);

bool knows(const Workspace& workspace, const std::string& case_id);
// The case shall begin where another ended. False where there is none.
bool begin_like(Workspace& workspace, const std::string& case_id, const std::string& other_id);

const std::vector<double>* start_of(const Workspace::Level& level, const std::string& case_id);
void keep_start(Workspace::Level& level, const std::string& case_id, const std::vector<double>& values);

} // namespace loam::climate
