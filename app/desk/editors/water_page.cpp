#include "app/desk/editors/water_page.hpp"

namespace loam::desk {

using words::Quantity;

WaterPage::WaterPage(FormState& state, QWidget* parent) : Page(state, "waterPage", parent)
{
    heading(tr("Moisture and water"));
    const std::function<plan::Moisture*(plan::Plan&)> moisture = [this](plan::Plan& plan) {
        plan::Enclosure* enclosure = box(plan);
        return enclosure != nullptr ? &enclosure->moisture : nullptr;
    };
    FieldSet& water = fields([this](plan::Plan& plan) {
        const std::string pointer = box_pointer(plan);
        return pointer.empty() ? pointer : pointer + "/moisture";
    });
    water.quantity(tr("Misting a day"), "misting_l_per_day", Quantity::volume, {0.0, 100.0},
                   slot_of(moisture, &plan::Moisture::misting_l_per_day));
    water.quantity(tr("In how many mistings"), "mistings_per_day", Quantity::count, {1.0, 48.0},
                   slot_of(moisture, &plan::Moisture::mistings_per_day));
    water.quantity(tr("Water changes a day"), "water_changes_per_day", Quantity::number, {0.0, 24.0},
                   slot_of(moisture, &plan::Moisture::water_changes_per_day));

    heading(tr("Hours of light"));
    FieldSet& light = fields([this](plan::Plan& plan) {
        const std::string pointer = box_pointer(plan);
        return pointer.empty() ? pointer : pointer + "/photoperiod";
    });
    const auto clock = [this](std::string plan::Photoperiod::*end) {
        ChoiceBinding binding;
        binding.get = [this, end](plan::Plan& plan) {
            const plan::Enclosure* enclosure = box(plan);
            return enclosure != nullptr && enclosure->photoperiod
                       ? QString::fromStdString((*enclosure->photoperiod).*end)
                       : QString();
        };
        binding.set = [this, end](plan::Plan& plan, const QString& value) {
            plan::Enclosure* enclosure = box(plan);
            if (enclosure == nullptr) {
                return;
            }
            if (value.isEmpty()) {
                enclosure->photoperiod.reset(); // half a photoperiod says nothing
                return;
            }
            if (!enclosure->photoperiod) {
                enclosure->photoperiod.emplace();
            }
            (*enclosure->photoperiod).*end = value.toStdString();
        };
        binding.options = [](const FormState&) {
            std::vector<Option> options{{QString(), tr("not stated")}};
            for (int half_hours = 0; half_hours < 48; ++half_hours) {
                const QString time = QStringLiteral("%1:%2")
                                         .arg(half_hours / 2, 2, 10, QLatin1Char('0'))
                                         .arg(half_hours % 2 * 30, 2, 10, QLatin1Char('0'));
                options.push_back({time, time});
            }
            return options;
        };
        return binding;
    };
    light.choice(tr("Lamps on at"), "on", clock(&plan::Photoperiod::on));
    light.choice(tr("Lamps off at"), "off", clock(&plan::Photoperiod::off));
    const auto photoperiod = [this](plan::Plan& plan) {
        plan::Enclosure* enclosure = box(plan);
        return enclosure != nullptr && enclosure->photoperiod ? &*enclosure->photoperiod : nullptr;
    };
    light.enumeration<plan::LightYear>(tr("Through the year"), "through_year", {tr("the same"), tr("with the sky")},
                                       [photoperiod](plan::Plan& plan) {
                                           plan::Photoperiod* const times = photoperiod(plan);
                                           return times != nullptr ? &times->through_year : nullptr;
                                       });
    light.only_when([photoperiod](plan::Plan& plan) { return photoperiod(plan) != nullptr; });
}

} // namespace loam::desk
