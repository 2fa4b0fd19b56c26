#include <algorithm>
#include <utility>

#include "core/assess/upkeep.hpp"
#include "core/calendar/parts.hpp"

namespace loam::calendar {

namespace {

constexpr double days_a_month = 365.25 / 12.0;

// Whole prey is one meal each, so that a month's number says how often.
Task prey_task(const Scope& scope, const Kept& kept, const plan::Animal& animal, const catalog::Species& species,
               const Range& group_monthly)
{
    const auto count = static_cast<double>(animal.count);
    const Range monthly{group_monthly.low / count, group_monthly.likely / count, group_monthly.high / count};
    Task feed = animal_task(scope, "feed-prey", Kind::food, kept, animal);
    feed.amounts.push_back({"prey", exactly(count), "each"});
    feed.labels.push_back({"food", species.diet.food_item});
    feed.interval_d = Range{days_a_month / monthly.high, days_a_month / monthly.likely, days_a_month / monthly.low};
    feed.recurrence = *every_days(std::max(1.0, feed.interval_d->likely));
    feed.source = species.diet.monthly_cost_units->source;
    feed.wash_hands = true;
    return feed;
}

Task stock_task(const Scope& scope, const Kept& kept, const plan::Animal& animal, const assess::Upkeep& upkeep,
                const Source& source)
{
    Task stock = animal_task(scope, "stock-food", Kind::food, kept, animal);
    stock.amounts.push_back({"monthly", *upkeep.food_per_month, assess::food_unit(upkeep.food_item)});
    if (upkeep.calcium_g_per_month) {
        stock.amounts.push_back({"calcium", *upkeep.calcium_g_per_month, "g"});
    }
    stock.labels.push_back({"food", upkeep.food_item});
    stock.recurrence = {.frequency = Frequency::monthly};
    stock.source = source;
    return stock;
}

Task undecided_task(const Scope& scope, const Kept& kept, const plan::Animal& animal, const std::string& food)
{
    Task feed = animal_task(scope, "feed-how-often", Kind::food, kept, animal);
    feed.labels.push_back({"food", food});
    feed.basis = Basis::not_known;
    feed.wash_hands = true;
    return feed;
}

const plan::Animal* animal_of(const plan::Enclosure& enclosure, const std::string& id)
{
    for (const plan::Animal& one : enclosure.animals) {
        if (one.id == id) {
            return &one;
        }
    }
    return nullptr;
}

} // namespace

std::vector<Task> food_tasks(const Scope& scope, const Kept& kept)
{
    std::vector<Task> tasks;
    const assess::Context context{scope.plan, scope.catalog, scope.assessment.date};
    for (const assess::Upkeep& upkeep : assess::upkeep_of(context, kept.enclosure)) {
        const plan::Animal* animal = animal_of(kept.enclosure, upkeep.animal);
        const catalog::Species* species = animal ? scope.catalog.find_species(animal->species) : nullptr;
        if (species == nullptr) {
            continue;
        }
        const assess::CoolSeasonResult* rest = rest_of(kept, upkeep.animal);
        const auto add = [&](const Task& one) {
            for (Task& part : around_rest(one, rest)) {
                tasks.push_back(std::move(part));
            }
        };
        const auto& monthly = upkeep.food_per_month;
        const bool known = monthly && monthly->low > 0.0;
        if (known && species->group == catalog::Group::snake) {
            add(prey_task(scope, kept, *animal, *species, *monthly));
        } else {
            tasks.push_back(undecided_task(scope, kept, *animal, upkeep.food_item));
        }
        if (known) {
            add(stock_task(scope, kept, *animal, upkeep, species->diet.monthly_cost_units->source));
        }
    }
    return tasks;
}

} // namespace loam::calendar
