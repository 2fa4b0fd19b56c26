// Conduction in one bed: ours against CalculiX (ccx), whole process, where that is installed. Its elements are half as
// wide as our bricks, which gives both about the same error. Run: bench_conduction, on an idle machine.
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>

#include "tests/catch.hpp"
#include "tests/core/climate/dried_bed.hpp"

using namespace loam::climate;

namespace {

using Clock = std::chrono::steady_clock;

double milliseconds_since(Clock::time_point begin)
{
    return std::chrono::duration<double, std::milli>(Clock::now() - begin).count();
}

} // namespace

TEST_CASE("conduction beside another solver", "[bench]")
{
    const test::DriedBed bed;
    const auto begin = Clock::now();
    REQUIRE_FALSE(test::solve_bricks(bed).empty());
    std::printf("ours, with its set-up: %.1f ms\n", milliseconds_since(begin));
    if (std::system("command -v ccx >/dev/null 2>&1") != 0)
        return;
    const auto folder = std::filesystem::temp_directory_path() / "loamstead-bench-bed";
    std::filesystem::create_directories(folder);
    test::write_calculix(bed, (folder / "bed.inp").string());
    const std::string run = "cd '" + folder.string() + "' && OMP_NUM_THREADS=1 ccx -i bed >ccx.log 2>&1";
    const auto theirs = Clock::now();
    REQUIRE(std::system(run.c_str()) == 0);
    std::printf("CalculiX, whole process: %.1f ms\n", milliseconds_since(theirs));
    std::filesystem::remove_all(folder);
}
