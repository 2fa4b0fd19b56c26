#include "core/suggest/first_plan.hpp"

#include <algorithm>
#include <cmath>

namespace loam::suggest {

namespace {

constexpr double step_m = 0.01; // as things are measured

double up_to_step(double value_m)
{
    return step_m * std::ceil(value_m / step_m - 1e-9);
}

// What an adult measures over all, where the sheet tells.
double adult_m(const catalog::Species& species)
{
    const catalog::Band& whole = species.adult_total_length_m.value_or(species.adult_length_m);
    return whole.max.value_or(whole.min.value_or(0.0));
}

plan::Animal animal_of(const FirstAnswers& answers)
{
    plan::Animal animal;
    animal.id = "a1";
    animal.species = answers.species;
    animal.count = answers.count;
    animal.length_m = answers.length_m;
    return animal;
}

void add_bed(plan::Enclosure& enclosure, const catalog::Species& species)
{
    if (species.substrates.empty() || !species.substrate_depth_m.min) {
        return;
    }
    plan::SubstrateLayer layer;
    layer.id = "l1";
    layer.material = species.substrates.front();
    layer.depth_m = up_to_step(*species.substrate_depth_m.min);
    enclosure.substrate.push_back(layer);
}

// In the corners of the cool side a bowl and a humid hide, on the warm side a dry one. A snake lies coiled: what it
// gets into is a third of its length.
void furnish(plan::Enclosure& enclosure, const catalog::Species& species)
{
    const double whole_m = adult_m(species);
    if (whole_m <= 0.0) {
        return;
    }
    const bool coils = species.group == catalog::Group::snake;
    const double body_m = coils ? whole_m / 3.0 : whole_m;
    const plan::Shell& shell = enclosure.shell;
    const double most_m = 0.4 * std::min(shell.length_m, shell.width_m);
    const auto add = [&](plan::FittingKind kind, double length_m, double width_m, bool left, bool back) {
        plan::Fitting fitting;
        fitting.id = "f" + std::to_string(enclosure.fittings.size() + 1);
        fitting.kind = kind;
        fitting.length_m = std::min(up_to_step(length_m), most_m);
        fitting.width_m = std::min(up_to_step(width_m), most_m);
        constexpr double off_wall_m = 0.02;
        fitting.x_m = left ? off_wall_m : shell.length_m - fitting.length_m - off_wall_m;
        fitting.y_m = back ? shell.width_m - fitting.width_m - off_wall_m : off_wall_m;
        enclosure.fittings.push_back(fitting);
        return &enclosure.fittings.back();
    };
    plan::Fitting* bowl = add(plan::FittingKind::water_bowl, 1.2 * body_m, 1.1 * body_m, false, false);
    bowl->height_m = 0.05;
    bowl->walkable = true;
    add(plan::FittingKind::humid_hide, 1.3 * body_m, 1.1 * body_m, false, true);
    add(plan::FittingKind::hide, 1.3 * body_m, 1.1 * body_m, true, true);
}

std::string clock_text(double hour)
{
    const auto two = [](long number) { return (number < 10 ? "0" : "") + std::to_string(number); };
    const long minutes = std::lround(hour * 60.0);
    return two(minutes / 60 % 24) + ":" + two(minutes % 60);
}

// As long as the sheet asks on the middle of the year, about noon.
std::optional<plan::Photoperiod> hours_of(const catalog::Species& species)
{
    const catalog::Band& lit = species.photoperiod_h;
    if (!lit.min || !lit.max) {
        return std::nullopt;
    }
    constexpr double noon_h = 13.0;
    const double half_h = 0.25 * (*lit.min + *lit.max);
    plan::Photoperiod hours;
    hours.on = clock_text(noon_h - half_h);
    hours.off = clock_text(noon_h + half_h);
    return hours;
}

void set_size(plan::Shell& shell, const BoxSize& size)
{
    shell.length_m = size.length_m;
    shell.width_m = size.width_m;
    shell.height_m = size.height_m;
}

void choose_box(plan::Plan& plan, const catalog::Catalog& catalog, std::chrono::year_month_day today)
{
    const auto sizes = box_sizes();
    plan::Shell& shell = plan.enclosures.front().shell;
    set_size(shell, sizes.front()); // the search asks for boxes no lower than it
    set_size(shell, smallest_box(plan, catalog, today, 0).value_or(sizes.back()));
}

} // namespace

std::optional<plan::Plan> first_plan(const FirstAnswers& answers, const catalog::Catalog& catalog,
                                     std::chrono::year_month_day today)
{
    const catalog::Species* species = catalog.find_species(answers.species);
    if (species == nullptr) {
        return std::nullopt;
    }
    plan::Plan plan;
    plan.title = answers.title;
    plan.currency = answers.currency;
    plan.jurisdiction = answers.jurisdiction;
    plan.site.room = answers.room;
    plan.site.electricity_price_per_kwh = answers.electricity_price_per_kwh;
    plan::Enclosure& enclosure = plan.enclosures.emplace_back();
    enclosure.id = "e1";
    enclosure.name = answers.enclosure_name;
    enclosure.animals.push_back(animal_of(answers));
    enclosure.shell.walls = answers.walls;
    enclosure.shell.base = answers.walls;
    if (answers.box) {
        set_size(enclosure.shell, *answers.box);
    } else {
        choose_box(plan, catalog, today);
    }
    add_bed(plan.enclosures.front(), *species);
    furnish(plan.enclosures.front(), *species);
    plan.enclosures.front().photoperiod = hours_of(*species);
    return plan;
}

} // namespace loam::suggest
