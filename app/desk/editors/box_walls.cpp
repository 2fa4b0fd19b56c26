// Walls that are made unlike the others, and what lies flat against walls.
#include <algorithm>
#include <array>

#include "app/desk/editors/box_page.hpp"
#include "app/words/verdicts.hpp"

namespace loam::desk {

using words::Quantity;

namespace {

constexpr std::array all_walls{plan::Wall::front, plan::Wall::back, plan::Wall::left, plan::Wall::right};

std::vector<QString> wall_names()
{
    std::vector<QString> names;
    names.reserve(all_walls.size());
    for (const plan::Wall wall : all_walls) {
        names.push_back(words::wall(wall));
    }
    return names;
}

std::vector<Option> lining_options(const FormState& form)
{
    std::vector<Option> options = material_options(form, catalog::MaterialUse::underlay);
    for (const Option& panel : material_options(form, catalog::MaterialUse::panel)) {
        const bool is_new = std::none_of(options.begin(), options.end(),
                                         [&](const Option& option) { return option.value == panel.value; });
        if (is_new) {
            options.push_back(panel);
        }
    }
    return options;
}

// The front first: that is where doors are.
plan::Panel fresh_panel(const plan::Shell& shell)
{
    plan::Panel panel;
    for (const plan::Wall wall : all_walls) {
        const bool taken = std::any_of(shell.panels.begin(), shell.panels.end(),
                                       [wall](const plan::Panel& other) { return other.wall == wall; });
        if (!taken) {
            panel.wall = wall;
            break;
        }
    }
    return panel;
}

} // namespace

void BoxPage::build_panels()
{
    heading(tr("Walls of another make"));
    const auto list = [this](plan::Plan& plan) {
        plan::Enclosure* e = box(plan);
        return e != nullptr ? &e->shell.panels : nullptr;
    };
    const std::function<plan::Panel(plan::Plan&)> fresh = [this](plan::Plan& plan) {
        return fresh_panel(box(plan)->shell);
    };
    const std::function<QString(const plan::Panel&, FormState&)> text = [](const plan::Panel& panel, FormState&) {
        return QStringLiteral("%1  %2").arg(words::wall(panel.wall), QString::fromStdString(panel.material));
    };
    ElementList& panels = elements(tr("wall"), actions_for<plan::Panel>(list, "p", fresh, text));
    const std::function<plan::Panel*(plan::Plan&)> chosen = [list, &panels](plan::Plan& plan) {
        auto* all = list(plan);
        return all != nullptr ? element_in(*all, panels.chosen()) : nullptr;
    };
    FieldSet& set = fields([this, list, &panels](plan::Plan& plan) {
        return element_pointer(box_pointer(plan) + "/shell/panels", list(plan), panels.chosen());
    });
    set.choice(tr("Wall"), "wall", enum_choice(member_of(chosen, &plan::Panel::wall), wall_names()));
    set.choice(tr("Material"), "material",
               text_choice(member_of(chosen, &plan::Panel::material),
                           [](const FormState& form) { return material_options(form, catalog::MaterialUse::panel); }));
    set.quantity(tr("Thickness"), "thickness_m", Quantity::thickness, {0.001, 0.2},
                 slot_of(chosen, &plan::Panel::thickness_m));
}

void BoxPage::build_linings()
{
    heading(tr("Backdrops and insulation"));
    const auto list = [this](plan::Plan& plan) {
        plan::Enclosure* e = box(plan);
        return e != nullptr ? &e->shell.linings : nullptr;
    };
    const std::function<plan::Lining(plan::Plan&)> fresh = [](plan::Plan&) { return plan::Lining(); };
    const std::function<QString(const plan::Lining&, FormState&)> text = [](const plan::Lining& lining, FormState&) {
        return QStringLiteral("%1  %2").arg(words::lining_of(lining.wall, lining.side),
                                            QString::fromStdString(lining.material));
    };
    ElementList& linings = elements(tr("lining"), actions_for<plan::Lining>(list, "l", fresh, text));
    const std::function<plan::Lining*(plan::Plan&)> chosen = [list, &linings](plan::Plan& plan) {
        auto* all = list(plan);
        return all != nullptr ? element_in(*all, linings.chosen()) : nullptr;
    };
    FieldSet& set = fields([this, list, &linings](plan::Plan& plan) {
        return element_pointer(box_pointer(plan) + "/shell/linings", list(plan), linings.chosen());
    });
    set.choice(tr("Wall"), "wall", enum_choice(member_of(chosen, &plan::Lining::wall), wall_names()));
    set.choice(tr("Side of the wall"), "side",
               enum_choice(member_of(chosen, &plan::Lining::side),
                           {words::side(plan::Side::inside), words::side(plan::Side::outside)}));
    set.choice(tr("Material"), "material", text_choice(member_of(chosen, &plan::Lining::material), lining_options));
    set.quantity(tr("Thickness"), "thickness_m", Quantity::thickness, {0.001, 0.2},
                 slot_of(chosen, &plan::Lining::thickness_m));
}

} // namespace loam::desk
