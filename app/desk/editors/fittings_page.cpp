#include "app/desk/editors/fittings_page.hpp"

#include "app/words/verdicts.hpp"

namespace loam::desk {

using words::Quantity;

namespace {

std::vector<QString> kind_names()
{
    std::vector<QString> names;
    for (const auto kind :
         {plan::FittingKind::water_bowl, plan::FittingKind::hide, plan::FittingKind::humid_hide,
          plan::FittingKind::rock, plan::FittingKind::log, plan::FittingKind::plant, plan::FittingKind::feeding_dish}) {
        names.push_back(words::fitting_kind(kind));
    }
    return names;
}

} // namespace

FittingsPage::FittingsPage(FormState& state, QWidget* parent) : Page(state, "fittingsPage", parent)
{
    heading(tr("Bowls, hides and furniture"));
    const std::function<std::vector<plan::Fitting>*(plan::Plan&)> list = [this](plan::Plan& plan) {
        plan::Enclosure* enclosure = box(plan);
        return enclosure != nullptr ? &enclosure->fittings : nullptr;
    };
    ElementList& fittings =
        elements(tr("fitting"), actions_for<plan::Fitting>(
                                    list, "f",
                                    [](plan::Plan&) {
                                        plan::Fitting fitting;
                                        fitting.length_m = 0.2;
                                        fitting.width_m = 0.15;
                                        return fitting;
                                    },
                                    [](const plan::Fitting& fitting, FormState&) {
                                        return QStringLiteral("%1  %2").arg(words::fitting_kind(fitting.kind),
                                                                            QString::fromStdString(fitting.id));
                                    }));
    const std::function<plan::Fitting*(plan::Plan&)> chosen = [list, &fittings](plan::Plan& plan) {
        auto* all = list(plan);
        return all != nullptr ? element_in(*all, fittings.chosen()) : nullptr;
    };
    FieldSet& set = fields([this, list, &fittings](plan::Plan& plan) {
        return element_pointer(box_pointer(plan) + "/fittings", list(plan), fittings.chosen());
    });
    const auto is_bowl = [chosen](plan::Plan& plan) {
        const plan::Fitting* fitting = chosen(plan);
        return fitting != nullptr && fitting->kind == plan::FittingKind::water_bowl;
    };
    set.choice(tr("Kind"), "kind", enum_choice(member_of(chosen, &plan::Fitting::kind), kind_names()));
    set.quantity(tr("From the left"), "x_m", Quantity::length, {-1.0, 10.0}, slot_of(chosen, &plan::Fitting::x_m));
    set.quantity(tr("From the front"), "y_m", Quantity::length, {-1.0, 10.0}, slot_of(chosen, &plan::Fitting::y_m));
    set.quantity(tr("Length"), "length_m", Quantity::length, {0.005, 10.0}, slot_of(chosen, &plan::Fitting::length_m));
    set.quantity(tr("Width"), "width_m", Quantity::length, {0.005, 10.0}, slot_of(chosen, &plan::Fitting::width_m));
    set.quantity(tr("Height"), "height_m", Quantity::length, {0.001, 10.0}, slot_of(chosen, &plan::Fitting::height_m));
    set.quantity(tr("Turned by"), "rotation_deg", Quantity::angle, {-360.0, 360.0},
                 slot_of(chosen, &plan::Fitting::rotation_deg));
    set.quantity(tr("Weight"), "mass_kg", Quantity::mass, {0.0, 500.0}, slot_of(chosen, &plan::Fitting::mass_kg));
    set.quantity(tr("Water depth"), "water_depth_m", Quantity::length, {0.0, 1.0},
                 slot_of(chosen, &plan::Fitting::water_depth_m));
    set.only_when(is_bowl);
    set.flag(tr("Animals can walk on it"), "walkable", member_of(chosen, &plan::Fitting::walkable));
}

} // namespace loam::desk
