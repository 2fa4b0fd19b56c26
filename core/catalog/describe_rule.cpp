#include <variant>

#include "core/catalog/describe.hpp"
#include "core/catalog/names.hpp"
#include "core/catalog/problem_codes.hpp"

namespace loam::space {

static void whole_number(json::Archive& archive, json::Key key, int& value)
{
    std::int64_t wide = value;
    archive.integer(key, wide, catalog::limits::animals);
    value = static_cast<int>(wide);
}

void describe(json::Archive& archive, ShareStep& step)
{
    whole_number(archive, {"from", "First animal that the step counts for"}, step.from);
    std::optional<std::int64_t> to = step.to;
    archive.integer({"to", "Last one; absent: without end"}, to, catalog::limits::animals);
    step.to = to ? std::optional<int>(static_cast<int>(*to)) : std::nullopt;
    if (step.to) {
        catalog::refuse_unless_ordered(archive, {"from", static_cast<double>(step.from)},
                                       {"to", static_cast<double>(*step.to)});
    }
    archive.number({"share", "Share of the base area that each of them adds"}, step.share, catalog::limits::ratio);
}

void describe(json::Archive& archive, SizeMultiple& rule)
{
    archive.number({"length_factor", "Length over the body measure"}, rule.length_factor, catalog::limits::factor);
    archive.number({"width_factor", "Width over the body measure"}, rule.width_factor, catalog::limits::factor);
    archive.number({"height_factor", "Height over the body measure"}, rule.height_factor, catalog::limits::factor);
    archive.number({"height_min_m", "Least height, m"}, rule.height_min_m, catalog::limits::side_m);
    whole_number(archive, {"covers", "Animals that the base area is meant for"}, rule.covers);
    archive.list({"further", "What further animals add"}, rule.further, {0, 20});
}

void describe(json::Archive& archive, SizeClass& size)
{
    archive.number({"up_to_m", "Largest body measure of the class, m; absent: all larger ones"}, size.up_to_m,
                   catalog::limits::body_length_m);
    archive.number({"area_m2", "Base area, m2"}, size.area_m2, catalog::limits::area_m2);
    archive.number({"each_further_m2", "Area for each further animal, m2"}, size.each_further_m2,
                   catalog::limits::area_m2);
    archive.number({"length_m", "Least length, m"}, size.length_m, catalog::limits::side_m);
    archive.number({"width_m", "Least width, m"}, size.width_m, catalog::limits::side_m);
    archive.number({"height_m", "Least height, m"}, size.height_m, catalog::limits::side_m);
}

static bool ascending(const std::vector<SizeClass>& classes)
{
    for (std::size_t i = 1; i < classes.size(); ++i) {
        const auto& below = classes[i - 1].up_to_m;
        const auto& above = classes[i].up_to_m;
        if (!below || (above && *above <= *below)) {
            return false;
        }
    }
    return true;
}

void describe(json::Archive& archive, SizeClasses& rule)
{
    whole_number(archive, {"covers", "Animals that the base area is meant for"}, rule.covers);
    archive.list({"classes", "By body measure, ascending"}, rule.classes, {1, 50});
    archive.list({"further", "What further animals add as shares"}, rule.further, {0, 20});
    if (!ascending(rule.classes)) {
        archive.refuse("classes", catalog::problem::classes_order, {});
    }
}

} // namespace loam::space

namespace loam::catalog {

// A floor-area formula as it stands in a file: exactly one member is given.
struct FormulaForm {
    std::optional<space::SizeMultiple> multiple;
    std::optional<space::SizeClasses> classes;
};

static void describe(json::Archive& archive, FormulaForm& form)
{
    archive.object({"multiple", "Sides as multiples of the body measure"}, form.multiple);
    archive.object({"classes", "Areas by size class"}, form.classes);
    if (form.multiple.has_value() == form.classes.has_value()) {
        archive.refuse("", problem::not_exactly_one, {"multiple, classes"});
    }
}

static FormulaForm form_of(const space::AreaFormula& formula)
{
    FormulaForm form;
    if (const auto* multiple = std::get_if<space::SizeMultiple>(&formula)) {
        form.multiple = *multiple;
    } else {
        form.classes = std::get<space::SizeClasses>(formula);
    }
    return form;
}

void describe(json::Archive& archive, Rule& rule)
{
    archive.text({"id", "kebab-case"}, rule.id, an_id);
    archive.text({"title", "A plain description"}, rule.title, a_name);
    archive.choice({"kind", "What weight it carries"}, rule.kind, rule_kind_names);
    archive.text({"jurisdiction", "Where it is law or official guidance, or none"}, rule.jurisdiction, {1, 20});
    archive.choice({"measure", "What of the body it counts by"}, rule.measure, body_measure_names);
    flag_or_false(archive, {"climbing_only", "Applies to climbing habits only; absent: false"}, rule.climbing_only);
    // Reading starts empty: a member that the file leaves out would otherwise keep what a fresh rule holds.
    FormulaForm form = archive.mode() == json::Archive::Mode::read ? FormulaForm{} : form_of(rule.formula);
    archive.object({"formula", "Exactly one of multiple and classes"}, form);
    if (form.classes) {
        rule.formula = std::move(*form.classes);
    } else {
        rule.formula = form.multiple.value_or(space::SizeMultiple{});
    }
    archive.object({"source", "Where the rule was published"}, rule.source);
    archive.extras(rule.extras);
}

} // namespace loam::catalog
