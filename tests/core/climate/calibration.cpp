#include <algorithm>
#include <cmath>

#include "tests/catch.hpp"

#include "core/climate/calibration.hpp"
#include "core/climate/combine.hpp"
#include "core/climate/inputs.hpp"
#include "core/climate/reading_model.hpp"
#include "core/climate/scale.hpp"
#include "tests/core/climate/solved.hpp"

using namespace loam;
using namespace loam::climate;
using namespace loam::climate::test;

namespace {

constexpr double accuracy_k = 0.5;

RoomState room_of_readings()
{
    return {.temperature_c = {21.0, 21.5, 22.0}, .relative_humidity = {0.40, 0.45, 0.50}};
}

TakenReading reading(const char* id, Measure measure, double x_m, double y_m, bool lamps_on = true)
{
    return {.id = id,
            .at = {measure, x_m, y_m},
            .lamps_on = lamps_on,
            .room = room_of_readings(),
            .value_c = 0.0,
            .accuracy_k = accuracy_k};
}

std::vector<TakenReading> places()
{
    return {reading("spot", Measure::surface, 0.22, 0.23), reading("warm", Measure::ground, 0.06, 0.08),
            reading("middle", Measure::ground, 0.46, 0.23), reading("cool", Measure::ground, 0.85, 0.35),
            reading("night", Measure::ground, 0.15, 0.23, false)};
}

// A box whose inputs lie within their spread, one up and the next down; its model error is small, so that readings
// tell much.
Box given()
{
    Box box = furnished_box();
    box.model_error_k = 0.3;
    return box;
}

struct Truth {
    Box box = given();
    std::vector<TakenReading> readings = places();
};

Truth truth()
{
    Truth made;
    Case now;
    int i = 0;
    visit_inputs(made.box, now, [&](const std::string& name, Range& range, const Parts&) {
        if (name.rfind("room.", 0) != 0)
            range = exactly(value_at(range, i++ % 2 == 0 ? 0.9 : -0.7));
    });
    Workspace workspace;
    ReadingModel model(made.box, made.readings, workspace, {}, Resolution{});
    const auto values = model.predict(std::vector<double>(model.inputs().size(), 0.0));
    REQUIRE(values);
    for (std::size_t r = 0; r < values->size(); ++r)
        made.readings[r].value_c = (*values)[r];
    return made;
}

Calibration calibrated(const Box& prior, const std::vector<TakenReading>& readings)
{
    Workspace workspace;
    auto result = calibrate(prior, readings, workspace);
    REQUIRE(result);
    return *std::move(result);
}

double width(const Range& range)
{
    return range.high - range.low;
}

bool holds(const Range& range, double value)
{
    return range.low <= value && value <= range.high;
}

} // namespace

TEST_CASE("without readings a box is what it was, to the bit")
{
    const Calibration result = calibrated(furnished_box(), {});
    CHECK(result.alike == furnished_box());
    CHECK(result.unlike == furnished_box());
    CHECK(result.inputs.empty());
    CHECK(&box_for(result, home_day()) == &result.unlike);
}

// Source: a made truth, as in any twin experiment: the readings are computed from a box whose inputs are known.
TEST_CASE("readings of a known box narrow every zone about its true temperature")
{
    const Truth made = truth();
    const Calibration result = calibrated(given(), made.readings);
    REQUIRE(result.solved);
    CHECK(result.fits);
    CHECK(result.degrees == made.readings.size());
    for (const FittedReading& one : result.readings) {
        INFO(one.id);
        CHECK(one.consistent);
        CHECK(std::abs(one.residual_in_deviations) < 1.0);
    }
    Case day = home_day(room_of_readings().temperature_c);
    day.room = room_of_readings();
    const CaseResult known = solved(made.box, day);
    const CaseResult before = solved(given(), day);
    const CaseResult after = solved(box_for(result, day), day);
    const auto compare = [](const Range& was, const Range& now, double true_c) {
        CHECK(holds(now, true_c));
        CHECK(width(now) < 0.8 * width(was));
        CHECK(std::abs(now.likely - true_c) < std::abs(was.likely - true_c));
    };
    compare(before.warm.ground_c, after.warm.ground_c, known.warm.ground_c.likely);
    compare(before.cool.ground_c, after.cool.ground_c, known.cool.ground_c.likely);
}

TEST_CASE("readings narrow no input's range beyond what its true value allows, and none is widened")
{
    const Truth made = truth();
    Box true_box = made.box;
    Case now;
    std::vector<double> values;
    visit_inputs(true_box, now, [&](const std::string& name, const Range& range, const Parts&) {
        if (name.rfind("room.", 0) != 0)
            values.push_back(range.likely);
    });
    Box prior = given();
    std::vector<double> open;
    std::size_t i = 0;
    visit_inputs(prior, now, [&](const std::string& name, const Range& range, const Parts&) {
        if (name.rfind("room.", 0) == 0)
            return;
        if (range.low < range.high)
            open.push_back(values[i]);
        ++i;
    });
    const Calibration result = calibrated(given(), made.readings);
    REQUIRE(result.inputs.size() == open.size());
    std::size_t narrowed = 0;
    for (std::size_t k = 0; k < open.size(); ++k) {
        INFO(result.inputs[k].name);
        CHECK(holds(result.inputs[k].after, open[k]));
        CHECK(result.alike.ties.narrowed[k] <= 1.0 + 1e-12);
        narrowed += result.alike.ties.narrowed[k] < 0.95 ? 1 : 0;
    }
    CHECK(narrowed >= 2);
}

TEST_CASE("one wild reading among sound ones is named and left out")
{
    Truth made = truth();
    made.readings[2].value_c += 9.0;
    const Calibration result = calibrated(given(), made.readings);
    REQUIRE(result.solved);
    for (const FittedReading& one : result.readings) {
        INFO(one.id);
        CHECK(one.consistent == (one.id != "middle"));
    }
    CHECK(result.fits);
    CHECK(result.degrees == made.readings.size() - 1);
}

TEST_CASE("a reading that contradicts the box alone is named, and nothing is learned from it")
{
    auto only = truth().readings;
    only.resize(1);
    only[0].value_c += 60.0;
    const Calibration result = calibrated(given(), only);
    REQUIRE(result.readings.size() == 1);
    CHECK_FALSE(result.readings[0].consistent);
    CHECK(result.alike == given());
    CHECK(result.inputs.empty());
}

TEST_CASE("no range becomes narrower than the thermometer's accuracy, however often it is read")
{
    Truth made = truth();
    Box prior = given();
    prior.model_error_k = 0.05;
    std::vector<TakenReading> many;
    for (int i = 0; i < 5; ++i)
        for (TakenReading one : made.readings) {
            one.accuracy_k = 1.5;
            many.push_back(one);
        }
    const Calibration result = calibrated(prior, many);
    REQUIRE(result.fits);
    Case day = home_day();
    day.room = {exactly(21.5), exactly(0.45)};
    const CaseResult before = solved(prior, day);
    const CaseResult after = solved(box_for(result, day), day);
    for (const auto& [was, now] :
         {std::pair(before.warm.ground_c, after.warm.ground_c), std::pair(before.cool.ground_c, after.cool.ground_c)}) {
        CHECK(now.high - now.likely >= std::min(1.5, was.high - was.likely) * 0.98);
        CHECK(now.likely - now.low >= std::min(1.5, was.likely - was.low) * 0.98);
    }
    for (const FittedReading& one : result.readings)
        CHECK(0.5 * width(one.after_c) >= std::min(1.5, 0.5 * width(one.before_c)) - 1e-9);
}

TEST_CASE("reading the same spot again tells less than reading another")
{
    Truth made = truth();
    Box prior = given();
    prior.model_error_k = 1.0;
    const std::vector<TakenReading> twice{made.readings[1], made.readings[1]};
    const std::vector<TakenReading> apart{made.readings[1], made.readings[3]};
    const auto sum = [](const std::vector<double>& narrowed) {
        double left = 0.0;
        for (const double one : narrowed)
            left += one * one;
        return left;
    };
    CHECK(sum(calibrated(prior, apart).alike.ties.narrowed) < sum(calibrated(prior, twice).alike.ties.narrowed));
}

TEST_CASE("what was learned holds for conditions like those of the readings only")
{
    Truth made = truth();
    made.readings.pop_back(); // all by day
    const Calibration result = calibrated(given(), made.readings);
    REQUIRE(result.fits);
    Case now = home_day();
    CHECK(&box_for(result, now) == &result.alike);
    now.day = false;
    CHECK(&box_for(result, now) == &result.unlike);
    now = home_day(Range{30.0, 31.0, 32.0});
    CHECK(&box_for(result, now) == &result.unlike);
    now = home_day();
    now.fault = Fault::covers_off;
    CHECK(&box_for(result, now) == &result.unlike);
    CHECK(result.unlike.ties == Ties{});
    CHECK(result.unlike.film_factor.high / result.unlike.film_factor.likely ==
          Approx(given().film_factor.high / given().film_factor.likely).epsilon(0.03));
}

// JCGM 100:2008 (GUM) equation 16: two inputs that are fully and inversely correlated and of the same effect cancel.
TEST_CASE("inputs tied inversely to each other leave no spread, tied alike they leave their sum")
{
    Quantities quantities;
    quantities.all = {Quantity{}};
    const std::vector<InputEffect> inputs{{"a", {-1.0}, {1.0}}, {"b", {-1.0}, {1.0}}};
    Box box;
    box.model_error_k = 0.0;
    CHECK(combine(quantities, {20.0}, inputs, box)[0].range.high == Approx(20.0 + std::sqrt(2.0)));
    box.ties = {.inputs = {"a", "b"}, .correlation = {1, -1, -1, 1}, .narrowed = {0.5, 0.5}, .accuracy_k = 0.0};
    CHECK(combine(quantities, {20.0}, inputs, box)[0].range.high == Approx(20.0));
    box.ties.correlation = {1, 1, 1, 1};
    CHECK(combine(quantities, {20.0}, inputs, box)[0].range.high == Approx(22.0));
    box.ties.correlation = {1, -1, -1, 1};
    box.ties.accuracy_k = 0.7; // and no closer than that, though twice as wide it was sqrt(8)
    CHECK(combine(quantities, {20.0}, inputs, box)[0].range.low == Approx(19.3));
}
