#include "core/assess/needs.hpp"

#include <algorithm>

#include "core/plan/names.hpp"

namespace loam::assess {

namespace {

// As resources/prices/README.md names the kinds; a user's own wall material needs an item under its own name.
std::string shell_kind(const std::string& walls)
{
    if (walls == "float-glass") {
        return "shell.glass";
    }
    if (walls == "plywood" || walls == "melamine-board") {
        return "shell.wood";
    }
    if (walls == "acrylic" || walls == "pvc-foam") {
        return "shell.plastic";
    }
    return "shell." + walls;
}

} // namespace

buying::Need need(std::string kind, double amount, std::string unit, NeedCode why, Place place,
                  std::optional<double> fits_value)
{
    buying::Need one;
    one.kind = std::move(kind);
    one.amount = amount;
    one.unit = std::move(unit);
    one.fits_value = fits_value;
    if (!place.enclosure.empty()) {
        one.enclosures.push_back(std::move(place.enclosure));
    }
    one.why = std::string(why.text);
    one.where = std::move(place.where);
    return one;
}

std::vector<buying::Need> enclosure_needs(const Context& context, const Housed& housed, const EnclosureNeeds& known)
{
    const plan::Enclosure& enclosure = housed.enclosure;
    const plan::Shell& shell = enclosure.shell;
    std::vector<buying::Need> needs;
    needs.push_back(
        need(shell_kind(shell.walls), 1.0, "each", "need.shell", housed.at(), shell.length_m * shell.width_m));
    for (const buying::Need& one : device_needs(context, housed)) {
        needs.push_back(one);
    }
    needs.push_back(need("measure.thermometer", 2.0, "each", "need.thermometers", housed.at()));
    needs.push_back(need("measure.hygrometer", 1.0, "each", "need.hygrometer", housed.at()));
    for (const SubstrateResult& layer : known.substrate) {
        // The upper end, so that nobody is a bag short.
        needs.push_back(
            need("substrate." + layer.material, layer.expanded_l.high, "l", "need.substrate", housed.at(layer.layer)));
    }
    for (const plan::Cover& cover : shell.top.covers) {
        needs.push_back(
            need("cover." + cover.material, cover.length_m * cover.width_m, "m2", "need.cover", housed.at(cover.id)));
    }
    for (const plan::Fitting& fitting : enclosure.fittings) {
        needs.push_back(need("fitting." + std::string(plan::name_of(fitting.kind)), 1.0, "each", "need.fitting",
                             housed.at(fitting.id)));
    }
    for (const buying::Need& one : care_needs(context, housed, known.water)) {
        needs.push_back(one);
    }
    return needs;
}

} // namespace loam::assess
