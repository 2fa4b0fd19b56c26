// The one function between what the keeper made and what we conclude.
#pragma once

#include <chrono>
#include <functional>
#include <memory>
#include <optional>
#include <stop_token>
#include <vector>

#include "core/assess/assessment.hpp"
#include "core/buying/pack_choice.hpp"
#include "core/catalog/catalog.hpp"
#include "core/plan/plan.hpp"

namespace loam::assess {

// Kept by the caller between calls: the last fields to start from, and stage results whose inputs are unchanged.
// With an empty one the same input gives the same bytes.
class Workspace {
public:
    Workspace();
    ~Workspace();
    Workspace(Workspace&&) noexcept;
    Workspace& operator=(Workspace&&) noexcept;

    struct Store;
    Store& store() { return *store_; }

private:
    std::unique_ptr<Store> store_;
};

// Of a plan what its climates, days and drills depend on, in the form of a plan and nothing else. Two plans with equal
// ones share the solution in one workspace, whatever else sets them apart, and each gets what it would get alone.
plan::Plan climate_inputs(const plan::Plan& plan);

// Called with each stage's result as it is ready: first the instant figures, then the climate and what follows from it,
// then with what runs over hours (complete == false so far), then all with its remedies. Where nothing has to be solved
// anew, only the last.
using OnStage = std::function<void(const Assessment&)>;

// How far an assessment is worked out: the figures at hand, the steady climate, what runs over hours, and the search
// for remedies, which takes longest.
enum class Until { at_once, climate, courses, remedies };

// nullopt only where `stop` was requested. What ends before the remedies is not `complete`.
std::optional<Assessment> assess(const plan::Plan& plan, const catalog::Catalog& catalog,
                                 std::chrono::year_month_day today, Workspace& workspace, std::stop_token stop = {},
                                 const OnStage& on_stage = {}, Until until = Until::remedies);

struct MergedOrder {
    std::vector<ShoppingLine> lines;
    std::vector<DeliveryCost> deliveries;
};

// One merged order over several plans, whole packs chosen over all of them together, by `aim` or else as the first
// plan has it. Each plan's own lines stand behind the packs.
MergedOrder merged_order(const std::vector<plan::Plan>& plans, const catalog::Catalog& catalog,
                         std::chrono::year_month_day today, std::optional<buying::Aim> aim = {});

} // namespace loam::assess
