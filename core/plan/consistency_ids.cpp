#include <algorithm>
#include <map>

#include "core/json/pointer.hpp"
#include "core/plan/consistency.hpp"
#include "core/plan/element_ids.hpp"
#include "core/plan/problem_codes.hpp"

namespace loam::plan {

namespace {

template <class T> const T* find(const std::vector<T>& elements, std::string_view id)
{
    const auto found =
        std::find_if(elements.begin(), elements.end(), [&](const T& element) { return element.id == id; });
    return found == elements.end() ? nullptr : &*found;
}

// The strips met on the way up from `start`, which comes first; ends before a strip is met twice.
std::vector<const Strip*> feeding_chain(const std::vector<Strip>& strips, const Strip& start)
{
    std::vector<const Strip*> chain;
    const Strip* strip = &start;
    while (strip != nullptr && std::find(chain.begin(), chain.end(), strip) == chain.end()) {
        chain.push_back(strip);
        strip = strip->fed_from ? find(strips, *strip->fed_from) : nullptr;
    }
    return chain;
}

bool closes(const std::vector<const Strip*>& chain)
{
    return chain.back()->fed_from == chain.front()->id;
}

} // namespace

void Consistency::check_ids()
{
    std::map<std::string, std::string> first_with;
    for_each_id(plan_, [&](const std::string& id, const std::string& where) {
        const std::string pointer = where + "/id";
        if (!is_sound(pointer)) {
            return;
        }
        const auto [first, is_new] = first_with.emplace(id, where);
        if (!is_new) {
            refuse(pointer, problem::duplicate_id, {id, first->second});
        }
    });
}

void Consistency::check_reference(std::string_view kind, const std::string& id, const std::string& where)
{
    const Site& site = plan_.site;
    const bool known = kind == "strip"     ? find(site.strips, id) != nullptr
                       : kind == "circuit" ? find(site.circuits, id) != nullptr
                       : kind == "stand"   ? find(site.stands, id) != nullptr
                                           : find(plan_.enclosures, id) != nullptr;
    const std::string list = (kind == "enclosure" ? "/" : "/site/") + std::string(kind) + "s";
    if (!known && is_sound(where) && (kind == "enclosure" || is_sound(list))) {
        refuse(where, problem::unknown_reference, {std::string(kind), id});
    }
}

void Consistency::check_references()
{
    const std::vector<Strip>& strips = plan_.site.strips;
    for (std::size_t i = 0; i < strips.size(); ++i) {
        const std::string where = json::pointer_to("/site/strips", i);
        check_reference("circuit", strips[i].circuit, where + "/circuit");
        if (strips[i].fed_from) {
            check_reference("strip", *strips[i].fed_from, where + "/fed_from");
        }
    }
    for (std::size_t i = 0; i < plan_.enclosures.size(); ++i) {
        const Enclosure& enclosure = plan_.enclosures[i];
        const std::string where = json::pointer_to("/enclosures", i);
        if (enclosure.stand) {
            check_reference("stand", *enclosure.stand, where + "/stand");
        }
        if (enclosure.replaces) {
            check_reference("enclosure", *enclosure.replaces, where + "/replaces");
            if (*enclosure.replaces == enclosure.id && is_sound(where + "/replaces")) {
                refuse(where + "/replaces", problem::replaces_itself, {enclosure.id});
            }
        }
        for (std::size_t j = 0; j < enclosure.equipment.size(); ++j) {
            if (enclosure.equipment[j].strip) {
                check_reference("strip", *enclosure.equipment[j].strip,
                                json::pointer_to(where + "/equipment", j) + "/strip");
            }
        }
    }
}

void Consistency::check_feeding()
{
    const std::vector<Strip>& strips = plan_.site.strips;
    for (std::size_t i = 0; i < strips.size(); ++i) {
        const auto chain = feeding_chain(strips, strips[i]);
        // A ring is told once, at the strip that stands first in the file.
        const bool is_first = std::none_of(chain.begin(), chain.end(), [&](const Strip* s) { return s < &strips[i]; });
        if (!closes(chain) || !is_first) {
            continue;
        }
        std::string ids;
        for (const Strip* strip : chain) {
            ids += (ids.empty() ? "" : ", ") + strip->id;
        }
        refuse(json::pointer_to("/site/strips", i) + "/fed_from", problem::feeding_cycle, {ids});
    }
}

} // namespace loam::plan
