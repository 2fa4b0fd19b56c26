// How the guidance data looks as JSON: one description per structure (core/json/archive.hpp), and the few shared
// pieces that they are built of. Internal to the catalog.
#pragma once

#include <optional>
#include <string_view>
#include <utility>

#include "core/catalog/catalog.hpp"
#include "core/json/archive.hpp"

namespace loam {

void describe(json::Archive& archive, Source& source);

} // namespace loam

namespace loam::space {

void describe(json::Archive& archive, ShareStep& step);
void describe(json::Archive& archive, SizeMultiple& rule);
void describe(json::Archive& archive, SizeClass& size);
void describe(json::Archive& archive, SizeClasses& rule);

} // namespace loam::space

namespace loam::catalog {

void describe(json::Archive& archive, Species& species);
void describe(json::Archive& archive, Rule& rule);
void describe(json::Archive& archive, Material& material);
void describe(json::Archive& archive, DeviceTraits& traits);
void describe(json::Archive& archive, Assumption& assumption);
void describe(json::Archive& archive, Pack& pack);
void describe(json::Archive& archive, Delivery& delivery);
void describe(json::Archive& archive, Item& item);
void describe(json::Archive& archive, PriceList& prices);

void describe_within(json::Archive& archive, Band& band, json::Bounds limits);
void describe_within(json::Archive& archive, Spread& spread, json::Bounds limits);
void describe_within(json::Archive& archive, Range& range, json::Bounds limits);

// A band or spread whose ends have the bounds of its quantity. The bounds are part of the type because a list of
// members has no other way to hand them down.
template <class T, const json::Bounds& limits> struct Within {
    T value;
};
template <class T, const json::Bounds& limits> void describe(json::Archive& archive, Within<T, limits>& within)
{
    describe_within(archive, within.value, limits);
}

template <const json::Bounds& limits, class T> void within(json::Archive& archive, json::Key key, T& value)
{
    Within<T, limits> bounded{std::move(value)};
    archive.object(key, bounded);
    value = std::move(bounded.value);
}
template <const json::Bounds& limits, class T>
void within(json::Archive& archive, json::Key key, std::optional<T>& value)
{
    std::optional<Within<T, limits>> bounded;
    if (value) {
        bounded = Within<T, limits>{std::move(*value)};
    }
    archive.object(key, bounded);
    value = bounded ? std::optional<T>(std::move(bounded->value)) : std::nullopt;
}

struct NamedNumber {
    std::string_view name;
    double value = 0.0;
};
// Records a problem at the structure that is being read where `lower` is above `upper`.
void refuse_unless_ordered(json::Archive& archive, const NamedNumber& lower, const NamedNumber& upper);

// The same where `text` is not of the form "word.word", its words kebab-case, or a single word ("stand").
void refuse_unless_need_kind(json::Archive& archive, std::string_view key, const std::string& text);

// A flag that may be left out and is false then; written only where it is true.
void flag_or_false(json::Archive& archive, json::Key key, bool& value);

// The bounds of the quantities: what is outside is a slip of the pen, not a rare case.
namespace limits {

inline constexpr json::Bounds temperature_c{-20.0, 90.0};
inline constexpr json::Bounds share{0.0, 1.0};
inline constexpr json::Bounds body_length_m{0.0, 12.0, true};
inline constexpr json::Bounds body_mass_kg{0.0, 500.0, true};
inline constexpr json::Bounds years{0.0, 300.0};
inline constexpr json::Bounds hours_of_day{0.0, 24.0};
inline constexpr json::Bounds bed_depth_m{0.0, 2.0};
inline constexpr json::Bounds per_day{0.0, 24.0};
inline constexpr json::Bounds ratio{0.0, 5.0};
inline constexpr json::Bounds amount{0.0, 1e6};
inline constexpr json::Bounds area_m2{0.0, 1e4};
inline constexpr json::Bounds side_m{0.0, 100.0, true};
inline constexpr json::Bounds animals{1.0, 1000.0};
inline constexpr json::Bounds factor{0.0, 100.0};
inline constexpr json::Bounds conductivity_w_mk{0.0, 500.0, true};
inline constexpr json::Bounds density_kg_m3{0.0, 20000.0, true};
inline constexpr json::Bounds specific_heat_j_kgk{100.0, 10000.0};
inline constexpr json::Bounds thickness_m{0.0, 0.5, true};
inline constexpr json::Bounds months{0.0, 3600.0, true};
inline constexpr json::Bounds hours{0.0, 1e6, true};
inline constexpr json::Bounds angle_deg{1.0, 180.0};
inline constexpr json::Bounds power_w{0.0, 5000.0, true};
inline constexpr json::Bounds flux_w_m2{0.0, 5000.0, true};
inline constexpr json::Bounds clearance_m{0.0, 5.0};
inline constexpr json::Bounds anything{-1e6, 1e6};
inline constexpr json::Bounds price{0.0, 1e9};
inline constexpr json::Bounds pack_amount{0.0, 1e6, true};

} // namespace limits

inline constexpr json::TextRule an_id{1, 80, json::kebab_id};
inline constexpr json::TextRule a_name{1, 120};

} // namespace loam::catalog
