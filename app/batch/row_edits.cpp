#include "app/batch/row_edits.hpp"

#include <algorithm>

#include "app/batch/cell_words.hpp"
#include "app/batch/number_cell.hpp"
#include "app/batch/other_box.hpp"
#include "app/batch/said.hpp"
#include "core/plan/file.hpp"

namespace loam::batch {

namespace {

// The member or element, made where it is missing; a list is as long as it is.
json::Node* step(json::Node& parent, const std::string& key)
{
    if (parent.kind == json::Kind::array) {
        const std::size_t index = std::stoul(key);
        while (parent.items.size() <= index) {
            parent.add(json::Node::object());
        }
        return &parent.items[index];
    }
    const auto found = std::find(parent.keys.begin(), parent.keys.end(), key);
    if (found == parent.keys.end()) {
        parent.add(key, json::Node::object());
        return &parent.items.back();
    }
    return &parent.items[static_cast<std::size_t>(found - parent.keys.begin())];
}

} // namespace

RowEdits::RowEdits(const AdopterList& list, const catalog::csv::Row& row, const Template& shared)
    : list_(list), row_(row), shared_(shared), document_(plan::node_of(shared.plan))
{
    choose_enclosure();
}

void RowEdits::refuse(std::string_view column, const QString& reason)
{
    problems_.push_back({row_.number, text(column), reason});
}

void RowEdits::choose_enclosure()
{
    const auto& all = shared_.plan.enclosures;
    const std::string named = cell(list_, row_, "enclosure");
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const plan::Enclosure& one) { return one.id == named; });
    if (found != all.end()) {
        enclosure_ = static_cast<std::size_t>(found - all.begin());
    } else if (!named.empty()) {
        refuse("enclosure", Said::tr("The template has no enclosure “%1”.").arg(shown(text(named))));
    } else if (all.size() == 1) {
        enclosure_ = 0;
    }
}

std::string RowEdits::pointer_of(const Column& column) const
{
    return is_of_enclosure(column)
               ? "/enclosures/" + std::to_string(enclosure_.value_or(0)) + std::string(column.path.substr(1))
               : std::string(column.path);
}

json::Node& RowEdits::at(const std::string& pointer)
{
    json::Node* node = &document_;
    std::size_t from = 1;
    while (from <= pointer.size()) {
        const std::size_t slash = std::min(pointer.find('/', from), pointer.size());
        node = step(*node, pointer.substr(from, slash - from));
        from = slash + 1;
    }
    return *node;
}

bool RowEdits::claim(const Column& column)
{
    const auto [before, is_first] = column_of_.emplace(pointer_of(column), column.name);
    if (!is_first) {
        refuse(column.name, Said::tr("“%1” says the same. One of the two must be empty.").arg(text(before->second)));
    }
    return is_first;
}

void RowEdits::set(const Column& column, json::Node value)
{
    if (claim(column)) {
        at(pointer_of(column)) = std::move(value);
    }
}

void RowEdits::put_box(const Column& column, double size_m)
{
    if (claim(column)) {
        (column.path.ends_with("length_m")  ? length_m_
         : column.path.ends_with("width_m") ? width_m_
                                            : height_m_) = size_m;
    }
}

void RowEdits::resize(plan::Enclosure& enclosure) const
{
    plan::Shell& shell = enclosure.shell;
    const double from_length_m = shell.length_m;
    const double from_width_m = shell.width_m;
    shell.length_m = length_m_.value_or(shell.length_m);
    shell.width_m = width_m_.value_or(shell.width_m);
    shell.height_m = height_m_.value_or(shell.height_m);
    move_into_box(enclosure, from_length_m, from_width_m);
}

void RowEdits::put_number(const Column& column, const std::string& cell)
{
    const auto read = plain_number(cell, list_.separator);
    if (const auto* why_not = std::get_if<QString>(&read)) {
        refuse(column.name, *why_not);
        return;
    }
    const std::string& number = std::get<std::string>(read);
    const bool as_written = column.factor == 1.0 && column.offset == 0.0;
    const double typed = text(number).toDouble();
    if (is_box(column)) {
        put_box(column, (typed - column.offset) * column.factor);
        return;
    }
    set(column, as_written ? json::Node::literal(number) : json::Node::of((typed - column.offset) * column.factor));
}

void RowEdits::put(const Column& column, const std::string& cell)
{
    if (is_of_enclosure(column) && !enclosure_) {
        refuse(column.name, Said::tr("The template has several enclosures. Name one in the column “enclosure”."));
        return;
    }
    switch (column.kind) {
    case CellKind::person:
        break;
    case CellKind::text:
        if (column.name == "species") {
            check_species(column, text(cell));
        }
        set(column, json::Node::of(std::string_view(cell)));
        break;
    case CellKind::number:
    case CellKind::whole:
    case CellKind::price:
        put_number(column, cell);
        break;
    case CellKind::animals:
        put_animals(column, cell);
        break;
    case CellKind::owned:
        put_owned(cell);
        break;
    }
}

json::Node RowEdits::document()
{
    // In the table's order, whatever the file's is: "animals" may replace what "sex" then tells more of.
    for (const Column& column : columns()) {
        const std::string said = cell(list_, row_, column.name);
        if (!said.empty()) {
            put(column, said);
        }
    }
    return document_;
}

QString RowEdits::column_at(std::string_view pointer) const
{
    const auto holds = [](std::string_view outer, std::string_view inner) {
        return inner.starts_with(outer) && (inner.size() == outer.size() || inner[outer.size()] == '/');
    };
    QString around;
    for (const auto& [place, column] : column_of_) {
        if (holds(place, pointer)) {
            return text(column);
        }
        if (around.isEmpty() && holds(pointer, place)) {
            around = text(column);
        }
    }
    const bool in_box = pointer.starts_with("/enclosures/" + std::to_string(enclosure_.value_or(0)) + "/");
    for (const auto& [place, column] : column_of_) {
        if (around.isEmpty() && in_box && place.find("/shell/") != std::string::npos) {
            around = text(column); // what no longer fits into the box that the row states
        }
    }
    return around;
}

} // namespace loam::batch
