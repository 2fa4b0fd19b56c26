#include "core/json/schema_archive.hpp"

#include <cassert>

#include "core/json/kind_name.hpp"

namespace loam::json {

namespace {

Node text_node(std::string_view text)
{
    return Node::of(text);
}

Node count_node(std::size_t count)
{
    return Node::of(static_cast<std::int64_t>(count));
}

Node of_type(std::string_view type, std::string_view note = {})
{
    Node schema = Node::object();
    if (!note.empty()) {
        schema.add("description", text_node(note));
    }
    schema.add("type", text_node(type));
    return schema;
}

Node bounded(std::string_view type, std::string_view note, const Bounds& bounds)
{
    Node schema = of_type(type, note);
    schema.add(bounds.exclusive_min ? "exclusiveMinimum" : "minimum", Node::of(bounds.min));
    schema.add("maximum", Node::of(bounds.max));
    return schema;
}

Node text_schema(std::string_view note, const TextRule& rule)
{
    Node schema = of_type("string", note);
    if (rule.min_length > 0) {
        schema.add("minLength", count_node(rule.min_length));
    }
    schema.add("maxLength", count_node(rule.max_length));
    if (!rule.pattern.empty()) {
        schema.add("pattern", text_node(rule.pattern));
    }
    // Stated apart from the pattern, since some validators let "$" stand before a final line break.
    Node control = Node::object();
    control.add("pattern", text_node("[\\u0000-\\u001f\\u007f-\\u009f]"));
    schema.add("not", std::move(control));
    return schema;
}

Node names_schema(std::string_view note, std::span<const std::string_view> names)
{
    Node schema = of_type("string", note);
    Node values = Node::array();
    for (const std::string_view name : names) {
        values.add(text_node(name));
    }
    schema.add("enum", std::move(values));
    return schema;
}

Node list_schema(std::string_view note, const ListRule& rule, Node items)
{
    Node schema = of_type("array", note);
    if (rule.min_items > 0) {
        schema.add("minItems", count_node(rule.min_items));
    }
    schema.add("maxItems", count_node(rule.max_items));
    schema.add("items", std::move(items));
    return schema;
}

Need need_of(const ListRule& rule)
{
    return rule.min_items > 0 ? Need::required : Need::optional;
}

// The members that say what an object may hold, added to `schema`.
void add_object_rules(Node& schema, Node properties, Node required, bool keeps_extras)
{
    schema.add("properties", std::move(properties));
    if (!required.items.empty()) {
        schema.add("required", std::move(required));
    }
    if (keeps_extras) {
        Node extra = Node::object();
        extra.add("^x_", Node::of(true));
        schema.add("patternProperties", std::move(extra));
    }
    schema.add("additionalProperties", Node::of(false));
}

} // namespace

SchemaArchive::SchemaArchive()
{
    levels_.emplace_back();
}

Node SchemaArchive::finish(std::string_view id, std::string_view title)
{
    assert(levels_.size() == 1);
    Level level = take();
    Node schema = Node::object();
    schema.add("$schema", text_node("https://json-schema.org/draft/2020-12/schema"));
    schema.add("$id", text_node(id));
    schema.add("title", text_node(title));
    schema.add("type", text_node("object"));
    add_object_rules(schema, std::move(level.properties), std::move(level.required), level.keeps_extras);
    return schema;
}

SchemaArchive::Level SchemaArchive::take()
{
    Level level = std::move(levels_.back());
    levels_.pop_back();
    return level;
}

void SchemaArchive::property(Key key, Need need, Node schema)
{
    Level& level = levels_.back();
    level.properties.add(std::string(key.name), std::move(schema));
    if (need == Need::required) {
        level.required.add(text_node(key.name));
    }
}

void SchemaArchive::fixed(Key key, const Node& value)
{
    Node schema = of_type(kind_name(value.kind), key.note);
    schema.add("const", value);
    property(key, Need::required, std::move(schema));
}

void SchemaArchive::extras(Extras&)
{
    levels_.back().keeps_extras = true;
}

void SchemaArchive::on_number(Key key, Need need, std::optional<double>&, Bounds bounds)
{
    property(key, need, bounded("number", key.note, bounds));
}

void SchemaArchive::on_integer(Key key, Need need, std::optional<std::int64_t>&, Bounds bounds)
{
    property(key, need, bounded("integer", key.note, bounds));
}

void SchemaArchive::on_decimal(Key key, Need need, std::optional<Decimal>&, Bounds bounds)
{
    property(key, need, bounded("number", key.note, bounds));
}

void SchemaArchive::on_text(Key key, Need need, std::optional<std::string>&, TextRule rule)
{
    property(key, need, text_schema(key.note, rule));
}

void SchemaArchive::on_flag(Key key, Need need, std::optional<bool>&)
{
    property(key, need, of_type("boolean", key.note));
}

void SchemaArchive::on_choice(Key key, Need need, std::optional<std::size_t>&, std::span<const std::string_view> names)
{
    property(key, need, names_schema(key.note, names));
}

void SchemaArchive::on_choices(Key key, std::vector<std::size_t>&, std::span<const std::string_view> names,
                               std::size_t min_items)
{
    const ListRule rule{min_items, names.size()};
    Node schema = list_schema(key.note, rule, names_schema({}, names));
    schema.add("uniqueItems", Node::of(true));
    property(key, need_of(rule), std::move(schema));
}

void SchemaArchive::on_texts(Key key, std::vector<std::string>&, TextRule each, ListRule rule)
{
    property(key, need_of(rule), list_schema(key.note, rule, text_schema({}, each)));
}

bool SchemaArchive::begin_object(Key key, Need need, bool)
{
    Level level;
    level.key = key.name;
    level.note = key.note;
    level.need = need;
    levels_.push_back(std::move(level));
    return true;
}

void SchemaArchive::end_object()
{
    Level level = take();
    Node schema = of_type("object", level.note);
    add_object_rules(schema, std::move(level.properties), std::move(level.required), level.keeps_extras);
    property({level.key, {}}, level.need, std::move(schema));
}

std::size_t SchemaArchive::begin_list(Key key, std::size_t, ListRule rule)
{
    begin_object(key, need_of(rule), true);
    levels_.back().rule = rule;
    return 1;
}

bool SchemaArchive::begin_item(std::size_t)
{
    levels_.emplace_back();
    return true;
}

void SchemaArchive::end_item()
{
    Level level = take();
    Node schema = of_type("object");
    add_object_rules(schema, std::move(level.properties), std::move(level.required), level.keeps_extras);
    levels_.back().items = std::move(schema);
}

void SchemaArchive::end_list()
{
    Level level = take();
    property({level.key, {}}, level.need, list_schema(level.note, level.rule, std::move(level.items)));
}

} // namespace loam::json
