// Fills a structure from a Node and records everything that is wrong with it.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/json/archive.hpp"
#include "core/json/problem.hpp"

namespace loam::json {

// One call of describe() on an archive of this kind reads one document; finish() then completes the problems.
class ReadArchive final : public Archive {
public:
    // `root` must outlive the archive.
    explicit ReadArchive(const Node& root);

    // Ends the outermost object. The first problems in the order in which the structure describes its members,
    // at most `most_listed`; the last one then counts the rest.
    Problems finish();
    static constexpr std::size_t most_listed = 200;

    Mode mode() const override { return Mode::read; }
    void fixed(Key key, const Node& value) override;
    void extras(Extras& extras) override;
    void refuse(std::string_view key, std::string_view code, std::vector<std::string> args) override;

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
    // An object or a list that is being read; `node` is null where the list is absent or broken.
    struct Level {
        const Node* node = nullptr;
        std::string pointer;
        std::vector<std::string_view> known;
        bool keeps_extras = false;
        bool knows(std::string_view key) const;
    };

    // The member, where it is there and of this kind; records what is wrong otherwise.
    const Node* member(Key key, Need need, Kind kind);
    const Node* number_member(Key key, Need need, const Bounds& bounds);
    const Node* list_member(Key key, ListRule rule);
    void push(const Node* node, std::string pointer);
    void pop_object();
    void check_unknown_keys(const Level& level);
    bool within(const std::string& where, std::string_view literal, double value, const Bounds& bounds);
    bool text_fits(const std::string& where, const std::string& text, const TextRule& rule);
    std::optional<std::size_t> index_of(const std::string& where, const Node& node,
                                        std::span<const std::string_view> names);
    bool is_kind(const std::string& where, const Node& node, Kind kind);
    void add(const std::string& where, std::string_view code, std::vector<std::string> args);

    const Node nothing_ = Node::object(); // stands in for a document that is no object
    std::vector<Level> levels_;
    Problems problems_;
    std::size_t not_listed_ = 0;
};

} // namespace loam::json
