#include "core/plan/element_ids.hpp"

#include "core/json/pointer.hpp"

namespace loam::plan {

namespace {

using Visit = std::function<void(const std::string&, const std::string&)>;

template <class T> void visit_list(const std::vector<T>& elements, const std::string& where, const Visit& visit)
{
    for (std::size_t i = 0; i < elements.size(); ++i) {
        visit(elements[i].id, json::pointer_to(where, i));
    }
}

void visit_enclosure(const Enclosure& enclosure, const std::string& where, const Visit& visit)
{
    visit(enclosure.id, where);
    visit_list(enclosure.shell.panels, where + "/shell/panels", visit);
    visit_list(enclosure.shell.linings, where + "/shell/linings", visit);
    visit_list(enclosure.shell.top.covers, where + "/shell/top/covers", visit);
    visit_list(enclosure.shell.vents, where + "/shell/vents", visit);
    visit_list(enclosure.animals, where + "/animals", visit);
    for (std::size_t i = 0; i < enclosure.animals.size(); ++i) {
        visit_list(enclosure.animals[i].measurements, json::pointer_to(where + "/animals", i) + "/measurements", visit);
    }
    visit_list(enclosure.substrate, where + "/substrate", visit);
    visit_list(enclosure.fittings, where + "/fittings", visit);
    visit_list(enclosure.equipment, where + "/equipment", visit);
    visit_list(enclosure.readings, where + "/readings", visit);
}

} // namespace

void for_each_id(const Plan& plan, const Visit& visit)
{
    visit_list(plan.site.circuits, "/site/circuits", visit);
    visit_list(plan.site.strips, "/site/strips", visit);
    visit_list(plan.site.stands, "/site/stands", visit);
    for (std::size_t i = 0; i < plan.enclosures.size(); ++i) {
        visit_enclosure(plan.enclosures[i], json::pointer_to("/enclosures", i), visit);
    }
    visit_list(plan.owned, "/owned", visit);
    visit_list(plan.wishes, "/wishes", visit);
    visit_list(plan.own_lines, "/own_lines", visit);
}

} // namespace loam::plan
