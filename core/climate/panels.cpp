#include "core/climate/panels.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/climate/balance.hpp"
#include "core/climate/psychrometrics.hpp"
#include "core/climate/walls.hpp"
#include "core/units.hpp"

namespace loam::climate {

namespace {

double black_w_m2(double celsius)
{
    const double square = units::kelvin_from_celsius(celsius) * units::kelvin_from_celsius(celsius);
    return units::stefan_boltzmann_w_m2_k4 * square * square;
}

// What all cells of a face have in common.
struct FaceTerms {
    bool closed = false;
    double air_c = 0.0;
    double vapour = 0.0; // humidity ratio of that air
    double dew_c = 0.0;
    double inside_w_m2k = 0.0;
    double outside_w_m2k = 0.0;
    double through_w_m2k = 0.0;
    double along_w_k = 0.0; // of each half of the thickness: conductivity times thickness
    double inside_c = 0.0;  // of the joint balance
    double outside_c = 0.0;
    double emissivity_inside = 0.0;
    double emissivity_outside = 0.0;
};

double half_sheet_w_k(const std::vector<const Sheet*>& sheets)
{
    double sum = 0.0;
    for (const Sheet* sheet : sheets)
        sum += sheet->conductivity_w_mk.likely * sheet->thickness_m;
    return 0.5 * sum;
}

std::vector<const Sheet*> sheets_of(const Box& box, const Face& face)
{
    if (face.kind == FaceKind::wall)
        return wall_sheets(box, face.plane, face.mat.has_value());
    std::vector<const Sheet*> sheets;
    if (box.top == TopKind::pane)
        sheets.push_back(&box.top_sheet);
    if (face.cover)
        sheets.push_back(&box.covers[*face.cover].sheet);
    return sheets;
}

FaceTerms terms_of(const Box& box, const Scene& scene, const Model& model, const std::vector<double>& solution,
                   std::size_t f)
{
    const FaceModel& face = model.faces[f];
    FaceTerms terms;
    if (!face.place)
        return terms;
    const Layout& layout = model.layout;
    terms.closed = true;
    terms.air_c = solution[face.upper ? layout.upper_air() : layout.lower_air()];
    terms.vapour = solution[face.upper ? layout.upper_vapour() : layout.lower_vapour()];
    terms.dew_c = dew_point_c(terms.vapour).value_or(-INFINITY);
    terms.inside_c = solution[layout.face_inside(*face.place)];
    terms.outside_c = solution[layout.face_outside(*face.place)];
    terms.inside_w_m2k = film_w_m2k(face.inside, terms.inside_c, terms.air_c).value_or(0.0);
    terms.outside_w_m2k = film_w_m2k(face.outside, terms.outside_c, model.room.celsius).value_or(0.0);
    terms.through_w_m2k = 1.0 / face.resistance_m2k_w;
    terms.along_w_k = half_sheet_w_k(sheets_of(box, scene.geometry.faces[f]));
    terms.emissivity_inside = face.emissivity_inside;
    terms.emissivity_outside = face.emissivity_outside;
    return terms;
}

// A linear form of a cell's face: slope times temperature less gain.
struct Side {
    double slope = 0.0;
    double gain = 0.0;
};

// To the cell on the left, on the right, below and above, W/(m2 K) of each half of the thickness; 0 where there is
// none.
using Couplings = std::array<double, 4>;

std::vector<Couplings> couplings_of(const PanelCells& cells, const std::vector<FaceTerms>& terms)
{
    const auto between = [&](std::size_t here, std::size_t there, double apart_m) {
        const FaceTerms& a = terms[cells.face[here]];
        const FaceTerms& b = terms[cells.face[there]];
        if (!a.closed || !b.closed || a.along_w_k <= 0.0 || b.along_w_k <= 0.0)
            return 0.0;
        return 2.0 / (1.0 / a.along_w_k + 1.0 / b.along_w_k) / (apart_m * apart_m);
    };
    std::vector<Couplings> result(cells.size(), Couplings{});
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (i % cells.columns + 1 < cells.columns) {
            result[i][1] = between(i, i + 1, cells.along_m);
            result[i + 1][0] = result[i][1];
        }
        if (i + cells.columns < cells.size()) {
            result[i][3] = between(i, i + cells.columns, cells.up_m);
            result[i + cells.columns][2] = result[i][3];
        }
    }
    return result;
}

struct Relaxation {
    const PanelCells& cells;
    const std::vector<Couplings>& couplings;
    const std::vector<FaceTerms>& terms;
    const std::vector<double>& irradiation_w_m2; // per patch
    const PanelHeat& heat;
    double room_c;
    double room_w_m2;
    PanelField& field;

    // Conduction along the sheet to the neighbours.
    void join(std::size_t here, Side& inside, Side& outside) const
    {
        const Couplings& to = couplings[here];
        const std::size_t there[] = {here - 1, here + 1, here - cells.columns, here + cells.columns};
        for (std::size_t side = 0; side < to.size(); ++side) {
            if (to[side] == 0.0)
                continue;
            inside.slope += to[side];
            inside.gain += to[side] * field.inside_c[there[side]];
            outside.slope += to[side];
            outside.gain += to[side] * field.outside_c[there[side]];
        }
    }

    static void radiate(double emissivity, double celsius, double onto_w_m2, Side& side)
    {
        const double kelvin = units::kelvin_from_celsius(celsius);
        const double quarter = units::stefan_boltzmann_w_m2_k4 * kelvin * kelvin * kelvin;
        const double emitted = quarter * kelvin;
        const double slope = 4.0 * quarter;
        side.slope += emissivity * slope;
        side.gain += emissivity * (onto_w_m2 - emitted + slope * celsius);
    }

    // Vapour that settles where the face is below the dew point, as in the joint balance.
    static void condense(const FaceTerms& face, double celsius, Side& side)
    {
        if (celsius >= face.dew_c)
            return;
        const auto full = saturation(celsius);
        if (!full)
            return;
        const double per_ratio = latent_heat_j_kg * face.inside_w_m2k / dry_air_heat_j_kgk;
        side.slope += per_ratio * full->per_kelvin;
        side.gain += per_ratio * (face.vapour - full->humidity_ratio + full->per_kelvin * celsius);
    }

    // Renews one cell; by how much it moved.
    double renew(std::size_t i) const
    {
        const FaceTerms& face = terms[cells.face[i]];
        if (!face.closed)
            return 0.0;
        Side inside{face.inside_w_m2k, face.inside_w_m2k * face.air_c + heat.inside_w_m2[i]};
        Side outside{face.outside_w_m2k, face.outside_w_m2k * room_c + heat.outside_w_m2[i]};
        radiate(face.emissivity_inside, field.inside_c[i], irradiation_w_m2[cells.patch[i]], inside);
        radiate(face.emissivity_outside, field.outside_c[i], room_w_m2, outside);
        condense(face, field.inside_c[i], inside);
        join(i, inside, outside);
        const double t = face.through_w_m2k;
        const double both = (inside.slope + t) * (outside.slope + t) - t * t;
        const double inside_c = ((outside.slope + t) * inside.gain + t * outside.gain) / both;
        const double outside_c = ((inside.slope + t) * outside.gain + t * inside.gain) / both;
        const double moved_k =
            std::max(std::abs(inside_c - field.inside_c[i]), std::abs(outside_c - field.outside_c[i]));
        field.inside_c[i] = inside_c;
        field.outside_c[i] = outside_c;
        return moved_k;
    }
};

PanelField field_of(const Box& box, const Scene& scene, const PanelCells& cells, const std::vector<FaceTerms>& terms,
                    double room_c)
{
    PanelField field{.plane = cells.plane,
                     .columns = cells.columns,
                     .rows = cells.rows,
                     .along_m = cells.along_m,
                     .up_m = cells.up_m,
                     .from_z_m = cells.plane == Plane::ceiling ? box.height_m : scene.geometry.bed_mean_m,
                     .across_m = cells.plane == Plane::right  ? box.length_m
                                 : cells.plane == Plane::back ? box.width_m
                                                              : 0.0,
                     .inside_c = {},
                     .outside_c = {},
                     .closed = {}};
    for (const std::size_t f : cells.face) {
        field.inside_c.push_back(terms[f].closed ? terms[f].inside_c : room_c);
        field.outside_c.push_back(terms[f].closed ? terms[f].outside_c : room_c);
        field.closed.push_back(terms[f].closed ? 1 : 0);
    }
    return field;
}

} // namespace

std::vector<PanelField> panel_fields(const Box& box, const Scene& scene, const Model& model, const Solution& solution,
                                     double cell_m)
{
    constexpr double settled_k = 0.005;
    constexpr int most_sweeps = 200;
    std::vector<FaceTerms> terms;
    for (std::size_t f = 0; f < model.faces.size(); ++f)
        terms.push_back(terms_of(box, scene, model, solution.values, f));
    std::vector<double> irradiation_w_m2;
    for (std::size_t p = 0; p < model.layout.patches; ++p)
        irradiation_w_m2.push_back(solution.values[model.layout.irradiation(p)]);
    const double room_c = model.room.celsius;
    std::vector<PanelField> fields;
    for (const Plane plane : {Plane::front, Plane::back, Plane::left, Plane::right, Plane::ceiling}) {
        const PanelCells cells = lay_panel(box, scene, plane, cell_m);
        const PanelHeat heat = panel_heat(box, scene, model, solution.values, cells);
        PanelField field = field_of(box, scene, cells, terms, room_c);
        const std::vector<Couplings> couplings = couplings_of(cells, terms);
        const Relaxation relaxation{cells, couplings, terms, irradiation_w_m2, heat, room_c, black_w_m2(room_c), field};
        for (int sweep = 0; sweep < most_sweeps; ++sweep) {
            double moved_k = 0.0;
            // Forth and back, so that mirrored boxes have mirrored fields.
            for (std::size_t i = 0; i < cells.size(); ++i)
                moved_k = std::max(moved_k, relaxation.renew(sweep % 2 == 0 ? i : cells.size() - 1 - i));
            if (moved_k < settled_k)
                break;
        }
        fields.push_back(std::move(field));
    }
    return fields;
}

} // namespace loam::climate
