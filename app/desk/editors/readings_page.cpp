#include "app/desk/editors/readings_page.hpp"

#include <QDate>

#include "app/words/verdicts.hpp"

namespace loam::desk {

using words::Quantity;

namespace {

std::vector<QString> measure_names()
{
    std::vector<QString> names;
    for (const auto measure : {climate::Measure::surface, climate::Measure::ground, climate::Measure::operative}) {
        names.push_back(words::measure(measure));
    }
    return names;
}

// In the middle of the floor, as warm as a room: a place and a figure to go on from.
plan::Reading fresh_reading(const plan::Enclosure* enclosure)
{
    plan::Reading reading;
    reading.value_c = 25.0;
    reading.lamps = plan::LampState::on;
    reading.date = QDate::currentDate().toString(Qt::ISODate).toStdString();
    if (enclosure != nullptr) {
        reading.x_m = enclosure->shell.length_m / 2.0;
        reading.y_m = enclosure->shell.width_m / 2.0;
    }
    return reading;
}

// The plan holds whole dates only, so they are chosen and not typed: one of the last two months, or what it has.
ChoiceBinding date_choice(const std::function<plan::Reading*(plan::Plan&)>& chosen)
{
    ChoiceBinding binding;
    binding.get = [chosen](plan::Plan& plan) {
        const plan::Reading* reading = chosen(plan);
        return reading != nullptr && reading->date ? QString::fromStdString(*reading->date) : QString();
    };
    binding.set = [chosen](plan::Plan& plan, const QString& value) {
        if (plan::Reading* reading = chosen(plan)) {
            reading->date = value.isEmpty() ? std::nullopt : std::optional(value.toStdString());
        }
    };
    binding.options = [](const FormState& state) {
        constexpr int two_months = 60;
        std::vector<Option> options = days_back(state, two_months);
        options.insert(options.begin(), {QString(), ReadingsPage::tr("not stated")});
        return options;
    };
    return binding;
}

} // namespace

ReadingsPage::ReadingsPage(FormState& state, QWidget* parent) : Page(state, "readingsPage", parent)
{
    heading(tr("Thermometer readings"));
    note(tr("Readings from the finished box, hours after anything was changed, narrow what is expected. They hold for "
            "the box as it is planned here: remove them when lamps, covers or places change."));
    const std::function<std::vector<plan::Reading>*(plan::Plan&)> list = [this](plan::Plan& plan) {
        plan::Enclosure* enclosure = box(plan);
        return enclosure != nullptr ? &enclosure->readings : nullptr;
    };
    ElementList& readings =
        elements(tr("reading"), actions_for<plan::Reading>(
                                    list, "r", [this](plan::Plan& plan) { return fresh_reading(box(plan)); },
                                    [](const plan::Reading& reading, FormState& form) {
                                        return QStringLiteral("%1  %2, %3")
                                            .arg(QString::fromStdString(reading.id),
                                                 measure_names().at(static_cast<std::size_t>(reading.measure)),
                                                 form.formatter.value(reading.value_c, Quantity::temperature));
                                    }));
    const std::function<plan::Reading*(plan::Plan&)> chosen = [list, &readings](plan::Plan& plan) {
        auto* all = list(plan);
        return all != nullptr ? element_in(*all, readings.chosen()) : nullptr;
    };
    FieldSet& set = fields([this, list, &readings](plan::Plan& plan) {
        return element_pointer(box_pointer(plan) + "/readings", list(plan), readings.chosen());
    });
    set.choice(tr("Measured"), "measure", enum_choice(member_of(chosen, &plan::Reading::measure), measure_names()));
    set.quantity(tr("From the left"), "x_m", Quantity::length, {-1.0, 10.0}, slot_of(chosen, &plan::Reading::x_m));
    set.quantity(tr("From the front"), "y_m", Quantity::length, {-1.0, 10.0}, slot_of(chosen, &plan::Reading::y_m));
    set.quantity(tr("Read"), "value_c", Quantity::temperature, {-40.0, 150.0},
                 slot_of(chosen, &plan::Reading::value_c));
    set.quantity(tr("Accuracy, plus or minus"), "accuracy_k", Quantity::temperature_difference, {0.0, 20.0},
                 slot_of(chosen, &plan::Reading::accuracy_k));
    set.enumeration<plan::LampState>(tr("Lamps"), "lamps", {tr("on"), tr("off")},
                                     member_of(chosen, &plan::Reading::lamps));
    set.quantity(tr("Room then"), "room_c", Quantity::temperature, {-40.0, 60.0},
                 slot_of(chosen, &plan::Reading::room_c));
    set.choice(tr("Date"), "date", date_choice(chosen));
}

} // namespace loam::desk
