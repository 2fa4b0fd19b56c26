#include "app/desk/editors/bed_page.hpp"

#include "app/desk/editors/box_page.hpp"

namespace loam::desk {

using words::Quantity;

BedPage::BedPage(FormState& state, QWidget* parent) : Page(state, "bedPage", parent)
{
    heading(tr("Bed, lowest layer first"));
    const std::function<std::vector<plan::SubstrateLayer>*(plan::Plan&)> list = [this](plan::Plan& plan) {
        plan::Enclosure* enclosure = box(plan);
        return enclosure != nullptr ? &enclosure->substrate : nullptr;
    };
    ElementList& layers =
        elements(tr("layer"), actions_for<plan::SubstrateLayer>(
                                  list, "b",
                                  [](plan::Plan&) {
                                      plan::SubstrateLayer layer;
                                      layer.material = "coir-chips";
                                      return layer;
                                  },
                                  [](const plan::SubstrateLayer& layer, FormState& form) {
                                      const catalog::Material* material = form.catalog->find_material(layer.material);
                                      return QStringLiteral("%1  %2").arg(
                                          QString::fromStdString(material != nullptr ? material->name : layer.material),
                                          form.formatter.value(layer.depth_m, Quantity::length));
                                  }));
    const std::function<plan::SubstrateLayer*(plan::Plan&)> chosen = [list, &layers](plan::Plan& plan) {
        auto* all = list(plan);
        return all != nullptr ? element_in(*all, layers.chosen()) : nullptr;
    };
    FieldSet& set = fields([this, list, &layers](plan::Plan& plan) {
        return element_pointer(box_pointer(plan) + "/substrate", list(plan), layers.chosen());
    });
    set.choice(tr("Material"), "material",
               text_choice(member_of(chosen, &plan::SubstrateLayer::material), [](const FormState& form) {
                   return material_options(form, catalog::MaterialUse::substrate);
               }));
    set.quantity(tr("Settled depth"), "depth_m", Quantity::length, {0.001, 1.0},
                 slot_of(chosen, &plan::SubstrateLayer::depth_m));
    set.quantity(tr("At the right, if sloped"), "depth_at_right_m", Quantity::length, {0.0, 1.0},
                 slot_of(chosen, &plan::SubstrateLayer::depth_at_right_m));
    set.quantity(tr("Water by volume"), "water_fraction", Quantity::fraction, {0.0, 1.0},
                 slot_of(chosen, &plan::SubstrateLayer::water_fraction));
}

} // namespace loam::desk
