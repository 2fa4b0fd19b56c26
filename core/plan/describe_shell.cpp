#include "core/plan/describe.hpp"
#include "core/plan/limits.hpp"
#include "core/plan/names.hpp"

namespace loam::plan {

void describe(json::Archive& archive, Cover& cover)
{
    archive.text(limits::id_key, cover.id, limits::id);
    archive.text({"material", "What it is made of: glass, acrylic, towel, foil, board or one of your own."},
                 cover.material, limits::material);
    archive.number({"x_m", "Left edge along the length, in m."}, cover.x_m, limits::position_m);
    archive.number({"y_m", "Front edge towards the back, in m."}, cover.y_m, limits::position_m);
    archive.number({"length_m", "Extent along x in m."}, cover.length_m, limits::length_m);
    archive.number({"width_m", "Extent along y in m."}, cover.width_m, limits::length_m);
    archive.extras(cover.extras);
}

void describe(json::Archive& archive, Top& top)
{
    archive.choice({"kind", "What closes the box above."}, top.kind, top_kind_names);
    archive.number({"open_fraction", "Free area of a mesh over its whole area, 0 to 1."}, top.open_fraction,
                   limits::fraction);
    archive.number({"thickness_m", "Thickness of a glass or board top in m."}, top.thickness_m,
                   limits::pane_thickness_m);
    archive.list({"covers", "Rectangles that lie on the top."}, top.covers, {.max_items = 50});
    archive.extras(top.extras);
}

void describe(json::Archive& archive, Vent& vent)
{
    archive.text(limits::id_key, vent.id, limits::id);
    archive.number({"free_area_m2", "Open area in m2, the grille's bars taken off."}, vent.free_area_m2,
                   {.min = 0.0, .max = 10.0, .exclusive_min = true});
    archive.number({"height_above_base_m", "Height of its middle above the base pane, in m."}, vent.height_above_base_m,
                   {.min = 0.0, .max = 10.0});
    archive.extras(vent.extras);
}

void describe(json::Archive& archive, Panel& panel)
{
    archive.text(limits::id_key, panel.id, limits::id);
    archive.choice({"wall", "Which wall."}, panel.wall, wall_names);
    archive.text({"material", "What it is made of, as for the walls."}, panel.material, limits::material);
    archive.number({"thickness_m", "Thickness in m."}, panel.thickness_m, limits::pane_thickness_m);
    archive.extras(panel.extras);
}

void describe(json::Archive& archive, Lining& lining)
{
    archive.text(limits::id_key, lining.id, limits::id);
    archive.choice({"wall", "Which wall it lies against."}, lining.wall, wall_names);
    archive.choice({"side", "On which side of the wall."}, lining.side, side_names);
    archive.text({"material", "What it is made of: xps, cork, a panel's material or one of your own."}, lining.material,
                 limits::material);
    archive.number({"thickness_m", "Thickness in m."}, lining.thickness_m, limits::pane_thickness_m);
    archive.extras(lining.extras);
}

void describe(json::Archive& archive, Shell& shell)
{
    archive.number({"length_m", "Inner length (x) in m."}, shell.length_m, limits::length_m);
    archive.number({"width_m", "Inner width, front to back (y), in m."}, shell.width_m, limits::length_m);
    archive.number({"height_m", "Inner height, base pane to top (z), in m."}, shell.height_m, limits::length_m);
    archive.text({"walls", "Material of the walls: float-glass, acrylic, pvc-foam, plywood, melamine-board or one of "
                           "your own."},
                 shell.walls, limits::material);
    archive.number({"wall_thickness_m", "Thickness of the walls in m."}, shell.wall_thickness_m,
                   limits::pane_thickness_m);
    archive.text({"base", "Material of the base, as for the walls."}, shell.base, limits::material);
    archive.number({"base_thickness_m", "Thickness of the base in m."}, shell.base_thickness_m,
                   limits::pane_thickness_m);
    archive.list({"panels", "Walls that are not made as the others are: a glass front, a door."}, shell.panels,
                 {.max_items = 4});
    archive.list({"linings", "What lies flat against a whole wall: a backdrop inside, insulation outside. Several lie "
                             "upon each other in the order of the list; outside ones are cut out around a mat."},
                 shell.linings, {.max_items = 20});
    archive.object({"top", "The top."}, shell.top);
    archive.list({"vents", "Openings in the walls."}, shell.vents, {.max_items = 50});
    archive.extras(shell.extras);
}

} // namespace loam::plan
