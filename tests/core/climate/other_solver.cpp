// One enclosure's conduction against CalculiX, a general-purpose solver by finite elements, where it is installed
// (Debian package calculix-ccx).
#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <sstream>

#include "tests/catch.hpp"
#include "tests/core/climate/dried_bed.hpp"

using namespace loam::climate;

namespace {

// Node to temperature.
std::map<std::size_t, double> read_temperatures(const std::filesystem::path& path)
{
    std::map<std::size_t, double> found;
    std::ifstream in(path);
    for (std::string line; std::getline(in, line);) {
        std::istringstream words(line);
        std::size_t node = 0;
        double celsius = 0.0;
        if (words >> node >> celsius)
            found[node] = celsius;
    }
    return found;
}

} // namespace

TEST_CASE("a bed dried and lit in one place has the temperatures that another solver finds")
{
    if (std::system("command -v ccx >/dev/null 2>&1") != 0) {
        WARN("CalculiX (ccx) is not installed: this check is skipped.");
        return;
    }
    const auto folder = std::filesystem::temp_directory_path() / "loamstead-dried-bed";
    std::filesystem::create_directories(folder);
    const test::DriedBed bed;
    test::write_calculix(bed, (folder / "bed.inp").string());
    const std::string run = "cd '" + folder.string() + "' && OMP_NUM_THREADS=1 ccx -i bed >ccx.log 2>&1";
    REQUIRE(std::system(run.c_str()) == 0);
    const auto theirs = read_temperatures(folder / "bed.dat");
    const std::vector<double> ours = test::solve_bricks(bed);
    REQUIRE(theirs.size() == ours.size());
    double worst_k = 0.0;
    double square = 0.0;
    double hottest_c = 0.0;
    std::size_t brick = 0;
    for (std::size_t j = 0; j < bed.ny; ++j)
        for (std::size_t i = 0; i < bed.nx; ++i)
            for (std::size_t k = 0; k < bed.nz(); ++k, ++brick) {
                const std::size_t nx = 2 * bed.nx + 1;
                const std::size_t ny = 2 * bed.ny + 1;
                const double there_c = theirs.at(1 + 2 * i + 1 + nx * (2 * j + 1 + ny * (2 * k + 1)));
                worst_k = std::max(worst_k, std::abs(ours[brick] - there_c));
                square += (ours[brick] - there_c) * (ours[brick] - there_c);
                hottest_c = std::max(hottest_c, there_c);
            }
    const double mean_k = std::sqrt(square / static_cast<double>(ours.size()));
    INFO("worst " << worst_k << " K, mean " << mean_k << " K, hottest " << hottest_c << " degC");
    CHECK(hottest_c > 45.0); // a rise worth comparing
    CHECK(worst_k < 0.02 * (hottest_c - bed.below_c));
    CHECK(mean_k < 0.002 * (hottest_c - bed.below_c));
    std::filesystem::remove_all(folder);
}
