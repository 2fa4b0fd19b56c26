#include "tests/catch.hpp"

#include "core/power/circuits.hpp"

using namespace loam;
using namespace loam::power;

namespace {

Device on(const std::string& strip, double power_w, double hours = 12.0, bool timed = true)
{
    Device one;
    one.id = "d" + std::to_string(static_cast<int>(power_w));
    one.connected_w = exactly(power_w);
    one.hours_per_day = hours;
    one.timed = timed;
    one.strip = strip;
    return one;
}

Circuit circuit(double voltage_v, double rating_a)
{
    return {"c1", voltage_v, rating_a, exactly(0.0)};
}

Strip strip(const std::string& id, std::optional<double> rating_a, std::optional<std::string> fed_from = {})
{
    return {id, "c1", rating_a, 4, 4, fed_from};
}

} // namespace

TEST_CASE("A continuous load is held to four fifths of the rating")
{
    // NFPA 70 (NEC), 210.20(A) (confirmed): 15 A to 12 A, 20 A to 16 A; at 120 V 1440 and 1920 W.
    CHECK(continuous_limit_w(120.0, 15.0) == Approx(1440.0));
    CHECK(continuous_limit_w(120.0, 20.0) == Approx(1920.0));
    // Prudence elsewhere (common practice, no source): 16 A at 230 V 2944 W, 13 A 2392 W.
    CHECK(continuous_limit_w(230.0, 16.0) == Approx(2944.0));
    CHECK(continuous_limit_w(230.0, 13.0) == Approx(2392.0));
}

TEST_CASE("The eighty percent are a rule on North American mains and prudence elsewhere")
{
    CHECK(limit_basis(120.0) == LimitBasis::nec_continuous);
    CHECK(limit_basis(100.0) == LimitBasis::nec_continuous);
    CHECK(limit_basis(127.0) == LimitBasis::nec_continuous);
    CHECK(limit_basis(128.0) == LimitBasis::prudence);
    CHECK(limit_basis(230.0) == LimitBasis::prudence);
}

TEST_CASE("A circuit at its continuous limit is full, and one hour's load counts less than twelve")
{
    const Loads full = loads({on("s1", 1440.0)}, {strip("s1", 15.0)}, {circuit(120.0, 15.0)});
    CHECK(full.circuits[0].load_fraction.likely == Approx(1.0));
    CHECK(full.strips[0].load_fraction->likely == Approx(1.0));
    CHECK(*full.strips[0].continuous_limit_w == Approx(1440.0));
    // Short loads count once: 1440 W of 1800 W.
    const Loads brief = loads({on("s1", 1440.0, 1.0)}, {strip("s1", 15.0)}, {circuit(120.0, 15.0)});
    CHECK(brief.circuits[0].load_fraction.likely == Approx(0.8));
    // Article 100: three hours or more.
    CHECK(
        loads({on("s1", 1440.0, 3.0)}, {strip("s1", 15.0)}, {circuit(120.0, 15.0)}).circuits[0].load_fraction.likely ==
        Approx(1.0));
}

TEST_CASE("Loads of all strips and everything else on the circuit add")
{
    Circuit wall = circuit(120.0, 15.0);
    wall.other_load_w = exactly(300.0);
    const Loads result = loads({on("s1", 100.0), on("s2", 200.0), on("s2", 50.0, 24.0, false)},
                               {strip("s1", 15.0), strip("s2", 15.0)}, {wall});
    CHECK(result.strips[0].load_w.likely == Approx(100.0));
    CHECK(result.strips[1].load_w.likely == Approx(250.0));
    CHECK(result.circuits[0].load_w.likely == Approx(650.0));
    CHECK(result.circuits[0].load_fraction.likely == Approx(650.0 / 1440.0));
    CHECK(result.circuits[0].other_load_known);
}

TEST_CASE("What else hangs on the circuit is said to be unknown where it is")
{
    Circuit wall = circuit(230.0, 16.0);
    wall.other_load_w.reset();
    const Loads result = loads({on("s1", 100.0)}, {strip("s1", {})}, {wall});
    CHECK_FALSE(result.circuits[0].other_load_known);
    CHECK(result.circuits[0].load_w.likely == Approx(100.0)); // a lower bound
}

TEST_CASE("The lowest rating on the way to the wall limits a strip")
{
    const Circuit wall = circuit(230.0, 16.0);
    CHECK(*loads({}, {strip("s1", 10.0)}, {wall}).strips[0].continuous_limit_w == Approx(0.8 * 2300.0));
    CHECK(*loads({}, {strip("s1", 20.0)}, {wall}).strips[0].continuous_limit_w == Approx(0.8 * 3680.0));
    CHECK(*loads({}, {strip("s1", {})}, {wall}).strips[0].continuous_limit_w == Approx(0.8 * 3680.0));
    const Loads chained = loads({}, {strip("s1", 6.0), strip("s2", 13.0, "s1")}, {wall});
    CHECK(*chained.strips[1].continuous_limit_w == Approx(0.8 * 6.0 * 230.0));
}

TEST_CASE("A daisy chain loads every strip before it and takes an outlet there")
{
    const Loads result =
        loads({on("s1", 100.0), on("s2", 40.0)}, {strip("s1", 13.0), strip("s2", 13.0, "s1")}, {circuit(230.0, 16.0)});
    CHECK(result.strips[0].load_w.likely == Approx(140.0));
    CHECK(result.strips[1].load_w.likely == Approx(40.0));
    CHECK(result.circuits[0].load_w.likely == Approx(140.0)); // once
    CHECK_FALSE(result.strips[0].daisy_chained);
    CHECK(result.strips[1].daisy_chained);
    CHECK(result.strips[0].always_on_used == 1);
    CHECK(result.strips[0].timed_used == 1);
}

TEST_CASE("Outlets that are short are counted, timed and always on apart")
{
    Strip small = strip("s1", 13.0);
    small.timed_outlets = 1;
    small.always_on_outlets = std::nullopt;
    const Loads result =
        loads({on("s1", 10.0), on("s1", 20.0), on("s1", 30.0, 24.0, false)}, {small}, {circuit(230.0, 16.0)});
    CHECK(result.strips[0].timed_used == 2);
    CHECK(*result.strips[0].timed_missing == 1);
    CHECK(result.strips[0].always_on_used == 1);
    CHECK_FALSE(result.strips[0].always_on_missing); // not known
    small.timed_outlets = 5;
    CHECK(*loads({on("s1", 10.0)}, {small}, {circuit(230.0, 16.0)}).strips[0].timed_missing == 0);
}

TEST_CASE("A device without a strip is named, not dropped")
{
    Device loose = on("s1", 100.0);
    loose.strip.reset();
    const Loads result = loads({loose, on("nowhere", 50.0)}, {strip("s1", 13.0)}, {circuit(230.0, 16.0)});
    CHECK(result.unplugged == std::vector<std::string>{"d100", "d50"});
    CHECK(result.circuits[0].load_w.likely == 0.0);
}

TEST_CASE("A broken way to the wall is told, and strips in a ring do not hang the sum")
{
    const Loads ring =
        loads({on("s1", 100.0)}, {strip("s1", 13.0, "s2"), strip("s2", 13.0, "s1")}, {circuit(230.0, 16.0)});
    CHECK(ring.strips[0].feed_is_broken);
    CHECK(ring.strips[1].feed_is_broken);
    CHECK_FALSE(ring.strips[0].load_fraction);
    Strip lost = strip("s1", 13.0);
    lost.circuit = "c9";
    CHECK(loads({}, {lost}, {circuit(230.0, 16.0)}).strips[0].feed_is_broken);
    CHECK(loads({}, {strip("s1", 13.0, "s9")}, {circuit(230.0, 16.0)}).strips[0].feed_is_broken);
    CHECK_FALSE(loads({}, {strip("s1", 13.0)}, {circuit(230.0, 16.0)}).strips[0].feed_is_broken);
}

TEST_CASE("Another device never lowers a load")
{
    std::vector<Device> devices;
    double before_w = 0.0;
    for (int i = 1; i < 8; ++i) {
        devices.push_back(on(i % 2 ? "s1" : "s2", 10.0 * i, i));
        const Loads result = loads(devices, {strip("s1", 13.0), strip("s2", 13.0, "s1")}, {circuit(230.0, 16.0)});
        CHECK(result.circuits[0].load_w.likely > before_w);
        CHECK(result.circuits[0].load_w.likely == Approx(result.strips[0].load_w.likely));
        before_w = result.circuits[0].load_w.likely;
    }
}
