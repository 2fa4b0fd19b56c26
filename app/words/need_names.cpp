// "substrate.coir-chips" is "Coir chips", "lamp.flood-lamp" a "flood lamp".
#include "app/words/label_words.hpp"
#include "app/words/sentences.hpp"
#include "app/words/speaker.hpp"
#include "app/words/verdicts.hpp"
#include "core/assess/wishes.hpp"
#include "core/plan/names.hpp"

namespace loam::words {

namespace {

template <class E, std::size_t N>
std::optional<E> kind_named(std::string_view name, const std::array<std::string_view, N>& names)
{
    for (std::size_t i = 0; i < N; ++i) {
        if (names[i] == name) {
            return static_cast<E>(i);
        }
    }
    return std::nullopt;
}

QString spaced(std::string_view kebab)
{
    QString text = QString::fromUtf8(kebab);
    return text.replace(QLatin1Char('-'), QLatin1Char(' '));
}

} // namespace

QString Speaker::need(std::string_view need) const
{
    if (need.starts_with(assess::own_need_prefix)) { // a line of the keeper's own, by its id
        return name_of(std::string(need.substr(std::string_view(assess::own_need_prefix).size())));
    }
    if (const Sentence* row = find_sentence(need_kind_names(), need)) {
        return translated(row->text);
    }
    const std::size_t point = need.find('.');
    const std::string_view kind = point == std::string_view::npos ? need : need.substr(point + 1);
    if (const auto device = kind_named<plan::DeviceKind>(kind, plan::device_kind_names)) {
        return device_kind(*device);
    }
    if (const auto fitting = kind_named<plan::FittingKind>(kind, plan::fitting_kind_names)) {
        return fitting_kind(*fitting);
    }
    const catalog::Material* material = catalog_.find_material(kind);
    return material != nullptr ? QString::fromStdString(material->name) : spaced(kind);
}

} // namespace loam::words
