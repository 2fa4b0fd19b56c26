#include "app/desk/editors/animals_page.hpp"

#include <algorithm>

#include "app/words/verdicts.hpp"

namespace loam::desk {

using words::Quantity;

namespace {

QString species_name(const std::string& id, const FormState& state)
{
    const catalog::Species* species = state.catalog->find_species(id);
    return species != nullptr ? QString::fromStdString(species->common_name) : QString::fromStdString(id);
}

std::vector<Option> species_options(const FormState& state)
{
    std::vector<Option> options;
    for (const catalog::Species& species : state.catalog->species) {
        options.push_back({QString::fromStdString(species.id),
                           QStringLiteral("%1 (%2)").arg(QString::fromStdString(species.common_name),
                                                         QString::fromStdString(species.scientific_name))});
    }
    std::sort(options.begin(), options.end(),
              [](const Option& a, const Option& b) { return a.text.localeAwareCompare(b.text) < 0; });
    return options;
}

// A newcomer of a kind that lives here already is the likeliest; otherwise the first of the list.
plan::Animal fresh_animal(const plan::Enclosure* enclosure, const FormState& state)
{
    plan::Animal animal;
    if (enclosure != nullptr && !enclosure->animals.empty()) {
        animal.species = enclosure->animals.back().species;
    } else if (!state.catalog->species.empty()) {
        animal.species = state.catalog->species.front().id;
    }
    return animal;
}

} // namespace

AnimalsPage::AnimalsPage(FormState& state, QWidget* parent) : Page(state, "animalsPage", parent)
{
    heading(tr("Animals"));
    note(tr("One animal is a sound choice: most of these species live alone."));
    const std::function<std::vector<plan::Animal>*(plan::Plan&)> list = [this](plan::Plan& plan) {
        plan::Enclosure* enclosure = box(plan);
        return enclosure != nullptr ? &enclosure->animals : nullptr;
    };
    ElementList& animals = elements(
        tr("animal"), actions_for<plan::Animal>(
                          list, "a", [this](plan::Plan& plan) { return fresh_animal(box(plan), this->state()); },
                          [](const plan::Animal& animal, FormState& form) {
                              return QStringLiteral("%1 × %2").arg(form.formatter.count(animal.count),
                                                                   species_name(animal.species, form));
                          }));
    const std::function<plan::Animal*(plan::Plan&)> chosen = [list, &animals](plan::Plan& plan) {
        auto* all = list(plan);
        return all != nullptr ? element_in(*all, animals.chosen()) : nullptr;
    };
    FieldSet& set = fields([this, list, &animals](plan::Plan& plan) {
        return element_pointer(box_pointer(plan) + "/animals", list(plan), animals.chosen());
    });
    set.choice(tr("Species"), "species", text_choice(member_of(chosen, &plan::Animal::species), species_options));
    set.quantity(tr("Number"), "count", Quantity::count, {1.0, 200.0}, slot_of(chosen, &plan::Animal::count));
    set.enumeration<plan::Sex>(
        tr("Sex"), "sex", {words::sex(plan::Sex::unknown), words::sex(plan::Sex::female), words::sex(plan::Sex::male)},
        member_of(chosen, &plan::Animal::sex));
    set.quantity(tr("Length"), "length_m", Quantity::length, {0.005, 10.0}, slot_of(chosen, &plan::Animal::length_m));
    set.quantity(tr("Weight"), "mass_kg", Quantity::mass, {0.0005, 400.0}, slot_of(chosen, &plan::Animal::mass_kg));
    set.quantity(tr("Age"), "age_years", Quantity::years, {0.0, 200.0}, slot_of(chosen, &plan::Animal::age_years));
    note(tr("Length is of the shell for turtles and tortoises, from snout to vent for lizards and frogs, and the whole "
            "animal for snakes."));
}

} // namespace loam::desk
