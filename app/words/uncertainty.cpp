// What an uncertain input is about: "model.film-factor", "bed.topsoil.wetness", "d1.power".
#include <QCoreApplication>

#include <cmath>

#include "app/words/capitals.hpp"
#include "app/words/label_words.hpp"
#include "app/words/sentences.hpp"
#include "app/words/speaker.hpp"

namespace loam::words {

namespace {

struct Parts {
    std::string thing;
    std::string property;
};

// "bed.topsoil.wetness" is the property "wetness" of "topsoil"; "walls.emissivity" one of the walls.
Parts split(const std::string& id)
{
    const std::size_t last = id.rfind('.');
    if (last == std::string::npos) {
        return {id, {}};
    }
    std::string thing = id.substr(0, last);
    const std::size_t first = thing.find('.');
    if (first != std::string::npos) {
        thing = thing.substr(first + 1);
    }
    return {std::move(thing), id.substr(last + 1)};
}

} // namespace

QString Speaker::uncertainty(const std::string& id) const
{
    if (const Sentence* row = find_sentence(assumption_names(), id)) {
        return translated(row->text);
    }
    // "panel.thickness_m.float-glass" is named by its first two parts.
    const std::size_t last = id.rfind('.');
    if (last != std::string::npos) {
        if (const Sentence* row = find_sentence(assumption_names(), std::string_view(id).substr(0, last))) {
            return translated(row->text);
        }
    }
    const Parts parts = split(id);
    const Sentence* row = find_sentence(property_names(), parts.property);
    if (row == nullptr) {
        return name_of(id);
    }
    const QString thing = label_word("thing", parts.thing).value_or(name_of(parts.thing));
    return translated(row->text).replace(QStringLiteral("{0}"), thing);
}

QString Speaker::moved(const climate::UpdatedInput& input) const
{
    const auto figure = [this](double value) {
        return formatter_.number(value, std::abs(value) >= 10.0 ? 0 : std::abs(value) >= 1.0 ? 2 : 3);
    };
    const auto figures = [&](const Range& range) {
        return QCoreApplication::translate("speaker", "%1 (%2 to %3)")
            .arg(figure(range.likely), figure(range.low), figure(range.high));
    };
    return QCoreApplication::translate("speaker", "%1: was %2, now %3")
        .arg(uncertainty(input.name), figures(input.before), figures(input.after));
}

QString Speaker::decides(const std::string& id, double share) const
{
    const QString first = QCoreApplication::translate("speaker", "%1 decides this range most (%2 of it).")
                              .arg(capitalised(uncertainty(id)), formatter_.value(share, Quantity::fraction));
    const Sentence* row = find_sentence(narrowing_sentences(), id);
    if (row == nullptr) {
        row = find_sentence(narrowing_sentences(), split(id).property);
    }
    return row != nullptr ? first + QLatin1Char(' ') + translated(row->text) : first;
}

} // namespace loam::words
