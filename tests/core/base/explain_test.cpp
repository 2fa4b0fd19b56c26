#include "core/explain.hpp"

#include "tests/catch.hpp"

using namespace loam;

namespace {

Target between(double min, double max)
{
    return {.min = min, .max = max, .source = {}};
}

constexpr Judgement fits{Verdict::fits, Direction::none};
constexpr Judgement tight_below{Verdict::tight, Direction::below};
constexpr Judgement tight_above{Verdict::tight, Direction::above};
constexpr Judgement short_below{Verdict::falls_short, Direction::below};
constexpr Judgement short_above{Verdict::falls_short, Direction::above};

} // namespace

TEST_CASE("A range within the target fits, its ends included")
{
    CHECK(judge({20, 22, 24}, between(20, 24)) == fits);
    CHECK(judge(exactly(20), between(20, 20)) == fits);
}

TEST_CASE("A range of which only an end misses the target is tight, in the direction of the larger miss")
{
    CHECK(judge({19, 22, 24}, between(20, 25)) == tight_below);
    CHECK(judge({21, 22, 26}, between(20, 25)) == tight_above);
    CHECK(judge({19, 22, 29}, between(20, 25)) == tight_above);
    CHECK(judge({10, 22, 26}, between(20, 25)) == tight_below);
}

TEST_CASE("A likely value that misses the target falls short, however wide the range")
{
    CHECK(judge({15, 19, 30}, between(20, 25)) == short_below);
    CHECK(judge({15, 26, 30}, between(20, 25)) == short_above);
}

TEST_CASE("A target with one end judges that end only")
{
    const Target least{.min = 20.0, .max = std::nullopt, .source = {}};
    const Target most{.min = std::nullopt, .max = 20.0, .source = {}};
    CHECK(judge({20, 500, 1000}, least) == fits);
    CHECK(judge({19, 500, 1000}, least) == tight_below);
    CHECK(judge({-1000, -500, 20}, most) == fits);
    CHECK(judge(exactly(20.5), most) == short_above);
}

TEST_CASE("Without a target nothing is known")
{
    CHECK(judge(exactly(1), {}) == Judgement{Verdict::not_known, Direction::none});
}
