#include <QObject>
#include <algorithm>

#include "app/sheets/build_parts.hpp"
#include "app/words/capitals.hpp"
#include "app/words/verdicts.hpp"

namespace loam::sheets {

namespace {

using words::Quantity;

QString supply_text(const plan::Device& device)
{
    if (!device.supply) {
        return QStringLiteral("____");
    }
    return *device.supply == plan::Supply::timed ? QObject::tr("timed") : QObject::tr("always on");
}

QString clearance_text(const plan::Device& device, const words::Formatter& formatter)
{
    if (device.kind == plan::DeviceKind::heat_mat || device.kind == plan::DeviceKind::mister ||
        device.kind == plan::DeviceKind::fan) {
        return QStringLiteral("–");
    }
    return device.clearance_m ? formatter.value(*device.clearance_m, Quantity::length) : cell_blank();
}

QString thermostat_text(const plan::Control& control, const words::Formatter& formatter)
{
    const QString setpoint =
        control.setpoint_c ? formatter.value(*control.setpoint_c, Quantity::temperature) : cell_blank();
    if (!control.probe) {
        return QObject::tr("thermostat at %1; probe: %2").arg(setpoint, cell_blank());
    }
    const auto length = [&](double length_m) { return formatter.value(length_m, Quantity::length); };
    return QObject::tr("thermostat at %1; probe %2 from the left, %3 from the front, %4 over the base")
        .arg(setpoint, length(control.probe->x_m), length(control.probe->y_m), length(control.probe->z_m));
}

QString control_text(const plan::Control& control, const words::Formatter& formatter)
{
    switch (control.kind) {
    case plan::ControlKind::none:
        return QObject::tr("none");
    case plan::ControlKind::dimmer:
        return QObject::tr("dimmer at %1")
            .arg(control.level ? formatter.value(*control.level, Quantity::fraction) : cell_blank());
    case plan::ControlKind::thermostat:
        return thermostat_text(control, formatter);
    }
    return {};
}

void add_timer(Content& content, const plan::Enclosure& enclosure)
{
    const auto timed = [](const plan::Device& device) { return device.supply == plan::Supply::timed; };
    if (std::none_of(enclosure.equipment.begin(), enclosure.equipment.end(), timed)) {
        return;
    }
    if (!enclosure.photoperiod) {
        content.blocks.push_back(Blank{QObject::tr("Timer: on at, off at")});
        return;
    }
    const plan::Photoperiod& hours = *enclosure.photoperiod;
    content.blocks.push_back(
        Paragraph{(hours.through_year.value_or(plan::LightYear::same) == plan::LightYear::with_the_sky
                       ? QObject::tr("Timer: on at %1, off at %2, moved through the year with the day outside.")
                       : QObject::tr("Timer: on at %1, off at %2."))
                      .arg(QString::fromStdString(hours.on), QString::fromStdString(hours.off))});
}

} // namespace

void add_wiring(Content& content, const plan::Enclosure& enclosure, const Request& request)
{
    content.blocks.push_back(Heading{QObject::tr("Wiring")});
    if (enclosure.equipment.empty()) {
        content.blocks.push_back(Paragraph{QObject::tr("Nothing with a plug is planned.")});
        return;
    }
    const QHash<QString, QString> marks = marks_of(enclosure);
    Table table{{{QObject::tr("No."), 0.5, false},
                 {QObject::tr("Device"), 2.0, false},
                 {QObject::tr("Power"), 0.9, true},
                 {QObject::tr("Clear"), 0.9, true},
                 {QObject::tr("Strip, outlet"), 1.6, false},
                 {QObject::tr("Control and set-point"), 4.0, false}},
                {}};
    for (const plan::Device& device : enclosure.equipment) {
        table.rows.push_back(
            {.cells = {marks.value(QString::fromStdString(device.id)),
                       words::capitalised(words::device_kind(device.kind)),
                       device.power_w ? request.formatter.value(*device.power_w, Quantity::power) : cell_blank(),
                       clearance_text(device, request.formatter),
                       QObject::tr("%1, %2").arg(device.strip ? QString::fromStdString(*device.strip)
                                                              : QStringLiteral("____"),
                                                 supply_text(device)),
                       control_text(device.control, request.formatter)},
             .tick = true});
    }
    content.blocks.push_back(std::move(table));
    content.blocks.push_back(Paragraph{QObject::tr("“Clear”: the distance that each keeps from all that burns.")});
    add_timer(content, enclosure);
}

void add_order_of_assembly(Content& content, const plan::Enclosure& enclosure)
{
    const auto mat_at = [&](bool below) {
        return std::any_of(enclosure.equipment.begin(), enclosure.equipment.end(), [&](const plan::Device& device) {
            const auto place = device.place.value_or(plan::Place::overhead);
            const bool inside = place == plan::Place::in_bed;
            return device.kind == plan::DeviceKind::heat_mat && inside != below;
        });
    };
    const auto has_fitting = [&](plan::FittingKind kind) {
        return std::any_of(enclosure.fittings.begin(), enclosure.fittings.end(),
                           [&](const plan::Fitting& fitting) { return fitting.kind == kind; });
    };
    QStringList steps{
        QObject::tr("Let paint, varnish and sealant cure as their makers say, until nothing smells. Take "
                    "off sharp edges."),
        QObject::tr("Set the empty box level on its stand. Try doors and lid: they open, and they lock.")};
    if (mat_at(true)) {
        steps << QObject::tr("Fix the mat outside, its whole face against the pane, and leave the gap below it free.");
    }
    if (!enclosure.shell.linings.empty() || !enclosure.shell.vents.empty()) {
        steps << QObject::tr("Fix linings and vents. Leave no gap that an animal gets into.");
    }
    if (mat_at(false)) {
        steps << QObject::tr("Lay the mat on the base, its cable led out where nothing digs.");
    }
    if (has_fitting(plan::FittingKind::rock) || has_fitting(plan::FittingKind::log)) {
        steps << QObject::tr("Stand heavy rocks and logs on the base or on blocks, not on loose bed: nothing may sink "
                             "or roll.");
    }
    if (!enclosure.equipment.empty()) {
        steps << QObject::tr("Hang lamps and heaters by their brackets, never by the cable, guarded, at the heights "
                             "above. Measure each clearance.");
    }
    if (!enclosure.substrate.empty()) {
        steps << QObject::tr("Fill in the bed layer by layer, damp it as planned, and let it settle.");
    }
    if (!enclosure.fittings.empty()) {
        steps << QObject::tr("Set in the bowl to its rim, then hides, plants and the rest.");
    }
    steps << QObject::tr("Fix probes and thermometers where they are drawn or listed, so that they can't be moved.");
    if (!enclosure.shell.top.covers.empty()) {
        steps << QObject::tr("Lay on the covers, clear of every lamp.");
    }
    if (!enclosure.equipment.empty()) {
        steps << QObject::tr("Plug in as listed, timed on the timer, the rest always on. Press the test button of the "
                             "residual-current device: it trips.")
              << QObject::tr("Switch on one device after the other, and see that each does what it should.");
    }
    steps << QObject::tr("Run it empty with the proving sheet.");
    content.blocks.push_back(Heading{QObject::tr("Order of assembly")});
    Table table{{{{}, 0.4, false}, {{}, 9.0, false}}, {}};
    for (const QString& step : steps) {
        table.rows.push_back({.cells = {QString::number(table.rows.size() + 1), step}, .tick = true});
    }
    content.blocks.push_back(std::move(table));
}

} // namespace loam::sheets
