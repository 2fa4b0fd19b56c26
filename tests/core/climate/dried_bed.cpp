#include "tests/core/climate/dried_bed.hpp"

#include <fstream>
#include <map>
#include <memory>
#include <sstream>

#include "core/climate/krylov.hpp"
#include "core/climate/spd.hpp"

namespace loam::climate::test {

namespace {

Bricks bricks_of(const DriedBed& bed)
{
    Bricks bricks{.nx = bed.nx,
                  .ny = bed.ny,
                  .nz = bed.nz(),
                  .dx_m = std::vector<double>(bed.nx, bed.dx_m()),
                  .dy_m = std::vector<double>(bed.ny, bed.dy_m()),
                  .thickness_m = {},
                  .conductivity_w_mk = {},
                  .joint_m2k_w = {}};
    for (std::size_t c = 0; c < bed.nx * bed.ny; ++c)
        for (std::size_t k = 0; k < bed.nz(); ++k) {
            const double thick_m = k == 0 ? bed.pane_m : bed.layer_m();
            const double z_m = k == 0 ? 0.5 * thick_m : bed.pane_m + (static_cast<double>(k) - 0.5) * thick_m;
            const double x_m = (static_cast<double>(c % bed.nx) + 0.5) * bed.dx_m();
            const double y_m = (static_cast<double>(c / bed.nx) + 0.5) * bed.dy_m();
            bricks.thickness_m.push_back(thick_m);
            bricks.conductivity_w_mk.push_back(bed.conductivity_w_mk(x_m, y_m, z_m));
        }
    return bricks;
}

} // namespace

BedSystem system_of(const DriedBed& bed)
{
    const Bricks bricks = bricks_of(bed);
    BedSystem system{.links = conduction_links(bricks),
                     .diagonal_w_k = std::vector<double>(bricks.count(), 0.0),
                     .heat_w = std::vector<double>(bricks.count(), 0.0),
                     .stencil = {}};
    system.stencil = stencil_of(bricks, system.links);
    const double area_m2 = bed.dx_m() * bed.dy_m();
    const auto half = [&](std::size_t brick) {
        return 0.5 * bricks.thickness_m[brick] / bricks.conductivity_w_mk[brick];
    };
    for (std::size_t c = 0; c < bed.nx * bed.ny; ++c) {
        const std::size_t below = c * bed.nz();
        const std::size_t above = below + bed.nz() - 1;
        const double down_w_k = area_m2 / (half(below) + 1.0 / bed.below_w_m2k);
        system.diagonal_w_k[below] += down_w_k;
        system.heat_w[below] += down_w_k * bed.below_c;
        // The light falls on the face between half a brick and the film.
        const double up_w_k = area_m2 / (half(above) + 1.0 / bed.above_w_m2k);
        const double x_m = (static_cast<double>(c % bed.nx) + 0.5) * bed.dx_m();
        const double y_m = (static_cast<double>(c / bed.nx) + 0.5) * bed.dy_m();
        system.diagonal_w_k[above] += up_w_k;
        system.heat_w[above] += up_w_k * (bed.above_c + bed.light_at_w_m2(x_m, y_m) / bed.above_w_m2k);
    }
    return system;
}

std::vector<double> solve_bricks(const DriedBed& bed)
{
    BedSystem system = system_of(bed);
    SpdSolver solver;
    solver.set_pattern(sparse_order(system.heat_w.size(), system.links), system.links);
    if (!solver.factor(system.links, system.diagonal_w_k))
        return {};
    solver.solve(system.heat_w);
    return system.heat_w;
}

std::vector<double> solve_as_field(const DriedBed& bed, const BedSystem& system, double share)
{
    Model model;
    model.layout.bricks = system.heat_w.size();
    model.nx = bed.nx;
    model.nz = bed.nz();
    model.floor_patch.assign(bed.nx * bed.ny, 0);
    model.stencil = system.stencil;
    Slopes slopes;
    slopes.clear(model.layout.bricks);
    slopes.diagonal = system.diagonal_w_k;
    const std::size_t shared = model.layout.size() - model.layout.bricks; // airs that touch nothing here
    for (std::size_t place = 0; place < shared; ++place)
        slopes.shared_shared.push_back({place, place, 1.0});
    const auto conditioner = std::make_shared<const Conditioner>(mean_layers(model, slopes), model.floor_patch);
    std::vector<double> right = system.heat_w;
    right.resize(model.layout.size(), 0.0);
    auto celsius = KrylovSolver(model, slopes, conditioner).solve(right, share);
    if (!celsius)
        return {};
    celsius->resize(model.layout.bricks);
    return *std::move(celsius);
}

namespace {

// Half bricks and the nodes between them.
struct Mesh {
    const DriedBed& bed;
    std::size_t nx() const { return 2 * bed.nx; }
    std::size_t ny() const { return 2 * bed.ny; }
    std::size_t nz() const { return 2 * bed.nz(); }
    double z_m(std::size_t k) const
    {
        return k <= 2 ? 0.5 * static_cast<double>(k) * bed.pane_m
                      : bed.pane_m + 0.5 * static_cast<double>(k - 2) * bed.layer_m();
    }
    double x_m(std::size_t i) const { return 0.5 * static_cast<double>(i) * bed.dx_m(); }
    double y_m(std::size_t j) const { return 0.5 * static_cast<double>(j) * bed.dy_m(); }
    std::size_t node(std::size_t i, std::size_t j, std::size_t k) const
    {
        return 1 + i + (nx() + 1) * (j + (ny() + 1) * k);
    }
    std::size_t element(std::size_t i, std::size_t j, std::size_t k) const { return 1 + i + nx() * (j + ny() * k); }
    template <class Each> void each_element(const Each& each) const
    {
        for (std::size_t k = 0; k < nz(); ++k)
            for (std::size_t j = 0; j < ny(); ++j)
                for (std::size_t i = 0; i < nx(); ++i)
                    each(i, j, k);
    }
    double conductivity_w_mk(std::size_t i, std::size_t j, std::size_t k) const
    {
        return bed.conductivity_w_mk(0.5 * (x_m(i) + x_m(i + 1)), 0.5 * (y_m(j) + y_m(j + 1)),
                                     0.5 * (z_m(k) + z_m(k + 1)));
    }
};

void write_mesh(const Mesh& mesh, std::ofstream& out)
{
    out << "*NODE, NSET=ALL\n";
    for (std::size_t k = 0; k <= mesh.nz(); ++k)
        for (std::size_t j = 0; j <= mesh.ny(); ++j)
            for (std::size_t i = 0; i <= mesh.nx(); ++i)
                out << mesh.node(i, j, k) << ',' << mesh.x_m(i) << ',' << mesh.y_m(j) << ',' << mesh.z_m(k) << '\n';
    out << "*ELEMENT, TYPE=C3D8, ELSET=ALL\n";
    mesh.each_element([&](std::size_t i, std::size_t j, std::size_t k) {
        out << mesh.element(i, j, k);
        for (const std::size_t up : {k, k + 1})
            out << ',' << mesh.node(i, j, up) << ',' << mesh.node(i + 1, j, up) << ',' << mesh.node(i + 1, j + 1, up)
                << ',' << mesh.node(i, j + 1, up);
        out << '\n';
    });
    out << "*NSET, NSET=BRICKS\n";
    for (std::size_t j = 0; j < mesh.bed.ny; ++j)
        for (std::size_t i = 0; i < mesh.bed.nx; ++i)
            for (std::size_t k = 0; k < mesh.bed.nz(); ++k)
                out << mesh.node(2 * i + 1, 2 * j + 1, 2 * k + 1) << ",\n";
}

void write_material(const Mesh& mesh, const std::string& name, double conductivity_w_mk, std::ofstream& out)
{
    out << "*ELSET, ELSET=E" << name << '\n';
    mesh.each_element([&](std::size_t i, std::size_t j, std::size_t k) {
        if (mesh.conductivity_w_mk(i, j, k) == conductivity_w_mk)
            out << mesh.element(i, j, k) << ",\n";
    });
    out << "*MATERIAL, NAME=" << name << "\n*CONDUCTIVITY\n"
        << conductivity_w_mk << "\n*SOLID SECTION, ELSET=E" << name << ", MATERIAL=" << name << '\n';
}

} // namespace

void write_calculix(const DriedBed& bed, const std::string& path)
{
    const Mesh mesh{bed};
    std::ofstream out(path);
    out.precision(12);
    write_mesh(mesh, out);
    write_material(mesh, "GLASS", bed.glass_w_mk, out);
    write_material(mesh, "DAMP", bed.damp_w_mk, out);
    write_material(mesh, "DRY", bed.dry_w_mk, out);
    out << "*INITIAL CONDITIONS, TYPE=TEMPERATURE\nALL,20.\n*STEP\n*HEAT TRANSFER, STEADY STATE\n*FILM\n";
    mesh.each_element([&](std::size_t i, std::size_t j, std::size_t k) { // faces 1 and 2 lie below and above
        if (k == 0)
            out << mesh.element(i, j, k) << ",F1," << bed.below_c << ',' << bed.below_w_m2k << '\n';
        if (k + 1 == mesh.nz())
            out << mesh.element(i, j, k) << ",F2," << bed.above_c << ',' << bed.above_w_m2k << '\n';
    });
    out << "*DFLUX\n";
    mesh.each_element([&](std::size_t i, std::size_t j, std::size_t k) {
        if (k + 1 == mesh.nz())
            out << mesh.element(i, j, k) << ",S2,"
                << bed.light_at_w_m2(0.5 * (mesh.x_m(i) + mesh.x_m(i + 1)), 0.5 * (mesh.y_m(j) + mesh.y_m(j + 1)))
                << '\n';
    });
    out << "*NODE PRINT, NSET=BRICKS\nNT\n*END STEP\n";
}

std::vector<double> read_calculix(const DriedBed& bed, const std::string& path)
{
    std::map<std::size_t, double> of_nodes;
    std::ifstream in(path);
    for (std::string line; std::getline(in, line);) {
        std::istringstream words(line);
        std::size_t node = 0;
        double celsius = 0.0;
        if (words >> node >> celsius)
            of_nodes[node] = celsius;
    }
    const Mesh mesh{bed};
    std::vector<double> found;
    for (std::size_t j = 0; j < bed.ny; ++j)
        for (std::size_t i = 0; i < bed.nx; ++i)
            for (std::size_t k = 0; k < bed.nz(); ++k) {
                const auto at = of_nodes.find(mesh.node(2 * i + 1, 2 * j + 1, 2 * k + 1));
                if (at == of_nodes.end())
                    return {};
                found.push_back(at->second);
            }
    return found;
}

} // namespace loam::climate::test
