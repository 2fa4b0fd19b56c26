// One enclosure's conduction against CalculiX, a general-purpose solver by finite elements, where it is installed
// (Debian package calculix-ccx).
#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <filesystem>

#include "tests/catch.hpp"
#include "tests/core/climate/dried_bed.hpp"

using namespace loam::climate;

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
    const auto theirs = test::read_calculix(bed, (folder / "bed.dat").string());
    const std::vector<double> ours = test::solve_bricks(bed);
    REQUIRE(theirs.size() == ours.size());
    double worst_k = 0.0;
    double square = 0.0;
    for (std::size_t brick = 0; brick < ours.size(); ++brick) {
        worst_k = std::max(worst_k, std::abs(ours[brick] - theirs[brick]));
        square += (ours[brick] - theirs[brick]) * (ours[brick] - theirs[brick]);
    }
    const double hottest_c = *std::max_element(theirs.begin(), theirs.end());
    const double mean_k = std::sqrt(square / static_cast<double>(ours.size()));
    INFO("worst " << worst_k << " K, mean " << mean_k << " K, hottest " << hottest_c << " degC");
    CHECK(hottest_c > 45.0); // a rise worth comparing
    CHECK(worst_k < 0.02 * (hottest_c - bed.below_c));
    CHECK(mean_k < 0.002 * (hottest_c - bed.below_c));
    std::filesystem::remove_all(folder);
}

TEST_CASE("the fine field's iterative solver finds what direct factors find")
{
    const test::DriedBed bed;
    const std::vector<double> direct = test::solve_bricks(bed);
    const std::vector<double> iterated = test::solve_as_field(bed, test::system_of(bed), 1e-10);
    REQUIRE(iterated.size() == direct.size());
    double worst_k = 0.0;
    for (std::size_t brick = 0; brick < direct.size(); ++brick)
        worst_k = std::max(worst_k, std::abs(iterated[brick] - direct[brick]));
    CHECK(worst_k < 1e-6);
}
