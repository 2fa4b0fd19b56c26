#include "app/sheets/build_parts.hpp"

#include <QObject>
#include <algorithm>

#include "app/words/capitals.hpp"
#include "app/words/verdicts.hpp"

namespace loam::sheets {

namespace {

using words::Quantity;

// Figures of one enclosure, as cells of its parts list.
struct Cells {
    const Request& request;

    QString length(double length_m) const { return request.formatter.value(length_m, Quantity::length); }
    QString length(const std::optional<double>& length_m) const { return length_m ? length(*length_m) : cell_blank(); }
    QString thickness(const std::optional<double>& thickness_m) const
    {
        return thickness_m ? request.formatter.value(*thickness_m, Quantity::thickness) : cell_blank();
    }
    QString size(double length_m, double width_m) const
    {
        return QObject::tr("%1 × %2").arg(length(length_m), length(width_m));
    }
    // Over the left, front and height columns: "14 cm", "20 cm", "64 cm".
    QStringList place(double x_m, double y_m, const QString& height) const
    {
        return {length(x_m), length(y_m), height};
    }
};

Row part_row(const QString& mark, const QString& part, const QString& size, const QStringList& place)
{
    return {.cells = QStringList{mark, words::capitalised(part), size} + place, .tick = true};
}

Row fitting_row(const plan::Fitting& fitting, const QString& mark, const Cells& cells, const words::Speaker& speaker)
{
    QString name = speaker.name_of(fitting.id);
    if (const double turned = fitting.rotation_deg.value_or(0.0); turned != 0.0) {
        name = QObject::tr("%1, turned left by %2").arg(name, cells.request.formatter.value(turned, Quantity::angle));
    }
    const QString size =
        QObject::tr("%1 × %2").arg(cells.size(fitting.length_m, fitting.width_m), cells.length(fitting.height_m));
    const bool bowl = fitting.kind == plan::FittingKind::water_bowl;
    return part_row(mark, name, size,
                    cells.place(fitting.x_m, fitting.y_m, bowl ? QObject::tr("sunk in") : QObject::tr("bed")));
}

bool on_wall(plan::Place place)
{
    using enum plan::Place;
    return place == back_wall || place == front_wall || place == left_wall || place == right_wall;
}

Row mat_row(const plan::Device& device, const QString& mark, const QString& size, const Cells& cells,
            const words::Speaker& speaker)
{
    const plan::Place place = device.place.value_or(plan::Place::under_base);
    const QString name = QObject::tr("%1, %2").arg(speaker.name_of(device.id), words::place(place));
    if (!on_wall(place)) {
        return part_row(mark, name, size, cells.place(device.x_m, device.y_m, QStringLiteral("–")));
    }
    const bool side = place == plan::Place::left_wall || place == plan::Place::right_wall;
    const QString none = QStringLiteral("–");
    return part_row(mark, name, size,
                    {side ? none : cells.length(device.x_m), side ? cells.length(device.y_m) : none,
                     cells.length(device.z_m.value_or(0.0))});
}

Row device_row(const plan::Device& device, const QString& mark, const Cells& cells, const words::Speaker& speaker)
{
    QString size;
    if (device.length_m && device.width_m) {
        size = cells.size(*device.length_m, *device.width_m);
    } else if (device.length_m) {
        size = QObject::tr("%1 long").arg(cells.length(*device.length_m));
    }
    if (device.kind == plan::DeviceKind::heat_mat) {
        return mat_row(device, mark, size, cells, speaker);
    }
    return part_row(mark, speaker.name_of(device.id), size,
                    cells.place(device.x_m, device.y_m, cells.length(device.height_above_base_m)));
}

void add_shell_rows(Table& table, const plan::Shell& shell, const Cells& cells, const words::Speaker& speaker)
{
    const auto row = [&](const QString& what, const QString& size) {
        table.rows.push_back(part_row({}, what, size, {}));
    };
    row(QObject::tr("Walls: %1").arg(speaker.name_of(shell.walls)), cells.thickness(shell.wall_thickness_m));
    row(QObject::tr("Base: %1").arg(speaker.name_of(shell.base)), cells.thickness(shell.base_thickness_m));
    for (const plan::Panel& panel : shell.panels) {
        row(QObject::tr("%1: %2").arg(words::capitalised(words::wall(panel.wall)), speaker.name_of(panel.material)),
            cells.thickness(panel.thickness_m));
    }
    for (const plan::Lining& lining : shell.linings) {
        row(QObject::tr("%1: %2").arg(words::capitalised(words::lining_of(lining.wall, lining.side)),
                                      speaker.name_of(lining.material)),
            cells.thickness(lining.thickness_m));
    }
    row(QObject::tr("Top: %1").arg(words::top_kind(shell.top.kind)),
        shell.top.thickness_m ? cells.thickness(shell.top.thickness_m) : QString());
    for (const plan::Vent& vent : shell.vents) {
        table.rows.push_back(
            part_row({}, speaker.name_of(vent.id),
                     QObject::tr("%1 free").arg(cells.request.formatter.value(vent.free_area_m2, Quantity::area)),
                     {{}, {}, cells.length(vent.height_above_base_m)}));
    }
}

void add_bed_rows(Table& table, const plan::Enclosure& enclosure, const assess::EnclosureResult& result,
                  const Cells& cells, const words::Speaker& speaker)
{
    for (const plan::SubstrateLayer& layer : enclosure.substrate) {
        const bool slopes = layer.depth_at_right_m && *layer.depth_at_right_m != layer.depth_m;
        const QString depth = slopes ? QObject::tr("%1, %2 deep at the left and %3 at the right once settled")
                                           .arg(speaker.name_of(layer.material), cells.length(layer.depth_m),
                                                cells.length(*layer.depth_at_right_m))
                                     : QObject::tr("%1, %2 deep once settled")
                                           .arg(speaker.name_of(layer.material), cells.length(layer.depth_m));
        const auto found = std::find_if(result.substrate.begin(), result.substrate.end(),
                                        [&](const assess::SubstrateResult& one) { return one.layer == layer.id; });
        table.rows.push_back(part_row({}, depth,
                                      found == result.substrate.end()
                                          ? cell_blank()
                                          : cells.request.formatter.span(found->expanded_l, Quantity::volume),
                                      {}));
    }
}

} // namespace

QHash<QString, QString> marks_of(const plan::Enclosure& enclosure)
{
    QHash<QString, QString> marks;
    const auto add = [&](const std::string& id) {
        marks.insert(QString::fromStdString(id), QString::number(marks.size() + 1));
    };
    for (const plan::Fitting& fitting : enclosure.fittings) {
        add(fitting.id);
    }
    for (const plan::Device& device : enclosure.equipment) {
        add(device.id);
    }
    for (const plan::Cover& cover : enclosure.shell.top.covers) {
        add(cover.id);
    }
    return marks;
}

void add_parts(Content& content, const plan::Enclosure& enclosure, const assess::EnclosureResult& result,
               const Request& request, const words::Speaker& speaker)
{
    const QHash<QString, QString> marks = marks_of(enclosure);
    const Cells cells{request};
    const auto mark = [&](const std::string& id) { return marks.value(QString::fromStdString(id)); };
    Table table{{{QObject::tr("No."), 0.4, false},
                 {QObject::tr("Part"), 3.3, false},
                 {QObject::tr("Size or amount"), 2.9, false},
                 {QObject::tr("Left"), 1.0, true},
                 {QObject::tr("Front"), 1.0, true},
                 {QObject::tr("Height"), 1.0, true}},
                {}};
    table.rows.push_back({.cells = {QObject::tr("Box")}, .group = true});
    add_shell_rows(table, enclosure.shell, cells, speaker);
    if (!enclosure.equipment.empty() || !enclosure.shell.top.covers.empty()) {
        table.rows.push_back({.cells = {QObject::tr("Equipment and covers")}, .group = true});
    }
    for (const plan::Device& device : enclosure.equipment) {
        table.rows.push_back(device_row(device, mark(device.id), cells, speaker));
    }
    for (const plan::Cover& cover : enclosure.shell.top.covers) {
        table.rows.push_back(part_row(mark(cover.id), QObject::tr("Cover: %1").arg(speaker.name_of(cover.material)),
                                      cells.size(cover.length_m, cover.width_m),
                                      cells.place(cover.x_m, cover.y_m, QObject::tr("top"))));
    }
    if (!enclosure.substrate.empty() || !enclosure.fittings.empty()) {
        table.rows.push_back({.cells = {QObject::tr("Bed and fittings")}, .group = true});
    }
    add_bed_rows(table, enclosure, result, cells, speaker);
    for (const plan::Fitting& fitting : enclosure.fittings) {
        table.rows.push_back(fitting_row(fitting, mark(fitting.id), cells, speaker));
    }
    content.blocks.push_back(Heading{QObject::tr("Parts, and what goes where")});
    content.blocks.push_back(
        Paragraph{QObject::tr("Inside; lamps, heaters, panels: their middle and face, all else: left front corner.")});
    content.blocks.push_back(std::move(table));
}

} // namespace loam::sheets
