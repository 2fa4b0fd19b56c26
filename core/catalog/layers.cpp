// Guidance files into the catalog, later ones over earlier ones.
#include <algorithm>
#include <set>
#include <variant>

#include "core/catalog/files.hpp"
#include "core/catalog/problem_codes.hpp"
#include "core/catalog/read_prices.hpp"
#include "core/json/front.hpp"
#include "core/json/parse.hpp"
#include "core/json/pointer.hpp"
#include "core/json/problem_codes.hpp"

namespace loam::catalog {

namespace {

template <class Entry> void find_repeated(const std::vector<Entry>& entries, json::Problems& problems)
{
    std::set<std::string_view> ids;
    for (std::size_t i = 0; i < entries.size(); ++i) {
        if (!ids.insert(id_of(entries[i])).second) {
            const std::string list = json::pointer_to("", form<Entry>.list);
            problems.push_back({json::pointer_to(list, i), std::string(problem::duplicate_id), {id_of(entries[i])}});
        }
    }
}

template <class Entry> void put_over(std::vector<Entry>& known, Entry entry)
{
    const auto same =
        std::find_if(known.begin(), known.end(), [&](const Entry& each) { return id_of(each) == id_of(entry); });
    if (same == known.end()) {
        known.push_back(std::move(entry));
    } else {
        *same = std::move(entry);
    }
}

template <class Entry> json::Problems add_sheet(const json::Node& node, std::vector<Entry>& known)
{
    Sheet<Entry> sheet;
    json::Problems problems;
    json::read_into(node, sheet, problems);
    if (problems.empty()) {
        find_repeated(sheet.entries, problems);
    }
    if (problems.empty()) {
        for (Entry& entry : sheet.entries) {
            put_over(known, std::move(entry));
        }
    }
    return problems;
}

// A later price list replaces the whole earlier one: two lists may differ in currency, place and date.
json::Problems add_prices(const json::Node& node, PriceList& known)
{
    PriceListRead read = read_price_node(node);
    if (read.problems.empty()) {
        known = std::move(read.prices);
    }
    return std::move(read.problems);
}

json::Problems add_node(const json::Node& node, Catalog& catalog)
{
    const json::Node* const format = node.find("format");
    const std::string_view text = format == nullptr ? std::string_view() : std::string_view(format->text);
    if (text == form<Species>.format) {
        return add_sheet(node, catalog.species);
    }
    if (text == form<Rule>.format) {
        return add_sheet(node, catalog.rules);
    }
    if (text == form<Material>.format) {
        return add_sheet(node, catalog.materials);
    }
    if (text == form<DeviceTraits>.format) {
        return add_sheet(node, catalog.devices);
    }
    if (text == form<Assumption>.format) {
        return add_sheet(node, catalog.assumptions);
    }
    if (text == "loamstead-prices") {
        return add_prices(node, catalog.prices);
    }
    if (format == nullptr) {
        return {{"/format", std::string(json::problem::missing), {"format"}}};
    }
    return {{"/format", std::string(problem::unknown_format), {std::string(text)}}};
}

} // namespace

std::vector<FileProblem> add_layer(Catalog& catalog, const std::vector<SourceText>& files)
{
    std::vector<FileProblem> found;
    for (const SourceText& file : files) {
        auto parsed = json::parse(file.text);
        auto* const broken = std::get_if<json::Problems>(&parsed);
        json::Problems problems = broken ? std::move(*broken) : add_node(std::get<json::Node>(parsed), catalog);
        for (json::Problem& problem : problems) {
            found.push_back({file.name, std::move(problem)});
        }
    }
    return found;
}

} // namespace loam::catalog
