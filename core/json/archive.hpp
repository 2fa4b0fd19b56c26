// One description of a structure serves three ends: reading it, writing it, and printing its JSON Schema.
// A structure T is described by a free function `void describe(json::Archive&, T&)` in T's namespace, which names
// each field once with its bounds. So the loader and the published schema cannot drift apart.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/json/node.hpp"
#include "core/money.hpp"

namespace loam::json {

// A field's name, and the sentence that documents it in the schema (unit included).
struct Key {
    std::string_view name;
    std::string_view note;
};

struct Bounds {
    double min = 0.0;
    double max = 0.0;
    bool exclusive_min = false;
};

struct TextRule {
    std::size_t min_length = 0;
    std::size_t max_length = 200;  // in Unicode code points
    std::string_view pattern = {}; // one of the named patterns below, or empty
};
inline constexpr std::string_view kebab_id = "^[a-z0-9]+(-[a-z0-9]+)*$";
inline constexpr std::string_view dotted_id = "^[a-z0-9_]+([.-][a-z0-9_]+)*$"; // "substrate.coir-chips"
inline constexpr std::string_view element_id = "^[A-Za-z0-9][A-Za-z0-9_-]*$";
inline constexpr std::string_view clock_time = "^([01][0-9]|2[0-3]):[0-5][0-9]$";
inline constexpr std::string_view iso_date = "^[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$";
inline constexpr std::string_view currency_code = "^[A-Z]{3}$";

struct ListRule {
    std::size_t min_items = 0;
    std::size_t max_items = 1000;
};

enum class Need { required, optional };

class Archive {
public:
    enum class Mode { read, write, schema };
    virtual ~Archive() = default;
    virtual Mode mode() const = 0;

    // A required field has a plain target, an optional one std::optional.
    void number(Key key, double& value, Bounds bounds);
    void number(Key key, std::optional<double>& value, Bounds bounds);
    void integer(Key key, std::int64_t& value, Bounds bounds);
    void integer(Key key, std::optional<std::int64_t>& value, Bounds bounds);
    void decimal(Key key, Decimal& value, Bounds bounds);
    void decimal(Key key, std::optional<Decimal>& value, Bounds bounds);
    void text(Key key, std::string& value, TextRule rule = {});
    void text(Key key, std::optional<std::string>& value, TextRule rule = {});
    void flag(Key key, bool& value);
    void flag(Key key, std::optional<bool>& value);
    // A field that must hold exactly this text or number ("format", "version").
    virtual void fixed(Key key, const Node& value) = 0;
    // Text that may be left out and is empty then.
    void text_or_empty(Key key, std::string& value, TextRule rule = {});

    // An enumeration whose values run from 0 and whose names stand in the same order.
    template <class E> void choice(Key key, E& value, std::span<const std::string_view> names)
    {
        std::optional<std::size_t> index = static_cast<std::size_t>(value);
        on_choice(key, Need::required, index, names);
        value = static_cast<E>(index.value_or(0));
    }
    template <class E> void choice(Key key, std::optional<E>& value, std::span<const std::string_view> names)
    {
        std::optional<std::size_t> index;
        if (value) {
            index = static_cast<std::size_t>(*value);
        }
        on_choice(key, Need::optional, index, names);
        value = index ? std::optional<E>(static_cast<E>(*index)) : std::nullopt;
    }

    // A nested structure. An optional one that is absent stays nullopt.
    template <class T> void object(Key key, T& value)
    {
        if (begin_object(key, Need::required, true)) {
            describe(*this, value);
            end_object();
        }
    }
    template <class T> void object(Key key, std::optional<T>& value)
    {
        if (begin_object(key, Need::optional, value.has_value())) {
            if (!value) {
                value.emplace();
            }
            describe(*this, *value);
            end_object();
        }
    }
    // A structure whose every member may be absent: left out where it equals a fresh one.
    template <class T> void object_or_default(Key key, T& value)
    {
        if (begin_object(key, Need::optional, !(value == T{}))) {
            describe(*this, value);
            end_object();
        }
    }
    // A list of structures; absent means empty unless `rule.min_items` is positive.
    template <class T> void list(Key key, std::vector<T>& values, ListRule rule = {})
    {
        const std::size_t count = begin_list(key, values.size(), rule);
        if (mode() == Mode::read) {
            values.assign(count, T{});
        }
        T sample{}; // the schema describes one item
        for (std::size_t i = 0; i < count; ++i) {
            if (begin_item(i)) {
                describe(*this, mode() == Mode::schema ? sample : values[i]);
                end_item();
            }
        }
        end_list();
    }
    // A list of enumeration names, each at most once.
    template <class E>
    void choices(Key key, std::vector<E>& values, std::span<const std::string_view> names, std::size_t min_items = 0)
    {
        std::vector<std::size_t> indices;
        indices.reserve(values.size());
        for (const E value : values) {
            indices.push_back(static_cast<std::size_t>(value));
        }
        on_choices(key, indices, names, min_items);
        values.clear();
        for (const std::size_t index : indices) {
            values.push_back(static_cast<E>(index));
        }
    }
    void texts(Key key, std::vector<std::string>& values, TextRule each = {}, ListRule rule = {});

    // Every object ends with this, after all other members: reads and writes the members that begin with "x_".
    // A structure without this call has no such members, and they are refused as unknown.
    virtual void extras(Extras& extras) = 0;

    // A rule between fields that a schema can't state: records a problem at `key` of the structure that is being
    // read (at the structure itself for an empty name). Does nothing when writing or printing a schema.
    virtual void refuse(std::string_view key, std::string_view code, std::vector<std::string> args) = 0;

protected:
    virtual void on_number(Key key, Need need, std::optional<double>& value, Bounds bounds) = 0;
    virtual void on_integer(Key key, Need need, std::optional<std::int64_t>& value, Bounds bounds) = 0;
    virtual void on_decimal(Key key, Need need, std::optional<Decimal>& value, Bounds bounds) = 0;
    virtual void on_text(Key key, Need need, std::optional<std::string>& value, TextRule rule) = 0;
    virtual void on_flag(Key key, Need need, std::optional<bool>& value) = 0;
    virtual void on_choice(Key key, Need need, std::optional<std::size_t>& index,
                           std::span<const std::string_view> names) = 0;
    virtual void on_choices(Key key, std::vector<std::size_t>& indices, std::span<const std::string_view> names,
                            std::size_t min_items) = 0;
    virtual void on_texts(Key key, std::vector<std::string>& values, TextRule each, ListRule rule) = 0;
    // True where the members are to be visited now (present when reading, given when writing, always for a schema).
    virtual bool begin_object(Key key, Need need, bool given) = 0;
    virtual void end_object() = 0;
    // The number of items to visit (1 for a schema).
    virtual std::size_t begin_list(Key key, std::size_t size, ListRule rule) = 0;
    virtual bool begin_item(std::size_t index) = 0;
    virtual void end_item() = 0;
    virtual void end_list() = 0;
};

} // namespace loam::json
