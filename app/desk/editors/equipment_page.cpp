#include "app/desk/editors/equipment_page.hpp"

#include "app/words/verdicts.hpp"
#include "core/plan/names.hpp"

namespace loam::desk {

using plan::ControlKind;
using plan::Device;
using plan::DeviceKind;
using words::Quantity;

namespace {

using Find = std::function<Device*(plan::Plan&)>;

std::function<bool(plan::Plan&)> when(const Find& chosen, bool (*holds)(const Device&))
{
    return [chosen, holds](plan::Plan& plan) {
        const Device* device = chosen(plan);
        return device != nullptr && holds(*device);
    };
}

bool is_mat(const Device& device)
{
    return device.kind == DeviceKind::heat_mat;
}

bool is_wall_mat(const Device& device)
{
    return is_mat(device) && device.place && *device.place >= plan::Place::back_wall;
}

bool hangs(const Device& device)
{
    return !is_mat(device) && device.kind != DeviceKind::mister && device.kind != DeviceKind::fan;
}

bool has_size(const Device& device)
{
    return is_mat(device) || device.kind == DeviceKind::radiant_panel || device.kind == DeviceKind::uv_tube ||
           device.kind == DeviceKind::led_strip;
}

std::vector<QString> kind_names()
{
    std::vector<QString> names;
    for (std::size_t i = 0; i < plan::device_kind_names.size(); ++i) {
        names.push_back(words::device_kind(static_cast<DeviceKind>(i)));
    }
    return names;
}

// Where a mat lies. One on a wall must say how high; one that leaves the wall must not.
ChoiceBinding mat_place(const Find& chosen)
{
    ChoiceBinding binding;
    binding.get = [chosen](plan::Plan& plan) {
        const Device* device = chosen(plan);
        return device != nullptr && device->place ? QString::number(static_cast<int>(*device->place)) : QString();
    };
    binding.set = [chosen](plan::Plan& plan, const QString& value) {
        if (Device* device = chosen(plan)) {
            device->place = static_cast<plan::Place>(value.toInt());
            device->z_m = is_wall_mat(*device) ? std::optional<double>(device->z_m.value_or(0.1)) : std::nullopt;
        }
    };
    binding.options = [](const FormState&) {
        std::vector<Option> options;
        for (std::size_t i = static_cast<std::size_t>(plan::Place::under_base); i < plan::place_names.size(); ++i) {
            options.push_back({QString::number(i), words::place(static_cast<plan::Place>(i))});
        }
        return options;
    };
    return binding;
}

void add_place_fields(FieldSet& set, const Find& chosen)
{
    set.choice(QObject::tr("Place"), "place", mat_place(chosen));
    set.only_when(when(chosen, is_mat));
    const Limits along{-1.0, 10.0};
    set.quantity(QObject::tr("From the left"), "x_m", Quantity::length, along, slot_of(chosen, &Device::x_m));
    set.quantity(QObject::tr("From the front"), "y_m", Quantity::length, along, slot_of(chosen, &Device::y_m));
    set.quantity(QObject::tr("Lower edge above the base"), "z_m", Quantity::length, {0.0, 10.0},
                 slot_of(chosen, &Device::z_m));
    set.only_when(when(chosen, is_wall_mat));
    set.quantity(QObject::tr("Height above the base"), "height_above_base_m", Quantity::length, {0.0, 10.0},
                 slot_of(chosen, &Device::height_above_base_m));
    set.only_when(when(chosen, hangs));
    set.quantity(QObject::tr("Length"), "length_m", Quantity::length, {0.01, 10.0}, slot_of(chosen, &Device::length_m));
    set.only_when(when(chosen, has_size));
    set.quantity(QObject::tr("Width"), "width_m", Quantity::length, {0.005, 10.0}, slot_of(chosen, &Device::width_m));
    set.only_when(when(chosen, has_size));
    set.quantity(QObject::tr("Beam angle"), "beam_deg", Quantity::angle, {1.0, 180.0},
                 slot_of(chosen, &Device::beam_deg));
    set.only_when(when(chosen, hangs));
}

void add_safety_fields(FieldSet& set, const Find& chosen)
{
    set.quantity(QObject::tr("Clearance, by its maker"), "clearance_m", Quantity::length, {0.0, 5.0},
                 slot_of(chosen, &Device::clearance_m));
    set.only_when(when(chosen, hangs));
    set.quantity(QObject::tr("Holder is rated for"), "holder_rating_w", Quantity::power, {1.0, 4000.0},
                 slot_of(chosen, &Device::holder_rating_w));
    set.only_when(when(chosen, hangs));
    set.quantity(QObject::tr("Dome on the mesh, diameter"), "dome_diameter_m", Quantity::length, {0.02, 1.0},
                 slot_of(chosen, &Device::dome_diameter_m));
    set.only_when(when(chosen, hangs));
    set.flag(QObject::tr("Guarded"), "guarded", member_of(chosen, &Device::guarded));
    set.only_when(when(chosen, hangs));
    set.quantity(QObject::tr("Air gap below"), "air_gap_m", Quantity::thickness, {0.0, 0.2},
                 slot_of(chosen, &Device::air_gap_m));
    set.only_when(when(chosen, is_mat));
    set.quantity(QObject::tr("Burnt so far"), "age_hours", Quantity::hours, {0.0, 100000.0},
                 slot_of(chosen, &Device::age_hours));
    set.only_when(when(chosen, hangs));
}

// The control is part of its device; a thermostat needs its setpoint, so choosing one fills in a first value.
void add_control_fields(FieldSet& set, const Find& chosen)
{
    ChoiceBinding kind;
    kind.get = [chosen](plan::Plan& plan) {
        const Device* device = chosen(plan);
        return device != nullptr ? QString::number(static_cast<int>(device->control.kind)) : QString();
    };
    kind.set = [chosen](plan::Plan& plan, const QString& value) {
        constexpr double first_setpoint_c = 28.0;
        Device* device = chosen(plan);
        if (device == nullptr) {
            return;
        }
        plan::Control& control = device->control;
        control.kind = static_cast<ControlKind>(value.toInt());
        if (control.kind == ControlKind::thermostat && !control.setpoint_c) {
            control.setpoint_c = first_setpoint_c;
        }
        if (control.kind != ControlKind::thermostat) {
            control.setpoint_c.reset();
            control.probe.reset();
            control.method.reset();
            control.hysteresis_k.reset();
        }
        if (control.kind == ControlKind::none) {
            control.rating_w.reset();
        }
        if (control.kind != ControlKind::dimmer) {
            control.level.reset();
        }
    };
    kind.options = [](const FormState&) {
        return std::vector<Option>{{QStringLiteral("0"), QObject::tr("none")},
                                   {QStringLiteral("1"), QObject::tr("dimmer")},
                                   {QStringLiteral("2"), QObject::tr("thermostat")}};
    };
    set.choice(QObject::tr("Control"), "control", kind);
    const std::function<plan::Control*(plan::Plan&)> control = [chosen](plan::Plan& plan) {
        Device* device = chosen(plan);
        return device != nullptr ? &device->control : nullptr;
    };
    set.quantity(QObject::tr("Dimmer level"), "control/level", Quantity::fraction, {0.0, 1.0},
                 slot_of(control, &plan::Control::level));
    set.only_when(when(chosen, [](const Device& d) { return d.control.kind == ControlKind::dimmer; }));
    set.quantity(QObject::tr("Control is rated for"), "control/rating_w", Quantity::power, {1.0, 4000.0},
                 slot_of(control, &plan::Control::rating_w));
    set.only_when(when(chosen, [](const Device& d) { return d.control.kind != ControlKind::none; }));
    set.quantity(QObject::tr("Set to"), "control/setpoint_c", Quantity::temperature, {0.0, 60.0},
                 slot_of(control, &plan::Control::setpoint_c));
    const auto regulated = when(chosen, [](const Device& d) { return d.control.kind == ControlKind::thermostat; });
    set.only_when(regulated);
    set.enumeration<plan::ThermostatMethod>(
        QObject::tr("It regulates by"), "control/method",
        {QObject::tr("switching on and off"), QObject::tr("pulses"), QObject::tr("dimming")},
        member_of(control, &plan::Control::method));
    set.only_when(regulated);
    set.quantity(QObject::tr("Switching difference"), "control/hysteresis_k", Quantity::temperature_difference,
                 {0.1, 20.0}, slot_of(control, &plan::Control::hysteresis_k));
    set.only_when(when(chosen, [](const Device& d) {
        return d.control.kind == ControlKind::thermostat &&
               d.control.method.value_or(plan::ThermostatMethod::on_off) == plan::ThermostatMethod::on_off;
    }));
    const std::function<plan::Probe*(plan::Plan&)> probe = [chosen](plan::Plan& plan) {
        Device* device = chosen(plan);
        return device != nullptr && device->control.probe ? &*device->control.probe : nullptr;
    };
    ChoiceBinding placed;
    placed.get = [probe](plan::Plan& plan) { return probe(plan) != nullptr ? QStringLiteral("yes") : QString(); };
    placed.set = [chosen](plan::Plan& plan, const QString& value) {
        if (Device* device = chosen(plan)) {
            device->control.probe = value.isEmpty()
                                        ? std::nullopt
                                        : std::optional<plan::Probe>(plan::Probe{device->x_m, device->y_m, 0.0, {}});
        }
    };
    placed.options = [](const FormState&) {
        return std::vector<Option>{{QString(), QObject::tr("not placed")},
                                   {QStringLiteral("yes"), QObject::tr("placed")}};
    };
    set.choice(QObject::tr("Probe"), "control/probe", placed);
    set.only_when(regulated);
    const struct {
        QString label;
        const char* key;
        double plan::Probe::*member;
    } places[] = {{QObject::tr("Probe from the left"), "control/probe/x_m", &plan::Probe::x_m},
                  {QObject::tr("Probe from the front"), "control/probe/y_m", &plan::Probe::y_m},
                  {QObject::tr("Probe above the base"), "control/probe/z_m", &plan::Probe::z_m}};
    for (const auto& each : places) {
        set.quantity(each.label, each.key, Quantity::length, {0.0, 10.0}, slot_of(probe, each.member));
        set.only_when([probe](plan::Plan& plan) { return probe(plan) != nullptr; });
    }
}

void add_supply_fields(FieldSet& set, const Find& chosen)
{
    set.enumeration<plan::Supply>(QObject::tr("Supply"), "supply", {QObject::tr("timed"), QObject::tr("always on")},
                                  member_of(chosen, &Device::supply));
    set.choice(QObject::tr("On strip"), "strip",
               optional_text_choice(member_of(chosen, &Device::strip), [](const FormState& form) {
                   std::vector<Option> options;
                   for (const plan::Strip& strip : form.plan.site.strips) {
                       options.push_back({QString::fromStdString(strip.id), QString::fromStdString(strip.id)});
                   }
                   return options;
               }));
}

// A UV lamp is described by its maker's distance table or by meter readings, never by its watts.
void add_uv_fields(FieldSet& set, const std::function<plan::UvPoint*(plan::Plan&)>& point)
{
    set.quantity(QObject::tr("At a distance of"), "distance_m", Quantity::length, {0.01, 5.0},
                 slot_of(point, &plan::UvPoint::distance_m));
    set.quantity(QObject::tr("UV index"), "uvi", Quantity::uv_index, {0.0, 50.0}, slot_of(point, &plan::UvPoint::uvi));
}

} // namespace

EquipmentPage::EquipmentPage(FormState& state, QWidget* parent) : Page(state, "equipmentPage", parent)
{
    heading(tr("Lamps, heaters and other equipment"));
    const std::function<std::vector<Device>*(plan::Plan&)> list = [this](plan::Plan& plan) {
        plan::Enclosure* enclosure = box(plan);
        return enclosure != nullptr ? &enclosure->equipment : nullptr;
    };
    ElementList& devices =
        elements(tr("device"), actions_for<Device>(
                                   list, "d",
                                   [this](plan::Plan& plan) {
                                       Device device;
                                       device.x_m = box(plan)->shell.length_m * 0.25;
                                       device.y_m = box(plan)->shell.width_m * 0.5;
                                       return device;
                                   },
                                   [](const Device& device, FormState& form) {
                                       const QString power =
                                           device.power_w ? form.formatter.value(*device.power_w, Quantity::power)
                                                          : tr("power not stated");
                                       return QStringLiteral("%1  %2").arg(words::device_kind(device.kind), power);
                                   }));
    const Find chosen = [list, &devices](plan::Plan& plan) {
        auto* all = list(plan);
        return all != nullptr ? element_in(*all, devices.chosen()) : nullptr;
    };
    const auto pointer = [this, list, &devices](plan::Plan& plan) {
        return element_pointer(box_pointer(plan) + "/equipment", list(plan), devices.chosen());
    };
    FieldSet& set = fields(pointer);
    ChoiceBinding kind = enum_choice(member_of(chosen, &Device::kind), kind_names());
    kind.set = [chosen](plan::Plan& plan, const QString& value) {
        Device* device = chosen(plan);
        if (device == nullptr) {
            return;
        }
        device->kind = static_cast<DeviceKind>(value.toInt());
        if (is_mat(*device)) { // a mat must say where it lies and how large it is
            device->place = device->place.value_or(plan::Place::under_base);
            device->length_m = device->length_m.value_or(0.28);
            device->width_m = device->width_m.value_or(0.28);
        } else {
            device->place.reset();
        }
    };
    set.choice(tr("Kind"), "kind", kind);
    set.quantity(tr("Power"), "power_w", Quantity::power, {0.1, 3000.0}, slot_of(chosen, &Device::power_w));
    add_place_fields(set, chosen);
    add_control_fields(set, chosen);
    add_supply_fields(set, chosen);
    add_safety_fields(set, chosen);
    build_uv_table(chosen, pointer);
}

void EquipmentPage::build_uv_table(const std::function<Device*(plan::Plan&)>& chosen,
                                   const std::function<std::string(plan::Plan&)>& pointer)
{
    heading(tr("UV readings of the chosen lamp"));
    note(tr(
        "From the maker's table or from a meter, without mesh between. One reading will do, a table says more. UV is "
        "never worked out from watts."));
    FieldSet& when_read = fields(pointer);
    when_read.quantity(tr("Burnt when read"), "uvi_age_hours", Quantity::hours, {0.0, 100000.0},
                       slot_of(chosen, &Device::uvi_age_hours));
    when_read.only_when(when(chosen, [](const Device& device) { return !device.uvi_table.empty(); }));
    ElementActions actions;
    actions.rows = [chosen](FormState& form) {
        std::vector<ElementRow> rows;
        const Device* device = chosen(form.plan);
        for (std::size_t i = 0; device != nullptr && i < device->uvi_table.size(); ++i) {
            const plan::UvPoint& point = device->uvi_table[i];
            rows.push_back({std::to_string(i), tr("UVI %1 at %2")
                                                   .arg(form.formatter.value(point.uvi, Quantity::uv_index),
                                                        form.formatter.value(point.distance_m, Quantity::length))});
        }
        return rows;
    };
    actions.add = [chosen](plan::Plan& plan) {
        Device* device = chosen(plan);
        if (device == nullptr) {
            return std::string();
        }
        // Farther than the last, so that the table stays in order.
        plan::UvPoint point;
        if (!device->uvi_table.empty()) {
            point = {device->uvi_table.back().distance_m + 0.1, device->uvi_table.back().uvi / 2.0, {}};
        }
        device->uvi_table.push_back(point);
        return std::to_string(device->uvi_table.size() - 1);
    };
    actions.copy = [add = actions.add](plan::Plan& plan, const std::string&) { return add(plan); };
    actions.remove = [chosen](plan::Plan& plan, const std::string& id) {
        Device* device = chosen(plan);
        const auto index = static_cast<std::size_t>(std::stoul(id));
        if (device != nullptr && index < device->uvi_table.size()) {
            device->uvi_table.erase(device->uvi_table.begin() + static_cast<std::ptrdiff_t>(index));
        }
    };
    ElementList& points = elements(tr("UV reading"), std::move(actions));
    const auto point = [chosen, &points](plan::Plan& plan) -> plan::UvPoint* {
        Device* device = chosen(plan);
        const bool known =
            device != nullptr && !points.chosen().empty() && std::stoul(points.chosen()) < device->uvi_table.size();
        return known ? &device->uvi_table[std::stoul(points.chosen())] : nullptr;
    };
    FieldSet& set = fields([pointer, point, &points](plan::Plan& plan) {
        return point(plan) != nullptr ? pointer(plan) + "/uvi_table/" + points.chosen() : std::string();
    });
    add_uv_fields(set, point);
}

} // namespace loam::desk
