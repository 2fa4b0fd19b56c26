#include <QCoreApplication>
#include <QTranslator>

#include "tests/app/qt_strings.hpp"
#include "tests/catch.hpp"

#include "app/words/speaker.hpp"
#include "app/words/verdicts.hpp"

using namespace loam;
using namespace loam::words;

namespace {

plan::Plan small_plan()
{
    plan::Plan plan;
    plan::Enclosure enclosure;
    enclosure.id = "e1";
    enclosure.name = "Front room box";
    enclosure.equipment.emplace_back().id = "d1"; // a flood lamp, as a device is without more
    enclosure.fittings.emplace_back().id = "f1";
    enclosure.shell.top.covers.emplace_back().id = "v1";
    plan.enclosures.push_back(enclosure);
    plan.site.circuits.emplace_back().id = "c1";
    return plan;
}

Finding cool_side(Judgement judgement)
{
    Finding finding;
    finding.code = "heat.cool-side";
    finding.verdict = judgement.verdict;
    finding.direction = judgement.direction;
    finding.because = {"rule.heat-balance",
                       {{"low", 19.0, "degC"},
                        {"likely", 21.0, "degC"},
                        {"high", 23.5, "degC"},
                        {"min", 24.0, "degC"},
                        {"max", 28.0, "degC"},
                        {"short_by", 3.0, "K"}},
                       {{"case", "winter-night"},
                        {"species", "testudo-hermanni"},
                        {"measure", "ground"},
                        {"limited_by", "room.winter.night_c"}},
                       {"Some handbook, table 3", Confidence::memory}};
    finding.remedy = Remedy{"remedy.warmer-room", {{"by", 3.0, "K"}, {"to", 21.0, "degC"}}, {{"case", "winter-night"}}};
    return finding;
}

// A language in which every sentence ends with its context.
class EchoTranslator : public QTranslator {
public:
    bool isEmpty() const override { return false; }
    QString translate(const char* context, const char* source, const char*, int) const override
    {
        return QString::fromUtf8(source) + QStringLiteral(" /") + QString::fromUtf8(context);
    }
};

const plan::Plan plan_here = small_plan();
const catalog::Catalog no_catalog;

} // namespace

TEST_CASE("A finding says what, where, how much and which way, in the reader's units")
{
    const Finding finding = cool_side({Verdict::falls_short, Direction::below});
    const Speaker metric(Formatter(), plan_here, no_catalog);
    CHECK(
        metric.finding(finding) ==
        "The cool side is too cold on a winter night: 19.0–23.5 °C (likely 21), measured in the shade at ground level. "
        "The target is 24–28 °C (testudo-hermanni); the likely value is 3 °C under it.");
    CHECK(metric.remedy(finding) == "Keep the room 3 °C warmer on a winter night, at 21 °C or more.");
    const Speaker us(Formatter(UnitSystem::us), plan_here, no_catalog);
    CHECK(us.finding(finding).contains("66.2–74.3 °F (likely 69.8)"));
    CHECK(us.finding(finding).contains("5.4 °F under it"));
    CHECK(us.remedy(finding) == "Keep the room 5.4 °F warmer on a winter night, at 69.8 °F or more.");
}

TEST_CASE("A miss too small for its decimals is told as small, never as nothing")
{
    const Speaker metric(Formatter(), plan_here, no_catalog);
    const Speaker us(Formatter(UnitSystem::us), plan_here, no_catalog);
    Finding finding = cool_side({Verdict::falls_short, Direction::below});
    finding.because.inputs.back().value = 0.02;
    CHECK(metric.finding(finding).contains("the likely value is less than 0.1 °C under it"));
    CHECK(us.finding(finding).contains("the likely value is less than 0.1 °F under it"));
    finding.because.inputs.back().value = 0.0;
    CHECK(metric.finding(finding).contains("the likely value is 0 °C under it"));
}

TEST_CASE("What was taken for a stand is the thickness of its board")
{
    const Speaker speaker(Formatter(), plan_here, no_catalog);
    const assess::Assumed assumed{"/enclosures/0/stand", "m", Range{0.015, 0.016, 0.019}, {}};
    CHECK(speaker.assumed(assumed).contains("the thickness of its board: taken as 15–19 mm"));
}

TEST_CASE("An amount a day is assumed as one range")
{
    const Speaker speaker(Formatter(), plan_here, no_catalog);
    const assess::Assumed assumed{"/enclosures/0/moisture/misting_l_per_day", "l/d", Range{0.0, 0.2, 0.4}, {}};
    CHECK(speaker.assumed(assumed).endsWith("taken as 0.0–0.4 L a day"));
}

TEST_CASE("A source is told once, with the signs of the units")
{
    CHECK(words::source({"From memory, not checked: 22 to 25 degC.", Confidence::memory}) ==
          "From memory, not checked: 22 to 25 °C.");
    CHECK(words::source({"A general guide, n.d.: 32 degC.", Confidence::secondary}) ==
          QString::fromUtf8("A general guide, n.d.: 32 °C (%1)").arg(words::confidence(Confidence::secondary)));
}

TEST_CASE("An end of a range that misses the target is not told as if all of it did")
{
    const Speaker speaker(Formatter(), plan_here, no_catalog);
    CHECK(speaker.finding(cool_side({Verdict::tight, Direction::below})).contains("may get too cold"));
    CHECK(speaker.finding(cool_side({Verdict::fits, Direction::none})).startsWith("The cool side is 19.0–23.5 °C"));
}

TEST_CASE("Why: the rule, the figures, what widens the range, and the source with its confidence")
{
    const Speaker speaker(Formatter(), plan_here, no_catalog);
    const QString text = speaker.because(cool_side({Verdict::falls_short, Direction::below}).because);
    CHECK(text.contains("balanced with what leaves"));
    CHECK(text.contains("result: 19.0–23.5 °C (likely 21)"));
    CHECK(text.contains("compared with: 24–28 °C"));
    CHECK(text.contains("missing: 3 °C"));
    CHECK(text.contains("mostly due to this: the room on a winter night."));
    CHECK(text.contains("Source: Some handbook, table 3 (from memory, unconfirmed)"));
}

TEST_CASE("Humidity is told in per cent, and a difference of two in percentage points")
{
    const Speaker speaker(Formatter(), plan_here, no_catalog);
    Finding finding;
    finding.code = "humidity.level";
    finding.verdict = Verdict::falls_short;
    finding.direction = Direction::below;
    finding.because = {
        "rule.moisture-balance",
        {{"low", 0.4, "1"}, {"likely", 0.5, "1"}, {"high", 0.6, "1"}, {"min", 0.7, "1"}, {"short_by", 0.2, "1"}},
        {{"case", "summer-day"}, {"species", "x"}, {"measure", "ground"}},
        {}};
    CHECK(speaker.finding(finding) ==
          "It is too dry on a summer day: 40–60% (likely 50) near the ground. The target is "
          "at least 70% (x); the likely value is 20 percentage points under it.");
    CHECK(speaker.inputs(finding.because).contains("result: 40–60%"));
}

TEST_CASE("Places are told by the names of the plan")
{
    const Speaker speaker(Formatter(), plan_here, no_catalog);
    CHECK(speaker.place("d1") == "flood lamp d1");
    CHECK(speaker.place("e1") == "Front room box");
    CHECK(speaker.place("v1") == "cover v1");
    CHECK(speaker.place("c1") == "circuit c1");
    CHECK(speaker.place("/site/room/heat_wave_c") == "room, temperature in a heat wave");
    CHECK(speaker.place("/enclosures/0/equipment/0/beam_deg") == "Front room box, flood lamp d1, beam angle");
    CHECK(speaker.place("/enclosures/0/shell/top/open_fraction") == "Front room box, top, open share of the mesh");
    CHECK(speaker.place("/enclosures/7/animals") == "enclosures 7, animals"); // a place that is not there
    CHECK(speaker.place("nobody") == "nobody");
    CHECK(speaker.place("").isEmpty());
}

TEST_CASE("What was assumed is told with its bracket")
{
    const Speaker speaker(Formatter(), plan_here, no_catalog);
    CHECK(speaker.assumed({"/site/room/heat_wave_c", "degC", Range{30, 33, 36}, {}}) ==
          "room, temperature in a heat wave: taken as 30–36 °C");
    CHECK(speaker.assumed({"/site/room/winter/relative_humidity", "1", Range{0.25, 0.38, 0.5}, {}}) ==
          "room, winter, humidity: taken as 25–50%");
    CHECK(speaker.assumed({"/enclosures/0/equipment/0/power_w", "W", std::nullopt, {}}) ==
          "Front room box, flood lamp d1, power: not stated, and nothing could be assumed");
}

TEST_CASE("A verdict names its direction in the words of its subject")
{
    CHECK(verdict({Verdict::falls_short, Direction::below}, Subject::temperature) == "falls short (too cold)");
    CHECK(verdict({Verdict::falls_short, Direction::above}, Subject::humidity) == "falls short (too damp)");
    CHECK(verdict({Verdict::tight, Direction::above}, Subject::temperature) == "tight (may be too hot)");
    CHECK(verdict({Verdict::danger, Direction::above}, Subject::load) == "danger (too much load)");
    CHECK(verdict({Verdict::fits, Direction::none}, Subject::space) == "fits");
    CHECK(verdict({Verdict::not_known, Direction::none}, Subject::uv) == "not known");
    CHECK(subject_of("heat.cool-side") == Subject::temperature);
    CHECK(subject_of("danger.circuit") == Subject::load);
    CHECK(subject_of("space.hides-too-few") == Subject::company);
    CHECK(subject_of("space.floor-now") == Subject::space);
}

TEST_CASE("A source is told with how sure it is, once")
{
    CHECK(source({"A law, annex 2", Confidence::confirmed}) == "A law, annex 2 (confirmed)");
    CHECK(source({"Common practice, no source: 5 to 10 W", Confidence::practice}) ==
          "Common practice, no source: 5 to 10 W");
    CHECK(source({}).isEmpty());
}

TEST_CASE("Sentences and verdicts are said in the language that is installed")
{
    int argc = 1;
    char name[] = "test";
    char* argv[] = {name, nullptr};
    const QCoreApplication application(argc, argv);
    EchoTranslator echo;
    QCoreApplication::installTranslator(&echo);
    const Speaker speaker(Formatter(), plan_here, no_catalog);
    const Finding finding = cool_side({Verdict::falls_short, Direction::below});
    CHECK(speaker.finding(finding).endsWith(" /sentences"));
    CHECK(speaker.remedy(finding).endsWith(" /sentences"));
    CHECK(verdict(Verdict::danger) == "danger /verdicts");
    CHECK(device_kind(plan::DeviceKind::fan) == "fan /names");
    CHECK(species_note("escapes").endsWith(" /sentences"));
    QCoreApplication::removeTranslator(&echo);
    CHECK(verdict(Verdict::danger) == "danger");
}
