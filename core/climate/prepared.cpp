#include "core/climate/prepared.hpp"

#include "core/climate/spd.hpp"

namespace loam::climate {

namespace {

// Only what is known to be without effect on the scene (its dryness apart) and on which bricks touch is taken out: a
// field that is forgotten here costs time, one that is taken out wrongly would give the wrong box.
Box shape_of(Box box)
{
    for (Lamp& lamp : box.lamps) {
        lamp.id.clear();
        lamp.power_w = {};
        lamp.radiant_share = {};
        lamp.convective_share = {};
        lamp.at_night = false;
        lamp.dome_m = 0.0;
        lamp.control = {};
    }
    for (Mat& mat : box.mats) {
        mat.id.clear();
        mat.power_w = {};
        mat.at_night = false;
        mat.control = {};
    }
    box.perches.clear();
    box.animal_back_m = 0.0;
    box.animal_length_m = 0.0;
    box.climbs = false;
    box.misting_l_per_day = {};
    box.mistings_per_day = 0;
    box.film_factor = {};
    box.exchange_factor = {};
    box.leak_air_changes_per_h = {};
    box.evaporation_factor = {};
    box.mixing_w_m2k = {};
    box.mesh_return = {};
    box.model_error_k = 0.0;
    box.ties = {};
    return box;
}

bool differ_in_lamps_alone(Box one, const Box& other)
{
    one.lamps = other.lamps;
    return one == other;
}

// As make_scene() would have it: a cast hangs on the box and its own lamp.
std::optional<Scene> scene_from(const Prepared& kept, const Box& box, const Box& shape)
{
    const std::vector<Lamp>& before = kept.shape.lamps;
    auto scene = cast_where(
        box, kept.scene, [&](std::size_t l, double) { return l >= before.size() || !(before[l] == shape.lamps[l]); });
    if (scene)
        scene->dryness = dryness_of(box, *scene);
    return scene;
}

} // namespace

std::optional<Scene> scene_for(const Box& box, const Cells& cells, Workspace::Level& level)
{
    Box shape = shape_of(box);
    const Prepared* kept = level.prepared.get();
    const bool lamps_alone = kept != nullptr && kept->cells == cells && differ_in_lamps_alone(kept->shape, shape);
    auto scene = lamps_alone ? scene_from(*kept, box, shape) : make_scene(box, cells);
    if (scene && !(lamps_alone && kept->shape == shape)) {
        auto order = lamps_alone ? kept->order : std::vector<std::size_t>{}; // which bricks touch hangs on no lamp
        level.prepared = std::make_shared<const Prepared>(Prepared{std::move(shape), cells, *scene, std::move(order)});
    }
    return scene;
}

const std::vector<std::size_t>& order_for(const Model& model, Workspace::Level& level)
{
    if (level.prepared->order.empty()) {
        Prepared with_order = *level.prepared;
        with_order.order = sparse_order(model.layout.bricks, model.links);
        level.prepared = std::make_shared<const Prepared>(std::move(with_order));
    }
    return level.prepared->order;
}

} // namespace loam::climate
