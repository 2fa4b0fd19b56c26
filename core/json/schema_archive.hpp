// Prints the JSON Schema (draft 2020-12) of a structure: what ReadArchive accepts, as far as a schema can state it.
#pragma once

#include <string>
#include <vector>

#include "core/json/archive.hpp"

namespace loam::json {

// One call of describe() on an archive of this kind describes one document; finish() then gives its schema.
class SchemaArchive final : public Archive {
public:
    SchemaArchive();
    Node finish(std::string_view id, std::string_view title);

    Mode mode() const override { return Mode::schema; }
    void fixed(Key key, const Node& value) override;
    void extras(Extras& extras) override;
    void refuse(std::string_view, std::string_view, std::vector<std::string>) override {}

protected:
    void on_number(Key key, Need need, std::optional<double>& value, Bounds bounds) override;
    void on_integer(Key key, Need need, std::optional<std::int64_t>& value, Bounds bounds) override;
    void on_decimal(Key key, Need need, std::optional<Decimal>& value, Bounds bounds) override;
    void on_text(Key key, Need need, std::optional<std::string>& value, TextRule rule) override;
    void on_flag(Key key, Need need, std::optional<bool>& value) override;
    void on_choice(Key key, Need need, std::optional<std::size_t>& index,
                   std::span<const std::string_view> names) override;
    void on_choices(Key key, std::vector<std::size_t>& indices, std::span<const std::string_view> names,
                    std::size_t min_items) override;
    void on_texts(Key key, std::vector<std::string>& values, TextRule each, ListRule rule) override;
    bool begin_object(Key key, Need need, bool given) override;
    void end_object() override;
    std::size_t begin_list(Key key, std::size_t size, ListRule rule) override;
    bool begin_item(std::size_t index) override;
    void end_item() override;
    void end_list() override;

private:
    // An object (`properties`, `required`) or a list (`items`) that is being described.
    struct Level {
        std::string key;
        std::string note;
        Need need = Need::required;
        ListRule rule;
        Node properties = Node::object();
        Node required = Node::array();
        Node items;
        bool keeps_extras = false;
    };

    void property(Key key, Need need, Node schema);
    Level take();

    std::vector<Level> levels_;
};

} // namespace loam::json
