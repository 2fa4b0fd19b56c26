#include "app/words/speaker.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <utility>

#include "app/words/capitals.hpp"
#include "app/words/catalog_names.hpp"
#include "app/words/label_words.hpp"
#include "app/words/places.hpp"
#include "app/words/sentences.hpp"
#include "app/words/verdicts.hpp"
#include "core/plan/names.hpp"

namespace loam::words {

namespace {

// The translator finds these texts under "speaker".
struct Said {
    Q_DECLARE_TR_FUNCTIONS(speaker)
};

const Input* find_input(const std::vector<Input>& inputs, const QString& name)
{
    for (const Input& input : inputs) {
        if (name == QString::fromStdString(input.name)) {
            return &input;
        }
    }
    return nullptr;
}

Quantity quantity_for(const Input& input, bool percent)
{
    return percent ? Quantity::fraction : quantity_of(input.unit).value_or(Quantity::number);
}

// The figure's own range, from the inputs low, likely and high.
std::optional<QString> range_text(const std::vector<Input>& inputs, bool percent, const Formatter& formatter)
{
    const Input* low = find_input(inputs, QStringLiteral("low"));
    const Input* likely = find_input(inputs, QStringLiteral("likely"));
    const Input* high = find_input(inputs, QStringLiteral("high"));
    if (low == nullptr || likely == nullptr || high == nullptr) {
        return std::nullopt;
    }
    return formatter.range({low->value, likely->value, high->value}, quantity_for(*likely, percent));
}

std::optional<QString> band_text(const std::vector<Input>& inputs, bool percent, const Formatter& formatter)
{
    for (const char* prefix : {"", "years_"}) {
        const Input* min = find_input(inputs, QLatin1String(prefix) + QStringLiteral("min"));
        const Input* max = find_input(inputs, QLatin1String(prefix) + QStringLiteral("max"));
        if (min == nullptr && max == nullptr) {
            continue;
        }
        Target target;
        target.min = min != nullptr ? std::optional(min->value) : std::nullopt;
        target.max = max != nullptr ? std::optional(max->value) : std::nullopt;
        return formatter.target(target, quantity_for(min != nullptr ? *min : *max, percent));
    }
    return std::nullopt;
}

QString input_text(const Input& input, bool percent, const Formatter& formatter)
{
    return percent ? formatter.value(input.value, Quantity::fraction) : formatter.figure(input.value, input.unit);
}

bool reads_as_nothing(const QString& figure)
{
    return std::none_of(figure.begin(), figure.end(), [](QChar mark) { return mark.digitValue() > 0; });
}

// By how much something misses or is to change. One too small for its decimals is not nothing: "less than 0.1 °C".
QString difference_text(const Input& input, bool percent, const Formatter& formatter)
{
    QString text = input_text(input, percent, formatter);
    if (!(input.value > 0.0) || !reads_as_nothing(text)) {
        return text;
    }
    Input step = input;
    for (const double mantissa : {1e-6, 1e-5, 1e-4, 1e-3, 1e-2, 1e-1}) {
        for (const double factor : {1.0, 2.0, 5.0}) {
            step.value = mantissa * factor;
            QString least = input_text(step, percent, formatter);
            if (step.value > input.value && !reads_as_nothing(least)) {
                return Said::tr("less than %1").arg(least);
            }
        }
    }
    return text;
}

// 60% is 20 percentage points under 80%; "20% under it" would be 64%.
QString in_points(QString percentage, const Formatter& formatter)
{
    percentage = percentage.remove(formatter.locale().percent()).trimmed();
    return percentage == QStringLiteral("1") ? Said::tr("1 percentage point")
                                             : Said::tr("%1 percentage points").arg(percentage);
}

bool is_difference(const QString& name)
{
    return name == QStringLiteral("short_by") || name == QStringLiteral("over_by") || name == QStringLiteral("by");
}

// What a humidity or a share of floor is counted in.
bool in_percent(const Because& because)
{
    return because.rule == "rule.moisture-balance" || because.rule == "rule.dry-retreat" ||
           because.rule == "rule.weight-loss";
}

bool is_yes_or_no(const assess::Assumed& assumed)
{
    return assumed.where.ends_with("/walkable") || assumed.where.ends_with("/guarded");
}

} // namespace

Speaker::Speaker(Formatter formatter, const plan::Plan& plan, const catalog::Catalog& catalog)
    : formatter_(std::move(formatter)), plan_(plan), catalog_(catalog)
{
}

QString Speaker::name_of(std::string_view id) const
{
    if (auto name = element_name(plan_, id)) {
        return *name;
    }
    if (const catalog::Species* species = catalog_.find_species(id)) {
        return QString::fromStdString(species->common_name);
    }
    if (const catalog::Material* material = catalog_.find_material(id)) {
        return QString::fromStdString(material->name);
    }
    if (const catalog::Rule* rule = catalog_.find_rule(id)) {
        return QString::fromStdString(rule->title);
    }
    for (const catalog::Item& item : catalog_.prices.items) {
        if (item.id == id) {
            return QString::fromStdString(item.name);
        }
    }
    return QString::fromUtf8(id);
}

QString Speaker::label(const Label& label) const
{
    if (const auto word = label_word(label.name, label.text)) {
        return *word;
    }
    if (label.name == "where") {
        return place(label.text);
    }
    if (label.name == "note") {
        return species_note(label.text);
    }
    static constexpr std::array<std::string_view, 5> dates{"date", "begins", "cold_from", "cold_until", "ends"};
    if (std::find(dates.begin(), dates.end(), label.name) != dates.end()) {
        return formatter_.iso_date(label.text);
    }
    if (label.name == "needs") {
        QStringList names;
        for (const QString& each : QString::fromStdString(label.text).split(QLatin1Char(','), Qt::SkipEmptyParts)) {
            names << need(each.trimmed().toStdString());
        }
        return names.join(QStringLiteral(", "));
    }
    if (label.name == "need") {
        return need(label.text);
    }
    if (label.name == "limited_by") {
        return uncertainty(label.text);
    }
    if (label.name == "kind") {
        return need("device." + label.text);
    }
    if (label.name == "material" || label.name == "best") {
        const catalog::Material* material = catalog_.find_material(label.text);
        return material != nullptr ? QString::fromStdString(material->name) : QString::fromStdString(label.text);
    }
    return name_of(label.text);
}

std::optional<QString> Speaker::placeholder(const Figures& figures, const QString& name, const QString& form) const
{
    const bool percent = form == QStringLiteral("percent");
    if (const Input* input = find_input(figures.inputs, name)) {
        if (!is_difference(name)) {
            return input_text(*input, percent, formatter_);
        }
        const QString difference = difference_text(*input, percent, formatter_);
        return percent ? in_points(difference, formatter_) : difference;
    }
    for (const Label& each : figures.labels) {
        if (name == QString::fromStdString(each.name)) {
            return each.text.empty() ? std::nullopt : std::optional(label(each));
        }
    }
    if (name == QStringLiteral("range")) {
        return range_text(figures.inputs, percent, formatter_);
    }
    return name == QStringLiteral("band") ? band_text(figures.inputs, percent, formatter_) : std::nullopt;
}

QString Speaker::finding(const Finding& finding) const
{
    const Sentence* row = find_finding_sentence(finding.code, {finding.verdict, finding.direction});
    if (row == nullptr) {
        return Said::tr("Something was found that has no words yet (%1).").arg(QString::fromStdString(finding.code));
    }
    const Figures figures{finding.because.inputs, finding.because.labels};
    return fill(translated(row->text),
                [&](const QString& name, const QString& form) { return placeholder(figures, name, form); })
        .text;
}

QString Speaker::remedy(const Finding& finding) const
{
    if (!finding.remedy) {
        return {};
    }
    const Sentence* row = find_sentence(remedy_sentences(), finding.remedy->code);
    if (row == nullptr) {
        return {};
    }
    const Figures figures{finding.remedy->amounts, finding.remedy->labels};
    return fill(translated(row->text),
                [&](const QString& name, const QString& form) { return placeholder(figures, name, form); })
        .text;
}

QString Speaker::inputs(const Because& because) const
{
    const bool percent = in_percent(because);
    QStringList parts;
    if (const auto range = range_text(because.inputs, percent, formatter_)) {
        parts << Said::tr("result: %1").arg(*range);
    }
    if (const auto band = band_text(because.inputs, percent, formatter_)) {
        parts << Said::tr("compared with: %1").arg(*band);
    }
    constexpr std::array told{"low", "likely", "high", "min", "max", "years_min", "years_max"};
    for (const Input& input : because.inputs) {
        const bool in_range = !parts.isEmpty() && std::find(told.begin(), told.end(), input.name) != told.end();
        if (in_range) {
            continue;
        }
        const Sentence* row = find_sentence(input_names(), input.name);
        const QString name = row != nullptr ? translated(row->text) : QString::fromStdString(input.name);
        parts << name + QStringLiteral(": ") + input_text(input, percent && input.unit == "1", formatter_);
    }
    return parts.join(QStringLiteral(" · "));
}

QString Speaker::method(const Because& because) const
{
    QStringList lines;
    if (const Sentence* row = find_sentence(rule_sentences(), because.rule)) {
        lines << translated(row->text);
    }
    for (const Label& each : because.labels) {
        if (each.name == "limited_by" && !each.text.empty()) {
            lines << Said::tr("The range is mostly due to this: %1.").arg(label(each));
        }
    }
    return lines.join(QLatin1Char('\n'));
}

QString Speaker::because(const Because& because) const
{
    QStringList lines;
    if (const QString how = method(because); !how.isEmpty()) {
        lines << how;
    }
    if (const QString figures = inputs(because); !figures.isEmpty()) {
        lines << Said::tr("Figures: %1").arg(figures);
    }
    const QString citation = source(because.source);
    if (!citation.isEmpty()) {
        lines << Said::tr("Source: %1").arg(citation);
    }
    return lines.join(QLatin1Char('\n'));
}

QString Speaker::place(const std::string& where) const
{
    return !where.empty() && where.front() == '/' ? pointer_words(plan_, where) : name_of(where);
}

QString Speaker::taken(const assess::Assumed& assumed) const
{
    if (!assumed.bracket) {
        return {};
    }
    if (is_yes_or_no(assumed)) {
        return Said::tr("yes and no");
    }
    if (assumed.unit.ends_with("/d")) {
        if (const auto daily = quantity_of(std::string_view(assumed.unit).substr(0, assumed.unit.size() - 2))) {
            return Said::tr("%1 a day").arg(formatter_.span(*assumed.bracket, *daily));
        }
    }
    const bool share = assumed.where.ends_with("level") || assumed.where.ends_with("humidity") ||
                       assumed.where.ends_with("fraction") || assumed.where.ends_with("rate") ||
                       assumed.where.ends_with("contingency");
    if (const auto quantity = share ? std::optional(Quantity::fraction) : quantity_of(assumed.unit)) {
        return formatter_.span(*assumed.bracket, *quantity);
    }
    const QString low = formatter_.figure(assumed.bracket->low, assumed.unit);
    const QString high = formatter_.figure(assumed.bracket->high, assumed.unit);
    return low == high ? low : Said::tr("%1 to %2").arg(low, high);
}

Speaker::Unstated Speaker::unstated(const assess::Assumed& assumed) const
{
    const PlaceWords place =
        assumed.where.starts_with('/') ? place_words(plan_, assumed.where) : PlaceWords{{}, name_of(assumed.where)};
    // No plan says what board a stand has; its thickness is what was taken.
    const QString what =
        assumed.where.ends_with("/stand") ? Said::tr("%1, the thickness of its board").arg(place.within) : place.within;
    return {place.box, what, taken(assumed)};
}

QString Speaker::assumed(const assess::Assumed& assumed) const
{
    const auto [box, what, taken_as] = unstated(assumed);
    const QString where = joined({box, what});
    if (!assumed.bracket) {
        return Said::tr("%1: not stated, and nothing could be assumed").arg(where);
    }
    return is_yes_or_no(assumed) ? Said::tr("%1: counted both ways, yes and no").arg(where)
                                 : Said::tr("%1: taken as %2").arg(where, taken_as);
}

QString Speaker::item(const assess::ShoppingLine& line) const
{
    const QString name = capitalised(line.item_name.empty() ? need(line.need) : QString::fromStdString(line.item_name));
    const QString pack = pack_words(line.pack);
    return pack.isEmpty() ? name : name + QStringLiteral(" – ") + pack;
}

QString Speaker::why(const assess::ShoppingLine& line) const
{
    const Sentence* row = find_sentence(need_sentences(), line.why);
    return row != nullptr ? translated(row->text) : QString();
}

QString species_note(std::string_view code)
{
    const Sentence* row = find_sentence(species_note_sentences(), code);
    return row != nullptr ? translated(row->text) : QString::fromUtf8(code).replace(QLatin1Char('-'), QLatin1Char(' '));
}

} // namespace loam::words
