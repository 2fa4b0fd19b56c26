// What was measured of the chosen animal over time: a list of days with length and weight.
#include <QDate>

#include <algorithm>

#include "app/desk/editors/animals_page.hpp"

namespace loam::desk {

using words::Quantity;

namespace {

QString measurement_words(const plan::Measurement& one, const FormState& form)
{
    QStringList figures;
    if (one.length_m) {
        figures << form.formatter.value(*one.length_m, Quantity::length);
    }
    if (one.mass_kg) {
        figures << form.formatter.value(*one.mass_kg, Quantity::mass);
    }
    return QStringLiteral("%1  %2").arg(form.formatter.iso_date(one.date), figures.join(QStringLiteral(" · ")));
}

std::vector<Option> measuring_days(const FormState& state)
{
    constexpr int more_than_a_year = 400;
    return days_back(state, more_than_a_year);
}

} // namespace

void AnimalsPage::add_measurements(const AnimalPlace& animal, std::function<std::string(plan::Plan&)> pointer)
{
    heading(tr("Measured over time"));
    note(tr("Of one animal, or the mean of the group. The newest length and weight count before those above; what they "
            "tell stands in the tab “Growth”."));
    const std::function<std::vector<plan::Measurement>*(plan::Plan&)> list = [animal](plan::Plan& plan) {
        plan::Animal* one = animal(plan);
        return one != nullptr ? &one->measurements : nullptr;
    };
    const ElementList& rows =
        elements(tr("measurement"),
                 actions_for<plan::Measurement>(
                     list, "m",
                     [](plan::Plan&) {
                         plan::Measurement one;
                         one.date = QDate::currentDate().toString(Qt::ISODate).toStdString();
                         return one;
                     },
                     [](const plan::Measurement& one, FormState& form) { return measurement_words(one, form); }));
    const std::function<plan::Measurement*(plan::Plan&)> chosen = [list, &rows](plan::Plan& plan) {
        auto* all = list(plan);
        return all != nullptr ? element_in(*all, rows.chosen()) : nullptr;
    };
    FieldSet& set = fields([list, &rows, pointer = std::move(pointer)](plan::Plan& plan) {
        return element_pointer(pointer(plan) + "/measurements", list(plan), rows.chosen());
    });
    set.choice(tr("Day"), "date", text_choice(member_of(chosen, &plan::Measurement::date), measuring_days));
    set.quantity(tr("Length then"), "length_m", Quantity::length, {0.005, 10.0},
                 slot_of(chosen, &plan::Measurement::length_m));
    set.quantity(tr("Weight then"), "mass_kg", Quantity::mass, {0.0005, 400.0},
                 slot_of(chosen, &plan::Measurement::mass_kg));
}

} // namespace loam::desk
