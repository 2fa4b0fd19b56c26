// Makes a Node of a structure: members in the order of the description, absent optionals and empty lists left out.
#pragma once

#include <string>
#include <vector>

#include "core/json/archive.hpp"

namespace loam::json {

// One call of describe() on an archive of this kind writes one document; finish() then gives it.
class WriteArchive final : public Archive {
public:
    WriteArchive();
    Node finish();

    Mode mode() const override { return Mode::write; }
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
    struct Level {
        std::string key; // under which it goes into the level above; empty for an item
        Node node;
        bool keep_if_empty = true;
    };

    void put(Key key, Node value);
    Level take();

    std::vector<Level> levels_;
};

} // namespace loam::json
