#include "app/words/places.hpp"

#include <QCoreApplication>
#include <QStringList>

#include "app/words/verdicts.hpp"

namespace loam::words {

namespace {

// The translator finds these texts under "places".
struct Said {
    Q_DECLARE_TR_FUNCTIONS(places)
};

QString with_id(const QString& kind, const std::string& id)
{
    return kind + QStringLiteral(" ") + QString::fromStdString(id);
}

template <class T> const T* with_id(const std::vector<T>& elements, std::string_view id)
{
    for (const T& element : elements) {
        if (element.id == id) {
            return &element;
        }
    }
    return nullptr;
}

std::optional<QString> in_enclosure(const plan::Enclosure& enclosure, std::string_view id)
{
    if (const auto* device = with_id(enclosure.equipment, id)) {
        return with_id(device_kind(device->kind), device->id);
    }
    if (const auto* fitting = with_id(enclosure.fittings, id)) {
        return with_id(fitting_kind(fitting->kind), fitting->id);
    }
    if (const auto* panel = with_id(enclosure.shell.panels, id)) {
        return with_id(wall(panel->wall), panel->id);
    }
    if (const auto* lining = with_id(enclosure.shell.linings, id)) {
        return with_id(lining_of(lining->wall, lining->side), lining->id);
    }
    if (const auto* cover = with_id(enclosure.shell.top.covers, id)) {
        return with_id(Said::tr("cover"), cover->id);
    }
    if (const auto* layer = with_id(enclosure.substrate, id)) {
        return with_id(Said::tr("substrate"), layer->id);
    }
    if (const auto* animal = with_id(enclosure.animals, id)) {
        return with_id(animal->count == 1 ? Said::tr("animal") : Said::tr("animals"), animal->id);
    }
    if (const auto* reading = with_id(enclosure.readings, id)) {
        return with_id(Said::tr("reading"), reading->id);
    }
    if (const auto* vent = with_id(enclosure.shell.vents, id)) {
        return with_id(Said::tr("vent"), vent->id);
    }
    return std::nullopt;
}

QString enclosure_name(const plan::Enclosure& enclosure)
{
    return enclosure.name.empty() ? with_id(Said::tr("enclosure"), enclosure.id)
                                  : QString::fromStdString(enclosure.name);
}

// The element at `index` of the list named `list`, as its id; empty where there is none.
template <class T> std::string id_at(const std::vector<T>& elements, std::size_t index)
{
    return index < elements.size() ? elements[index].id : std::string();
}

std::string id_in_list(const plan::Plan& plan, const plan::Enclosure* enclosure, const QString& list, std::size_t index)
{
    if (list == QStringLiteral("circuits")) {
        return id_at(plan.site.circuits, index);
    }
    if (list == QStringLiteral("strips")) {
        return id_at(plan.site.strips, index);
    }
    if (list == QStringLiteral("stands")) {
        return id_at(plan.site.stands, index);
    }
    if (list == QStringLiteral("owned")) {
        return id_at(plan.owned, index);
    }
    if (list == QStringLiteral("wishes")) {
        return id_at(plan.wishes, index);
    }
    if (list == QStringLiteral("own_lines")) {
        return id_at(plan.own_lines, index);
    }
    if (enclosure == nullptr) {
        return {};
    }
    if (list == QStringLiteral("animals")) {
        return id_at(enclosure->animals, index);
    }
    if (list == QStringLiteral("substrate")) {
        return id_at(enclosure->substrate, index);
    }
    if (list == QStringLiteral("fittings")) {
        return id_at(enclosure->fittings, index);
    }
    if (list == QStringLiteral("equipment")) {
        return id_at(enclosure->equipment, index);
    }
    if (list == QStringLiteral("panels")) {
        return id_at(enclosure->shell.panels, index);
    }
    if (list == QStringLiteral("linings")) {
        return id_at(enclosure->shell.linings, index);
    }
    if (list == QStringLiteral("covers")) {
        return id_at(enclosure->shell.top.covers, index);
    }
    if (list == QStringLiteral("vents")) {
        return id_at(enclosure->shell.vents, index);
    }
    return list == QStringLiteral("readings") ? id_at(enclosure->readings, index) : std::string();
}

} // namespace

std::optional<QString> element_name(const plan::Plan& plan, std::string_view id)
{
    for (const plan::Enclosure& enclosure : plan.enclosures) {
        if (enclosure.id == id) {
            return enclosure_name(enclosure);
        }
    }
    for (const plan::Enclosure& enclosure : plan.enclosures) {
        if (auto name = in_enclosure(enclosure, id)) {
            return name;
        }
    }
    if (const auto* circuit = with_id(plan.site.circuits, id)) {
        return with_id(Said::tr("circuit"), circuit->id);
    }
    if (const auto* strip = with_id(plan.site.strips, id)) {
        return with_id(Said::tr("strip"), strip->id);
    }
    if (const auto* stand = with_id(plan.site.stands, id)) {
        return with_id(Said::tr("stand"), stand->id);
    }
    if (const auto* owned = with_id(plan.owned, id)) {
        return with_id(Said::tr("owned item"), owned->id);
    }
    if (const auto* wish = with_id(plan.wishes, id)) {
        return with_id(Said::tr("change of needs"), wish->id);
    }
    if (const auto* line = with_id(plan.own_lines, id)) {
        return QString::fromStdString(line->name);
    }
    return std::nullopt;
}

PlaceWords place_words(const plan::Plan& plan, const std::string& pointer)
{
    const plan::Enclosure* enclosure = nullptr;
    QStringList words;
    QString list;
    for (const QString& token : QString::fromStdString(pointer).split(QLatin1Char('/'), Qt::SkipEmptyParts)) {
        bool is_index = false;
        const std::size_t index = token.toUInt(&is_index);
        if (is_index && list == QStringLiteral("enclosures") && index < plan.enclosures.size()) {
            enclosure = &plan.enclosures[index];
            words.removeLast();
        } else if (is_index && !words.isEmpty()) {
            const std::string id = id_in_list(plan, enclosure, list, index);
            words.back() = element_name(plan, id).value_or(words.back() + QStringLiteral(" ") + token);
        } else if (token != QStringLiteral("site") && token != QStringLiteral("shell")) {
            words << field_name(token.toStdString()).value_or(token);
        }
        list = token;
    }
    return {enclosure == nullptr ? QString() : enclosure_name(*enclosure), words.join(QStringLiteral(", "))};
}

QString joined(const PlaceWords& place)
{
    const bool both = !place.box.isEmpty() && !place.within.isEmpty();
    return place.box + (both ? QStringLiteral(", ") : QString()) + place.within;
}

QString pointer_words(const plan::Plan& plan, const std::string& pointer)
{
    const QString words = joined(place_words(plan, pointer));
    return words.isEmpty() ? QString::fromUtf8(pointer) : words;
}

} // namespace loam::words
