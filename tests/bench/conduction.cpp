// Conduction in one bed, side by side in one run: ours, on the program's 25 mm bricks and on ones a third as wide;
// SciPy's sparse direct solver on our very matrices; CalculiX (ccx) on finite elements of half the 25 mm, whose error
// is about that of our finer bricks. Each as a whole process and the solution alone; what is not installed is left out
// with a message. Run: bench_conduction, on an idle machine.
#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <functional>
#include <optional>

#include "tests/catch.hpp"
#include "tests/core/climate/dried_bed.hpp"

using namespace loam::climate;
using test::DriedBed;

namespace {

using Clock = std::chrono::steady_clock;

constexpr double share = 1e-9; // to which the iteration solves; far below what bricks of this size are true to

double milliseconds_since(Clock::time_point begin)
{
    return std::chrono::duration<double, std::milli>(Clock::now() - begin).count();
}

double least_ms(int runs, const std::function<void()>& work)
{
    double least = INFINITY;
    for (int run = 0; run < runs; ++run) {
        const auto begin = Clock::now();
        work();
        least = std::min(least, milliseconds_since(begin));
    }
    return least;
}

// Bricks whose sides are that many times shorter.
DriedBed refined(std::size_t times)
{
    DriedBed bed;
    bed.nx *= times;
    bed.ny *= times;
    bed.layers *= times;
    return bed;
}

// At the centres of the 25 mm bricks, what bricks an odd number of times finer have there.
std::vector<double> at_centres(std::size_t times, const std::vector<double>& all)
{
    const DriedBed bed;
    const DriedBed fine = refined(times);
    std::vector<double> there;
    for (std::size_t j = 0; j < bed.ny; ++j)
        for (std::size_t i = 0; i < bed.nx; ++i)
            for (std::size_t k = 0; k < bed.nz(); ++k) {
                const std::size_t column = (times * j + times / 2) * fine.nx + times * i + times / 2;
                const std::size_t layer = k == 0 ? 0 : 1 + times * (k - 1) + times / 2;
                there.push_back(all.at(column * fine.nz() + layer));
            }
    return there;
}

// By bricks seven times finer: their own error is a 49th of that of the 25 mm bricks.
std::vector<double> nearly_exact()
{
    const DriedBed fine = refined(7);
    const auto all = test::solve_as_field(fine, test::system_of(fine), share);
    REQUIRE_FALSE(all.empty());
    return at_centres(7, all);
}

struct Row {
    double whole_ms = 0.0;
    double alone_ms = 0.0;
    std::vector<double> celsius;
};

// How much longer than ours it took.
void print(const std::string& who, const Row& row, const Row& ours, const std::vector<double>& exact)
{
    REQUIRE(row.celsius.size() == exact.size());
    double most_k = 0.0;
    double square = 0.0;
    for (std::size_t i = 0; i < exact.size(); ++i) {
        const double error_k = std::abs(row.celsius[i] - exact[i]);
        most_k = std::max(most_k, error_k);
        square += error_k * error_k;
    }
    std::printf("%-34s %9.1f %6.0fx %11.2f %6.0fx %9.3f %9.4f\n", who.c_str(), row.whole_ms,
                row.whole_ms / ours.whole_ms, row.alone_ms, row.alone_ms / ours.alone_ms, most_k,
                std::sqrt(square / static_cast<double>(exact.size())));
    std::fflush(stdout);
}

constexpr std::size_t finer = 3;

Row ours_of(std::size_t times)
{
    const DriedBed bed = refined(times);
    Row row;
    const auto system = test::system_of(bed);
    row.alone_ms = least_ms(7, [&] { row.celsius = test::solve_as_field(bed, system, share); });
    row.celsius = at_centres(times, row.celsius);
    // This very program, started to solve it once.
    const std::string once = std::string(times == finer ? "'[once-finer]'" : "'[once]'") + " >/dev/null";
    const std::string self = std::filesystem::read_symlink("/proc/self/exe").string();
    row.whole_ms = least_ms(5, [&] { REQUIRE(std::system(("'" + self + "' " + once).c_str()) == 0); });
    return row;
}

bool is_there(const std::string& command)
{
    return std::system((command + " >/dev/null 2>&1").c_str()) == 0;
}

// From the line that announces the factors to the next one after them; the rest reads, assembles and writes.
Row calculix(const DriedBed& bed, const std::filesystem::path& folder)
{
    test::write_calculix(bed, (folder / "bed.inp").string());
    const std::string run = "cd '" + folder.string() + "' && OMP_NUM_THREADS=1 stdbuf -o0 ccx -i bed";
    Row row;
    const auto begin = Clock::now();
    FILE* out = popen(run.c_str(), "r");
    REQUIRE(out != nullptr);
    std::optional<Clock::time_point> factoring;
    char line[512];
    while (std::fgets(line, sizeof line, out) != nullptr) {
        const std::string said = line;
        if (said.find("Factoring the system") != std::string::npos)
            factoring = Clock::now();
        else if (factoring && row.alone_ms == 0.0 && said.find("heat flux calculation") != std::string::npos)
            row.alone_ms = milliseconds_since(*factoring);
    }
    REQUIRE(pclose(out) == 0);
    row.whole_ms = milliseconds_since(begin);
    row.celsius = test::read_calculix(bed, (folder / "bed.dat").string());
    return row;
}

template <class Value> void append(std::ofstream& out, const Value& value)
{
    out.write(reinterpret_cast<const char*>(&value), sizeof value);
}

// Entries row, column, value, then the right-hand side, as eight-byte numbers.
void write_system(const test::BedSystem& system, const std::filesystem::path& path)
{
    std::vector<double> diagonal = system.diagonal_w_k;
    for (const Link& link : system.links) {
        diagonal[link.a] += link.w_k;
        diagonal[link.b] += link.w_k;
    }
    std::ofstream out(path, std::ios::binary);
    append(out, static_cast<std::int64_t>(diagonal.size()));
    append(out, static_cast<std::int64_t>(2 * system.links.size() + diagonal.size()));
    const auto entry = [&](std::size_t row, std::size_t column, double value) {
        append(out, static_cast<double>(row));
        append(out, static_cast<double>(column));
        append(out, value);
    };
    for (const Link& link : system.links) {
        entry(link.a, link.b, -link.w_k);
        entry(link.b, link.a, -link.w_k);
    }
    for (std::size_t i = 0; i < diagonal.size(); ++i)
        entry(i, i, diagonal[i]);
    for (const double heat_w : system.heat_w)
        append(out, heat_w);
}

constexpr const char* scipy_script = R"(
import sys, time
import numpy, scipy.sparse, scipy.sparse.linalg
raw = open(sys.argv[1], 'rb').read()
size, entries = numpy.frombuffer(raw, numpy.int64, 2)
table = numpy.frombuffer(raw, numpy.float64, 3 * entries, 16).reshape(entries, 3)
heat = numpy.frombuffer(raw, numpy.float64, size, 16 + 24 * entries)
matrix = scipy.sparse.csc_matrix((table[:, 2], (table[:, 0].astype(int), table[:, 1].astype(int))), (size, size))
begin = time.perf_counter()
celsius = scipy.sparse.linalg.spsolve(matrix, heat)
alone_ms = 1000.0 * (time.perf_counter() - begin)
numpy.concatenate([[alone_ms], celsius]).tofile(sys.argv[2])
)";

Row scipy(const std::string& python, std::size_t times, const std::filesystem::path& folder)
{
    const DriedBed bed = refined(times);
    write_system(test::system_of(bed), folder / "system");
    std::ofstream(folder / "solve.py") << scipy_script;
    Row row;
    const std::string run =
        "cd '" + folder.string() + "' && OMP_NUM_THREADS=1 OPENBLAS_NUM_THREADS=1 " + python + " solve.py system found";
    const auto begin = Clock::now();
    REQUIRE(std::system(run.c_str()) == 0);
    row.whole_ms = milliseconds_since(begin);
    std::ifstream in(folder / "found", std::ios::binary);
    in.read(reinterpret_cast<char*>(&row.alone_ms), sizeof row.alone_ms);
    row.celsius.resize(bed.nx * bed.ny * bed.nz());
    in.read(reinterpret_cast<char*>(row.celsius.data()),
            static_cast<std::streamsize>(row.celsius.size() * sizeof(double)));
    REQUIRE(in);
    row.celsius = at_centres(times, row.celsius);
    return row;
}

// The least of some runs, whole and alone each for itself.
Row least_of(int runs, const std::function<Row()>& work)
{
    Row least = work();
    for (int run = 1; run < runs; ++run) {
        Row next = work();
        least.whole_ms = std::min(least.whole_ms, next.whole_ms);
        least.alone_ms = std::min(least.alone_ms, next.alone_ms);
    }
    return least;
}

std::optional<std::string> python_with_scipy()
{
    for (const char* python : {"python3", "/usr/bin/python3"})
        if (is_there(std::string(python) + " -c 'import scipy.sparse.linalg'"))
            return python;
    return std::nullopt;
}

void against_scipy(std::size_t times, int runs, const Row& ours, const std::vector<double>& exact,
                   const std::filesystem::path& folder)
{
    if (const auto python = python_with_scipy())
        print("SciPy's spsolve, the same matrix", least_of(runs, [&] { return scipy(*python, times, folder); }), ours,
              exact);
    else
        std::printf("SciPy is not installed: left out.\n");
}

void solve_once(std::size_t times)
{
    const DriedBed bed = refined(times);
    REQUIRE_FALSE(test::solve_as_field(bed, test::system_of(bed), share).empty());
}

} // namespace

TEST_CASE("conduction beside other solvers", "[bench]")
{
    const auto exact = nearly_exact();
    const auto folder = std::filesystem::temp_directory_path() / "loamstead-bench-bed";
    std::filesystem::create_directories(folder);
    std::printf("%-34s %17s %19s %9s %9s\n", "least of some runs; against ours", "whole process, ms",
                "solution alone, ms", "largest K", "mean K");
    const Row coarse = ours_of(1);
    print("ours, bricks of 25 mm", coarse, coarse, exact);
    against_scipy(1, 3, coarse, exact, folder);
    const Row fine = ours_of(finer);
    print("ours, bricks of 8.3 mm", fine, fine, exact);
    against_scipy(finer, 1, fine, exact, folder);
    if (is_there("command -v ccx") && is_there("command -v stdbuf"))
        print("CalculiX, elements of 12.5 mm", least_of(3, [&] { return calculix(DriedBed{}, folder); }), fine, exact);
    else
        std::printf("CalculiX (ccx) is not installed: left out.\n");
    std::filesystem::remove_all(folder);
}

TEST_CASE("one solution", "[.][once]")
{
    solve_once(1);
}

TEST_CASE("one solution on finer bricks", "[.][once-finer]")
{
    solve_once(finer);
}
