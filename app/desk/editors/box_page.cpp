#include "app/desk/editors/box_page.hpp"

#include <algorithm>

#include "app/words/verdicts.hpp"

namespace loam::desk {

using words::Quantity;

std::vector<Option> material_options(const FormState& state, catalog::MaterialUse use)
{
    std::vector<Option> options;
    for (const catalog::Material& material : state.catalog->materials) {
        if (std::find(material.uses.begin(), material.uses.end(), use) != material.uses.end()) {
            options.push_back({QString::fromStdString(material.id), QString::fromStdString(material.name)});
        }
    }
    return options;
}

namespace {

QString material_name(const FormState& form, const std::string& id)
{
    const catalog::Material* material = form.catalog->find_material(id);
    return QString::fromStdString(material != nullptr ? material->name : id);
}

// Which of the others goes once this one is proved.
std::vector<Option> other_boxes(const FormState& form)
{
    std::vector<Option> options;
    for (const plan::Enclosure& each : form.plan.enclosures) {
        if (each.id != form.enclosure) {
            options.push_back({QString::fromStdString(each.id), QString::fromStdString(each.name)});
        }
    }
    return options;
}

} // namespace

BoxPage::BoxPage(FormState& state, QWidget* parent) : Page(state, "boxPage", parent)
{
    build_shell();
    build_panels();
    build_linings();
    build_top();
    build_covers();
    build_vents();
}

void BoxPage::build_shell()
{
    heading(tr("Box"));
    FieldSet& self = fields([this](plan::Plan& plan) { return box_pointer(plan); });
    self.text(tr("Name"), "name", [this](plan::Plan& plan) {
        plan::Enclosure* enclosure = box(plan);
        return enclosure != nullptr ? TextSlot(&enclosure->name) : TextSlot();
    });
    const std::function<plan::Enclosure*(plan::Plan&)> in_view = [this](plan::Plan& plan) { return box(plan); };
    self.choice(tr("Stands on"), "stand",
                optional_text_choice(member_of(in_view, &plan::Enclosure::stand), [](const FormState& form) {
                    std::vector<Option> options;
                    for (const plan::Stand& candidate : form.plan.site.stands) {
                        options.push_back({QString::fromStdString(candidate.id), QString::fromStdString(candidate.id)});
                    }
                    return options;
                }));
    self.choice(tr("Takes over from"), "replaces",
                optional_text_choice(member_of(in_view, &plan::Enclosure::replaces), other_boxes, tr("no other box")));

    FieldSet& shell = fields([this](plan::Plan& plan) {
        const std::string pointer = box_pointer(plan);
        return pointer.empty() ? pointer : pointer + "/shell";
    });
    const std::function<plan::Shell*(plan::Plan&)> of_shell = [this](plan::Plan& plan) {
        plan::Enclosure* enclosure = box(plan);
        return enclosure != nullptr ? &enclosure->shell : nullptr;
    };
    const Limits side{0.05, 10.0};
    shell.quantity(tr("Inner length"), "length_m", Quantity::length, side, slot_of(of_shell, &plan::Shell::length_m));
    shell.quantity(tr("Inner width, front to back"), "width_m", Quantity::length, side,
                   slot_of(of_shell, &plan::Shell::width_m));
    shell.quantity(tr("Inner height"), "height_m", Quantity::length, side, slot_of(of_shell, &plan::Shell::height_m));
    const auto panels = [](const FormState& form) { return material_options(form, catalog::MaterialUse::panel); };
    shell.choice(tr("Walls"), "walls", text_choice(member_of(of_shell, &plan::Shell::walls), panels));
    shell.quantity(tr("Wall thickness"), "wall_thickness_m", Quantity::thickness, {0.001, 0.2},
                   slot_of(of_shell, &plan::Shell::wall_thickness_m));
    shell.choice(tr("Base"), "base", text_choice(member_of(of_shell, &plan::Shell::base), panels));
    shell.quantity(tr("Base thickness"), "base_thickness_m", Quantity::thickness, {0.001, 0.2},
                   slot_of(of_shell, &plan::Shell::base_thickness_m));
}

void BoxPage::build_top()
{
    heading(tr("Top"));
    FieldSet& top = fields([this](plan::Plan& plan) {
        const std::string pointer = box_pointer(plan);
        return pointer.empty() ? pointer : pointer + "/shell/top";
    });
    const std::function<plan::Top*(plan::Plan&)> of_top = [this](plan::Plan& plan) {
        plan::Enclosure* enclosure = box(plan);
        return enclosure != nullptr ? &enclosure->shell.top : nullptr;
    };
    std::vector<QString> kinds;
    for (const auto each : {plan::TopKind::mesh, plan::TopKind::glass, plan::TopKind::board, plan::TopKind::open}) {
        kinds.push_back(words::top_kind(each));
    }
    top.choice(tr("Kind"), "kind", enum_choice(member_of(of_top, &plan::Top::kind), std::move(kinds)));
    top.quantity(tr("Open share of the mesh"), "open_fraction", Quantity::fraction, {0.01, 1.0},
                 slot_of(of_top, &plan::Top::open_fraction));
    top.only_when([this](plan::Plan& plan) {
        const plan::Enclosure* e = box(plan);
        return e != nullptr && e->shell.top.kind == plan::TopKind::mesh;
    });
}

void BoxPage::build_covers()
{
    heading(tr("Covers on the top"));
    const auto list = [this](plan::Plan& plan) {
        plan::Enclosure* e = box(plan);
        return e != nullptr ? &e->shell.top.covers : nullptr;
    };
    ElementList& covers = elements(tr("cover"), actions_for<plan::Cover>(
                                                    list, "v",
                                                    [this](plan::Plan& plan) {
                                                        // Over the right half: lamps usually hang on the left, and a
                                                        // cover must stay clear of them.
                                                        const plan::Shell& shell = box(plan)->shell;
                                                        plan::Cover cover;
                                                        cover.material = "acrylic";
                                                        cover.x_m = shell.length_m * 0.6;
                                                        cover.length_m = shell.length_m * 0.4;
                                                        cover.width_m = shell.width_m;
                                                        return cover;
                                                    },
                                                    [](const plan::Cover& cover, FormState& form) {
                                                        return QStringLiteral("%1  %2 × %3")
                                                            .arg(material_name(form, cover.material),
                                                                 form.formatter.value(cover.length_m, Quantity::length),
                                                                 form.formatter.value(cover.width_m, Quantity::length));
                                                    }));
    const std::function<plan::Cover*(plan::Plan&)> chosen = [list, &covers](plan::Plan& plan) {
        auto* all = list(plan);
        return all != nullptr ? element_in(*all, covers.chosen()) : nullptr;
    };
    FieldSet& set = fields([this, list, &covers](plan::Plan& plan) {
        return element_pointer(box_pointer(plan) + "/shell/top/covers", list(plan), covers.chosen());
    });
    set.choice(tr("Material"), "material",
               text_choice(member_of(chosen, &plan::Cover::material),
                           [](const FormState& form) { return material_options(form, catalog::MaterialUse::cover); }));
    const struct {
        QString label;
        const char* key;
        double plan::Cover::*member;
        Limits limits;
    } lengths[] = {{tr("From the left"), "x_m", &plan::Cover::x_m, {-1.0, 10.0}},
                   {tr("From the front"), "y_m", &plan::Cover::y_m, {-1.0, 10.0}},
                   {tr("Length"), "length_m", &plan::Cover::length_m, {0.01, 10.0}},
                   {tr("Width"), "width_m", &plan::Cover::width_m, {0.01, 10.0}}};
    for (const auto& each : lengths) {
        set.quantity(each.label, each.key, Quantity::length, each.limits, slot_of(chosen, each.member));
    }
}

void BoxPage::build_vents()
{
    heading(tr("Vents"));
    const auto list = [this](plan::Plan& plan) {
        plan::Enclosure* e = box(plan);
        return e != nullptr ? &e->shell.vents : nullptr;
    };
    ElementList& vents =
        elements(tr("vent"), actions_for<plan::Vent>(
                                 list, "w",
                                 [](plan::Plan&) {
                                     plan::Vent vent;
                                     vent.free_area_m2 = 0.005;
                                     vent.height_above_base_m = 0.1;
                                     return vent;
                                 },
                                 [](const plan::Vent& vent, FormState& form) {
                                     return form.formatter.value(vent.free_area_m2, Quantity::small_area);
                                 }));
    const std::function<plan::Vent*(plan::Plan&)> chosen = [list, &vents](plan::Plan& plan) {
        auto* all = list(plan);
        return all != nullptr ? element_in(*all, vents.chosen()) : nullptr;
    };
    FieldSet& set = fields([this, list, &vents](plan::Plan& plan) {
        return element_pointer(box_pointer(plan) + "/shell/vents", list(plan), vents.chosen());
    });
    set.quantity(tr("Free area"), "free_area_m2", Quantity::small_area, {0.0, 4.0},
                 slot_of(chosen, &plan::Vent::free_area_m2));
    set.quantity(tr("Height above the base"), "height_above_base_m", Quantity::length, {0.0, 10.0},
                 slot_of(chosen, &plan::Vent::height_above_base_m));
}

} // namespace loam::desk
