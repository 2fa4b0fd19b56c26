#include "app/desk/editors/animals_page.hpp"

#include <QDate>

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

// Whole dates are chosen and not typed.
std::vector<Option> dates(const QString& none, const FormState& state, const QDate& first, int count, int step)
{
    std::vector<Option> options{{QString(), none}};
    for (int i = 0; i < count; ++i) {
        const QString date = first.addDays(qint64(i) * step).toString(Qt::ISODate);
        options.push_back({date, state.formatter.iso_date(date.toStdString())});
    }
    return options;
}

// Nothing but choosing a first day plans a rest, and choosing none takes it out of the plan.
ChoiceBinding first_day(const AnimalsPage::AnimalPlace& chosen)
{
    ChoiceBinding binding;
    binding.get = [chosen](plan::Plan& plan) {
        const plan::Animal* animal = chosen(plan);
        return animal != nullptr && animal->cool_season ? QString::fromStdString(animal->cool_season->begins)
                                                        : QString();
    };
    binding.set = [chosen](plan::Plan& plan, const QString& value) {
        plan::Animal* animal = chosen(plan);
        if (animal == nullptr) {
            return;
        }
        if (value.isEmpty()) {
            animal->cool_season.reset();
            return;
        }
        if (!animal->cool_season) {
            animal->cool_season.emplace();
        }
        animal->cool_season->begins = value.toStdString();
    };
    binding.options = [](const FormState& state) {
        const QDate today = QDate::currentDate();
        constexpr int weeks_of_a_year = 52;
        return dates(AnimalsPage::tr("none planned"), state, today.addDays(8 - today.dayOfWeek()), weeks_of_a_year, 7);
    };
    return binding;
}

ChoiceBinding day_of_check(const std::function<plan::CoolSeason*(plan::Plan&)>& rest)
{
    ChoiceBinding binding;
    binding.get = [rest](plan::Plan& plan) {
        const plan::CoolSeason* held = rest(plan);
        return held != nullptr && held->vet_checked ? QString::fromStdString(*held->vet_checked) : QString();
    };
    binding.set = [rest](plan::Plan& plan, const QString& value) {
        if (plan::CoolSeason* held = rest(plan)) {
            held->vet_checked = value.isEmpty() ? std::nullopt : std::optional(value.toStdString());
        }
    };
    binding.options = [](const FormState& state) {
        constexpr int days_back = 60;
        return dates(AnimalsPage::tr("not stated"), state, QDate::currentDate().addDays(-days_back), days_back + 1, 1);
    };
    return binding;
}

void add_rest(FieldSet& set, const AnimalsPage::AnimalPlace& chosen)
{
    const std::function<plan::CoolSeason*(plan::Plan&)> rest = [chosen](plan::Plan& plan) {
        plan::Animal* animal = chosen(plan);
        return animal != nullptr && animal->cool_season ? &*animal->cool_season : nullptr;
    };
    const auto there = [rest](plan::Plan& plan) { return rest(plan) != nullptr; };
    set.choice(AnimalsPage::tr("Winter rest from"), "cool_season/begins", first_day(chosen));
    set.quantity(AnimalsPage::tr("Weeks in the cold"), "cool_season/cold_weeks", Quantity::count, {1.0, 30.0},
                 slot_of(rest, &plan::CoolSeason::cold_weeks));
    set.only_when(there);
    set.choice(AnimalsPage::tr("Vet's check before it"), "cool_season/vet_checked", day_of_check(rest));
    set.only_when(there);
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
    set.enumeration<plan::Condition>(tr("Condition"), "condition", {tr("well"), tr("underweight"), tr("ill")},
                                     member_of(chosen, &plan::Animal::condition));
    add_rest(set, chosen);
    note(tr("Length is of the shell for turtles and tortoises, from snout to vent for lizards and frogs, and the whole "
            "animal for snakes."));
    add_measurements(chosen, [this, list, &animals](plan::Plan& plan) {
        return element_pointer(box_pointer(plan) + "/animals", list(plan), animals.chosen());
    });
}

} // namespace loam::desk
