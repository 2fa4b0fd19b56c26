#include "app/drawing/placing.hpp"

#include <QPolygonF>
#include <QTransform>
#include <algorithm>
#include <cmath>
#include <variant>

namespace loam::drawing {

namespace {

constexpr double lamp_mark_m = 0.045; // what has no size of its own is drawn so large

using Thing = std::variant<std::monostate, plan::Fitting*, plan::Cover*, plan::Device*>;

template <class Element> Element* with_id(std::vector<Element>& elements, const std::string& id)
{
    const auto found =
        std::find_if(elements.begin(), elements.end(), [&id](const Element& element) { return element.id == id; });
    return found == elements.end() ? nullptr : &*found;
}

Thing thing(plan::Enclosure& enclosure, const QString& id)
{
    const std::string wanted = id.toStdString();
    if (auto* fitting = with_id(enclosure.fittings, wanted)) {
        return fitting;
    }
    if (auto* cover = with_id(enclosure.shell.top.covers, wanted)) {
        return cover;
    }
    if (auto* device = with_id(enclosure.equipment, wanted)) {
        return device;
    }
    return {};
}

bool is_mat(const plan::Device& device)
{
    return device.kind == plan::DeviceKind::heat_mat;
}

Freedom freedom_of(const plan::Device& device)
{
    switch (is_mat(device) ? device.place.value_or(plan::Place::under_base) : plan::Place::overhead) {
    case plan::Place::left_wall:
    case plan::Place::right_wall:
        return Freedom::along_width;
    case plan::Place::front_wall:
    case plan::Place::back_wall:
        return Freedom::along_length;
    default:
        return Freedom::both;
    }
}

QPolygonF outline_m(const plan::Fitting& fitting)
{
    const QPointF middle(fitting.x_m + fitting.length_m / 2.0, fitting.y_m + fitting.width_m / 2.0);
    const QRectF flat(-fitting.length_m / 2.0, -fitting.width_m / 2.0, fitting.length_m, fitting.width_m);
    return QTransform()
        .translate(middle.x(), middle.y())
        .rotate(fitting.rotation_deg.value_or(0.0))
        .map(QPolygonF(flat));
}

Placed placed(const plan::Fitting& fitting)
{
    return {QString::fromStdString(fitting.id),
            ShapeKind::fitting,
            outline_m(fitting).boundingRect(),
            Freedom::both,
            true,
            true,
            false};
}

Placed placed(const plan::Cover& cover)
{
    return {QString::fromStdString(cover.id),
            ShapeKind::cover,
            QRectF(cover.x_m, cover.y_m, cover.length_m, cover.width_m),
            Freedom::both,
            true,
            true,
            false};
}

Placed placed_mat(const plan::Device& mat, const plan::Shell& shell)
{
    const double length_m = mat.length_m.value_or(0.2);
    const double width_m = mat.width_m.value_or(0.2);
    const Freedom freedom = freedom_of(mat);
    QRectF footprint(mat.x_m, mat.y_m, length_m, width_m);
    if (freedom == Freedom::along_width) {
        footprint = QRectF(mat.place == plan::Place::left_wall ? 0.0 : shell.length_m, mat.y_m, 0.0, length_m);
    } else if (freedom == Freedom::along_length) {
        footprint = QRectF(mat.x_m, mat.place == plan::Place::front_wall ? 0.0 : shell.width_m, length_m, 0.0);
    }
    return {QString::fromStdString(mat.id), ShapeKind::mat, footprint, freedom, true, freedom == Freedom::both, false};
}

Placed placed(const plan::Device& device, const plan::Shell& shell)
{
    if (is_mat(device)) {
        return placed_mat(device, shell);
    }
    const double length_m = std::max(device.length_m.value_or(0.0), lamp_mark_m);
    const double width_m = std::max(device.width_m.value_or(0.0), lamp_mark_m);
    const bool sized = device.length_m && device.width_m; // a panel; a tube is as long as it is sold
    return {QString::fromStdString(device.id),
            ShapeKind::lamp,
            QRectF(device.x_m - length_m / 2.0, device.y_m - width_m / 2.0, length_m, width_m),
            Freedom::both,
            sized,
            sized,
            true};
}

// To a tenth of a millimetre: what is shown and saved is "0.3", not "0.30000000000000004".
double tidy(double value_m)
{
    return std::round(value_m * 1e4) / 1e4;
}

void add(double& to_m, double by_m)
{
    to_m = by_m == 0.0 ? to_m : tidy(to_m + by_m); // what does not move keeps its digits
}

// How far a span may be moved along a side, so that it stays within; what is longer than the side stays.
double within(double low_m, double high_m, double side_m, double by_m)
{
    constexpr double rounding_m = 1e-9;
    return high_m - low_m > side_m + rounding_m ? 0.0 : std::clamp(by_m, -low_m, side_m - high_m);
}

QPointF allowed(const Placed& what, const plan::Shell& shell, const QPointF& by_m)
{
    QRectF stays = what.footprint_m;
    if (what.by_middle) {
        stays = QRectF(stays.center(), QSizeF());
    }
    QPointF by(within(stays.left(), stays.right(), shell.length_m, by_m.x()),
               within(stays.top(), stays.bottom(), shell.width_m, by_m.y()));
    if (what.freedom == Freedom::along_width) {
        by.setX(0.0);
    }
    if (what.freedom == Freedom::along_length) {
        by.setY(0.0);
    }
    return by;
}

void shift(const Thing& what, const QPointF& by_m)
{
    std::visit(
        [&by_m](auto element) {
            if constexpr (!std::is_same_v<decltype(element), std::monostate>) {
                add(element->x_m, by_m.x());
                add(element->y_m, by_m.y());
            }
        },
        what);
}

bool sticks_out(const Placed& what, const plan::Shell& shell)
{
    constexpr double rounding_m = 1e-4;
    const QRectF floor(0.0, 0.0, shell.length_m, shell.width_m);
    const QRectF box = what.by_middle ? QRectF(what.footprint_m.center(), QSizeF()) : what.footprint_m;
    return !floor.adjusted(-rounding_m, -rounding_m, rounding_m, rounding_m).contains(box.topLeft()) ||
           !floor.adjusted(-rounding_m, -rounding_m, rounding_m, rounding_m).contains(box.bottomRight());
}

double larger(double side_m, double by_m, double most_m)
{
    return by_m == 0.0 ? side_m : tidy(std::max(raster_m, std::min(side_m + by_m, std::max(side_m, most_m))));
}

bool lies_across(const plan::Fitting& fitting)
{
    return std::lround(fitting.rotation_deg.value_or(0.0) / 90.0) % 2 != 0;
}

void resize(plan::Fitting& fitting, const QSizeF& by_m, const QSizeF& room_m)
{
    const QRectF before = outline_m(fitting).boundingRect();
    const bool across = lies_across(fitting);
    double& along_x = across ? fitting.width_m : fitting.length_m;
    double& along_y = across ? fitting.length_m : fitting.width_m;
    along_x = larger(along_x, by_m.width(), room_m.width());
    along_y = larger(along_y, by_m.height(), room_m.height());
    const QRectF after = outline_m(fitting).boundingRect();
    add(fitting.x_m, before.left() - after.left());
    add(fitting.y_m, before.top() - after.top());
}

void resize(plan::Device& device, const QSizeF& by_m, const QSizeF& room_m)
{
    if (!device.length_m || !device.width_m) {
        return;
    }
    const Freedom freedom = freedom_of(device);
    if (freedom == Freedom::along_width) { // seen from above only its length shows, and lies along y
        device.length_m = larger(*device.length_m, by_m.height(), room_m.height());
        return;
    }
    const double length_m = larger(*device.length_m, by_m.width(), room_m.width());
    const double width_m =
        freedom == Freedom::both ? larger(*device.width_m, by_m.height(), room_m.height()) : *device.width_m;
    if (!is_mat(device)) { // placed by its middle
        add(device.x_m, (length_m - *device.length_m) / 2.0);
        add(device.y_m, (width_m - *device.width_m) / 2.0);
    }
    device.length_m = length_m;
    device.width_m = width_m;
}

void turn_about_corner(double& x_m, double& y_m, double& length_m, double& width_m)
{
    add(x_m, (length_m - width_m) / 2.0);
    add(y_m, (width_m - length_m) / 2.0);
    std::swap(length_m, width_m);
}

void turn(plan::Fitting& fitting)
{
    const double degrees = std::fmod(fitting.rotation_deg.value_or(0.0) + 90.0, 360.0);
    fitting.rotation_deg = degrees == 0.0 ? std::nullopt : std::optional(degrees);
}

void turn(plan::Device& device)
{
    if (is_mat(device)) {
        turn_about_corner(device.x_m, device.y_m, *device.length_m, *device.width_m);
    } else {
        std::swap(device.length_m, device.width_m);
    }
}

} // namespace

std::vector<Placed> placed_things(const plan::Enclosure& enclosure)
{
    std::vector<Placed> all;
    for (const plan::Device& device : enclosure.equipment) {
        if (is_mat(device)) {
            all.push_back(placed(device, enclosure.shell));
        }
    }
    for (const plan::Fitting& fitting : enclosure.fittings) {
        all.push_back(placed(fitting));
    }
    for (const plan::Cover& cover : enclosure.shell.top.covers) {
        all.push_back(placed(cover));
    }
    for (const plan::Device& device : enclosure.equipment) {
        if (!is_mat(device)) {
            all.push_back(placed(device, enclosure.shell));
        }
    }
    return all;
}

std::optional<Placed> placed_thing(const plan::Enclosure& enclosure, const QString& id)
{
    for (const Placed& one : placed_things(enclosure)) {
        if (one.id == id) {
            return one;
        }
    }
    return std::nullopt;
}

plan::Enclosure moved(plan::Enclosure enclosure, const QString& id, const QPointF& by_m)
{
    if (const auto what = placed_thing(enclosure, id)) {
        shift(thing(enclosure, id), allowed(*what, enclosure.shell, by_m));
    }
    return enclosure;
}

plan::Enclosure resized(plan::Enclosure enclosure, const QString& id, const QSizeF& by_m)
{
    const auto what = placed_thing(enclosure, id);
    if (!what || !what->sizable) {
        return enclosure;
    }
    const plan::Enclosure before = enclosure;
    const QSizeF room_m(enclosure.shell.length_m - what->footprint_m.left(),
                        enclosure.shell.width_m - what->footprint_m.top());
    const Thing found = thing(enclosure, id);
    if (auto* const* fitting = std::get_if<plan::Fitting*>(&found)) {
        resize(**fitting, by_m, room_m);
    } else if (auto* const* device = std::get_if<plan::Device*>(&found)) {
        resize(**device, by_m, room_m);
    } else if (auto* const* cover = std::get_if<plan::Cover*>(&found)) {
        (*cover)->length_m = larger((*cover)->length_m, by_m.width(), room_m.width());
        (*cover)->width_m = larger((*cover)->width_m, by_m.height(), room_m.height());
    }
    // What stands at an angle grows to both sides at once.
    return sticks_out(*placed_thing(enclosure, id), enclosure.shell) ? before : enclosure;
}

plan::Enclosure turned(plan::Enclosure enclosure, const QString& id)
{
    const auto what = placed_thing(enclosure, id);
    if (!what || !what->turnable) {
        return enclosure;
    }
    const Thing found = thing(enclosure, id);
    if (auto* const* fitting = std::get_if<plan::Fitting*>(&found)) {
        turn(**fitting);
    } else if (auto* const* device = std::get_if<plan::Device*>(&found)) {
        turn(**device);
    } else if (auto* const* cover = std::get_if<plan::Cover*>(&found)) {
        turn_about_corner((*cover)->x_m, (*cover)->y_m, (*cover)->length_m, (*cover)->width_m);
    }
    return enclosure;
}

plan::Enclosure taken_out(plan::Enclosure enclosure, const QString& id)
{
    const std::string gone = id.toStdString();
    const auto is_it = [&gone](const auto& element) { return element.id == gone; };
    std::erase_if(enclosure.fittings, is_it);
    std::erase_if(enclosure.shell.top.covers, is_it);
    std::erase_if(enclosure.equipment, is_it);
    return enclosure;
}

plan::Enclosure duplicated(plan::Enclosure enclosure, const QString& id, const QString& new_id)
{
    const auto again = [&](auto& elements) {
        if (const auto* like = with_id(elements, id.toStdString())) {
            auto copy = *like;
            copy.id = new_id.toStdString();
            elements.push_back(std::move(copy));
        }
    };
    again(enclosure.fittings);
    again(enclosure.shell.top.covers);
    again(enclosure.equipment);
    constexpr double aside_m = 0.05;
    const plan::Enclosure aside = moved(enclosure, new_id, {aside_m, aside_m});
    const auto there = placed_thing(enclosure, id);
    const auto copy = placed_thing(aside, new_id);
    // In the far corner there is no room that way.
    return there && copy && there->footprint_m == copy->footprint_m ? moved(enclosure, new_id, {-aside_m, -aside_m})
                                                                    : aside;
}

plan::Enclosure aligned(plan::Enclosure enclosure, const QString& id, Alignment alignment)
{
    const auto what = placed_thing(enclosure, id);
    if (!what) {
        return enclosure;
    }
    const plan::Shell& shell = enclosure.shell;
    const QRectF& at = what->footprint_m;
    QPointF by_m;
    switch (alignment) {
    case Alignment::left:
        by_m.setX(-at.left());
        break;
    case Alignment::right:
        by_m.setX(shell.length_m - at.right());
        break;
    case Alignment::front:
        by_m.setY(-at.top());
        break;
    case Alignment::back:
        by_m.setY(shell.width_m - at.bottom());
        break;
    case Alignment::middle_of_length:
        by_m.setX(shell.length_m / 2.0 - at.center().x());
        break;
    case Alignment::middle_of_width:
        by_m.setY(shell.width_m / 2.0 - at.center().y());
        break;
    }
    return moved(std::move(enclosure), id, by_m);
}

QStringList standing_in(const plan::Enclosure& enclosure, const QString& id)
{
    const std::string own = id.toStdString();
    const auto self = std::find_if(enclosure.fittings.begin(), enclosure.fittings.end(),
                                   [&own](const plan::Fitting& fitting) { return fitting.id == own; });
    QStringList met;
    if (self == enclosure.fittings.end()) {
        return met;
    }
    constexpr double touching_m2 = 1e-6; // side by side is not one in another
    for (const plan::Fitting& other : enclosure.fittings) {
        const QPolygonF shared = outline_m(*self).intersected(outline_m(other));
        const QRectF box = shared.boundingRect();
        if (other.id != own && box.width() * box.height() > touching_m2) {
            met << QString::fromStdString(other.id);
        }
    }
    return met;
}

} // namespace loam::drawing
