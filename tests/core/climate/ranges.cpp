#include <algorithm>
#include <cmath>
#include <random>

#include "tests/catch.hpp"

#include "core/climate/inputs.hpp"
#include "core/climate/psychrometrics.hpp"
#include "tests/core/climate/solved.hpp"

using namespace loam;
using namespace loam::climate;
using namespace loam::climate::test;

namespace {

void sharpen(Box& box, Case& now)
{
    visit_inputs(box, now, [](const std::string&, Range& range, const Parts&) { range = exactly(range.likely); });
}

// A draw from a triangle-like split normal whose 5th and 95th percentiles are the range's ends.
double draw(const Range& range, std::mt19937& random)
{
    const double z = std::normal_distribution<double>()(random) / 1.645;
    return range.likely + (z < 0.0 ? z * (range.likely - range.low) : z * (range.high - range.likely));
}

} // namespace

TEST_CASE("with every input exact, only the model's own error is left")
{
    Box box = furnished_box(0.10, false);
    Case now = home_day();
    sharpen(box, now);
    box.bed[0].water_dry = box.bed[0].water_damp; // no lamp-dried state apart
    const CaseResult result = solved(box, now);
    CHECK(result.cool.ground_c.high - result.cool.ground_c.likely == Approx(1.645 * box.model_error_k).epsilon(1e-6));
    CHECK(result.cool.ground_c.likely - result.cool.ground_c.low == Approx(1.645 * box.model_error_k).epsilon(1e-6));
    CHECK(result.cool.limited_by == "model.error");
    // Source: slope of the saturation pressure (ASHRAE Fundamentals, Hyland & Wexler): what a kelvin does to a
    // hygrometer in the same vapour.
    const double here_c = result.cool.ground_c.likely;
    const double per_k = 0.5 * (*saturation_pressure_pa(here_c + 1.0) - *saturation_pressure_pa(here_c - 1.0)) /
                         *saturation_pressure_pa(here_c);
    const double half = 0.5 * (result.ground_humidity.high - result.ground_humidity.low);
    CHECK(half == Approx(1.645 * box.model_error_k * per_k * result.ground_humidity.likely).epsilon(0.01));
}

TEST_CASE("every reported range is in order")
{
    const CaseResult r = solved(furnished_box());
    for (const Range& range : {r.basking.surface_c, r.basking.ground_c, r.basking.operative_c, r.warm.surface_c,
                               r.warm.ground_c, r.warm.operative_c, r.cool.surface_c, r.cool.ground_c,
                               r.cool.operative_c, r.hottest_surface_c, r.hottest_digging_c, r.hottest_pane_c,
                               r.lower_air_c, r.upper_air_c, r.ground_humidity, r.evaporation_l_per_day}) {
        CHECK(range.low <= range.likely);
        CHECK(range.likely <= range.high);
    }
}

// One input alone: what the range says of it is what solving at its ends says.
TEST_CASE("the range from one input is the difference of two solutions")
{
    Box exact_box = furnished_box(0.10, false);
    Case exact_now = home_day();
    sharpen(exact_box, exact_now);
    exact_box.model_error_k = 0.0;
    exact_box.bed[0].water_dry = exact_box.bed[0].water_damp;
    const Box given = furnished_box(0.10, false);
    const auto check = [&](const char* which, Range Box::*member, const Range& range) {
        INFO(which);
        Box box = exact_box;
        box.*member = range;
        const CaseResult whole = solved(box, exact_now);
        box.*member = exactly(range.low);
        const CaseResult low = solved(box, exact_now);
        box.*member = exactly(range.high);
        const CaseResult high = solved(box, exact_now);
        const auto compare = [](const Range& figure, double a, double b) {
            CHECK(figure.low == Approx(std::min({a, b, figure.likely})).margin(0.06 * std::abs(a - b) + 0.02));
            CHECK(figure.high == Approx(std::max({a, b, figure.likely})).margin(0.06 * std::abs(a - b) + 0.02));
        };
        compare(whole.warm.ground_c, low.warm.ground_c.likely, high.warm.ground_c.likely);
        compare(whole.cool.ground_c, low.cool.ground_c.likely, high.cool.ground_c.likely);
        compare(whole.lower_air_c, low.lower_air_c.likely, high.lower_air_c.likely);
        compare(whole.basking.surface_c, low.basking.surface_c.likely, high.basking.surface_c.likely);
    };
    check("film", &Box::film_factor, given.film_factor);
    check("mesh", &Box::mesh_open_fraction, given.mesh_open_fraction);
    check("exchange", &Box::exchange_factor, given.exchange_factor);
    check("mixing", &Box::mixing_w_m2k, given.mixing_w_m2k);
}

namespace {

struct Samples {
    std::vector<double> warm;
    std::vector<double> cool;
};

Samples draws_of(const Box& box, const Case& now, int count)
{
    std::mt19937 random(20240607);
    Samples samples;
    Workspace workspace;
    for (int i = 0; i < count; ++i) {
        Box drawn = box;
        Case then = now;
        visit_inputs(drawn, then, [&](const std::string&, Range& range, const Parts&) {
            if (range.low < range.high)
                range = exactly(draw(range, random));
        });
        const auto result = solve_likely(drawn, then, workspace);
        REQUIRE(result);
        REQUIRE(result->converged);
        samples.warm.push_back(result->warm.ground_c.likely);
        samples.cool.push_back(result->cool.ground_c.likely);
    }
    std::sort(samples.warm.begin(), samples.warm.end());
    std::sort(samples.cool.begin(), samples.cool.end());
    return samples;
}

// By shares of the range's width: how far each end may lie off.
void check_agrees(const std::vector<double>& sample, const Range& range, double within)
{
    const double width = range.high - range.low;
    const std::size_t count = sample.size();
    CHECK(std::abs(sample[count / 20] - range.low) / width < within);
    CHECK(std::abs(sample[count / 2] - range.likely) / width < within);
    CHECK(std::abs(sample[count - count / 20] - range.high) / width < within);
}

} // namespace

// Source: Monte Carlo on the same model, as JCGM 101:2008 (GUM supplement 1) would have it: within a tenth of the
// width, also where a lamp's uncertain beam moves which columns of the warm side count as shaded.
TEST_CASE("ranges agree with a Monte Carlo run")
{
    Box box = furnished_box(0.10, false);
    const Case now = home_day();
    box.model_error_k = 0.0;
    box.bed[0].water_dry = box.bed[0].water_damp;
    for (const bool beam_known : {false, true}) {
        if (beam_known)
            box.lamps[0].beam_deg = exactly(box.lamps[0].beam_deg.likely);
        const CaseResult whole = solved(box, now);
        const Samples samples = draws_of(box, now, 600);
        CAPTURE(beam_known);
        check_agrees(samples.warm, whole.warm.ground_c, 0.1);
        check_agrees(samples.cool, whole.cool.ground_c, 0.1);
    }
}

TEST_CASE("what limits a range is named")
{
    Box box = furnished_box();
    box.model_error_k = 0.05;
    const CaseResult result = solved(box, home_day(Range{15.0, 21.5, 27.0}));
    CHECK(result.cool.limited_by == "room.temperature");
    CHECK(result.cool.limited_share > 0.8);
}

TEST_CASE("where a thermostat saturates within the room's range, its range ends at full power")
{
    Box box = furnished_box(0.06);
    box.mats[0].power_w = exactly(18.0);
    box.mats[0].control = {.kind = ControlKind::thermostat, .setpoint_c = 24.0, .probe = Point{0.22, 0.2286, 0.06}};
    Case now = home_day(Range{12.0, 19.0, 26.0});
    now.day = false;
    const CaseResult result = solved(box, now);
    CHECK(result.devices.back().power_w.high == Approx(18.0));
    CHECK(result.devices.back().power_w.low == Approx(0.0).margin(1e-9));
    // Below what full power can hold the ground follows the room.
    CHECK(result.warm.ground_c.low < result.warm.ground_c.likely - 1.5);
}

TEST_CASE("the damp bed under the lamp lowers the basking range and never the likely value's place in it")
{
    Box box = furnished_box();
    Case now = home_day();
    sharpen(box, now);
    box.model_error_k = 0.0;
    const CaseResult result = solved(box, now);
    CHECK(result.basking.surface_c.low < result.basking.surface_c.likely - 1.0);
    CHECK(result.basking.surface_c.high == Approx(result.basking.surface_c.likely).margin(1e-6));
    CHECK(result.warm.limited_by == "bed.dampness");
}
