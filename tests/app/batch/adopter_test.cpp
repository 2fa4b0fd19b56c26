// From a row to a plan, and from a bad row to a reason with its column.
#include "app/batch/adopter.hpp"
#include "app/batch/groups.hpp"
#include "app/batch/lent.hpp"
#include "app/files/guidance.hpp"
#include "app/files/plan_file.hpp"
#include "core/plan/file.hpp"
#include "tests/catch.hpp"

using namespace loam;
using namespace loam::batch;

namespace {

const catalog::Catalog& guidance()
{
    static const catalog::Catalog catalog = files::load_guidance(QString()).catalog;
    return catalog;
}

const plan::Plan& club_template()
{
    static const plan::Plan plan =
        files::read_plan(QStringLiteral(LOAM_SOURCE_DIR "/examples/club-template.loamstead.json")).plan;
    return plan;
}

std::vector<Adopter> adopters(const QByteArray& text, const plan::Plan& plan = club_template())
{
    const ListRead read = read_list(text);
    INFO(read.errors.join("; ").toStdString());
    REQUIRE(read.errors.isEmpty());
    std::vector<Adopter> all;
    for (const auto& row : read.list.rows) {
        all.push_back(adopter_of(read.list, row, {plan, guidance()}));
    }
    return all;
}

Adopter one(const QByteArray& text)
{
    const auto all = adopters(text);
    REQUIRE(all.size() == 1);
    return all.front();
}

void check_fails(const QByteArray& header, const QByteArray& row, const char* column, const char* phrase)
{
    const Adopter adopter = one("name," + header + "\nA," + row + "\n");
    INFO(row.toStdString());
    REQUIRE(adopter.problems.size() == 1);
    CHECK(adopter.problems.front().row == 2);
    CHECK(adopter.problems.front().column == column);
    INFO(adopter.problems.front().reason.toStdString());
    CHECK(adopter.problems.front().reason.contains(phrase));
}

} // namespace

TEST_CASE("a row changes what it names and nothing else")
{
    const Adopter adopter = one("name,number,winter_day_c,winter_night_c,animals,owned,language,units\n"
                                "Ada,7,19.5,16,2,scale; bark: 24,de,us\n");
    CHECK(adopter.problems.empty());
    plan::Plan expected = club_template();
    expected.title = "Ada (7) · " + club_template().title;
    expected.site.room.winter.day_c = 19.5;
    expected.site.room.winter.night_c = 16.0;
    expected.enclosures.front().animals.front().count = 2;
    expected.owned = adopter.plan.owned;
    CHECK(adopter.plan == expected);
    REQUIRE(adopter.plan.owned.size() == 2);
    CHECK(adopter.plan.owned[1].item == "bark");
    CHECK(adopter.plan.owned[1].quantity == 24.0);
    CHECK(adopter.language == "de");
    CHECK(adopter.units == words::UnitSystem::us);
}

TEST_CASE("degrees and inches are converted by the column's name")
{
    // 68 °F is 20 °C exactly; an inch is 25.4 mm exactly (international yard and pound, 1959; from memory).
    const Adopter adopter = one("name,winter_day_f,box_length_in\nA,68,60\n");
    REQUIRE(adopter.problems.empty());
    CHECK(*adopter.plan.site.room.winter.day_c == Approx(20.0));
    CHECK(adopter.plan.enclosures.front().shell.length_m == Approx(1.524));
}

TEST_CASE("spreadsheets' ways of writing make no difference")
{
    const QByteArray plain = "name,winter_day_c\nAda,19.5\n";
    const plan::Plan expected = one(plain).plan;
    CHECK(one("\xEF\xBB\xBF" + plain).plan == expected);                // byte order mark
    CHECK(one("name,winter_day_c\r\nAda,19.5\r\n").plan == expected);   // CRLF
    CHECK(one("name;winter_day_c\nAda;19,5\n").plan == expected);       // semicolons
    CHECK(one("name\twinter_day_c\n\"Ada\"\t19.5\n").plan == expected); // tabs, quotes
    CHECK(one("winter_day_c,name\n19.5,Ada").plan == expected);         // order, no end of line
    CHECK(one("name,winter_day_c,x_note\nAda,19.5,=1+1\n").plan == expected);
}

TEST_CASE("what stands in the box keeps its share of it")
{
    const Adopter adopter = one("name,box_length_cm,box_width_cm\nA,300,65\n"); // twice as long
    REQUIRE(adopter.problems.empty());
    const plan::Enclosure& before = club_template().enclosures.front();
    const plan::Enclosure& after = adopter.plan.enclosures.front();
    CHECK(after.shell.top.covers.front().x_m == Approx(2.0 * before.shell.top.covers.front().x_m));
    CHECK(after.shell.top.covers.front().length_m == Approx(2.0 * before.shell.top.covers.front().length_m));
    CHECK(after.equipment.front().x_m == Approx(2.0 * before.equipment.front().x_m));
    CHECK(after.equipment.front().y_m == Approx(before.equipment.front().y_m));
    const plan::Fitting& bowl = after.fittings[2];
    CHECK(bowl.length_m == before.fittings[2].length_m);
    CHECK(bowl.x_m + bowl.length_m / 2.0 == Approx(2.0 * (before.fittings[2].x_m + bowl.length_m / 2.0)));
}

TEST_CASE("each kind of bad cell is named with its column")
{
    check_fails("winter_day_c", "warm", "winter_day_c", "not a number");
    check_fails("winter_day_c", "nan", "winter_day_c", "not a number");
    check_fails("winter_day_c", "9999", "winter_day_c", "too large");
    check_fails("winter_day_f", "9999", "winter_day_f", "too large");
    check_fails("winter_day_c", "99999999999999", "winter_day_c", "too many digits");
    check_fails("winter_day_c", "=1+1", "winter_day_c", "not a number");
    check_fails("winter_day_c", "\"19,555\"", "winter_day_c", "two ways");
    check_fails("winter_day_c,winter_day_f", "19,66", "winter_day_f", "says the same");
    check_fails("winter_humidity_percent", "150", "winter_humidity_percent", "");
    check_fails("electricity_price_per_kwh", "-1", "electricity_price_per_kwh", "");
    check_fails("currency", "XYZ", "currency", "");
    check_fails("language", "fr", "language", "en, de, es");
    check_fails("units", "imperial", "units", "none of");
    check_fails("sun_reaches", "maybe", "sun_reaches", "");
    check_fails("price_level", "cheap", "price_level", "");
    check_fails("horizon_years", "1.5", "horizon_years", "");
    check_fails("animals", "two", "animals", "neither a number nor a list");
    check_fails("animals", "0", "animals", "");
    check_fails("animals", "1 python-regus", "animals", "python-regius");
    check_fails("species", "python-regus", "species", "python-regius");
    check_fails("owned", "scael", "owned", "scale");
    check_fails("owned", "scale: many", "owned", "not a number");
    check_fails("enclosure", "e9", "enclosure", "e9");
    check_fails("box_length_cm", "0", "box_length_cm", "");
    check_fails("box_width_in", "99999", "box_width_in", "");
}

TEST_CASE("a row without a person, or with too much of one, fails")
{
    CHECK(one("name,number\n,\nB,\n").problems.empty()); // an empty row is none
    CHECK(one("name,winter_day_c\n,19\n").problems.front().column == "name");
    CHECK(one("name\n" + QByteArray(121, 'x') + "\n").problems.front().column == "name");
    CHECK_FALSE(one("name\n" + QByteArray(121, 'x') + "\n").problems.front().reason.contains("xxx"));
    CHECK(one("number\n5\n").name == "5");
}

TEST_CASE("a broken row leaves the others whole")
{
    const auto all = adopters("name,winter_day_c\n"
                              "Ada,19\n"
                              "J\xFCrgen,19\n" // Latin-1
                              "\"Open,19\n"    // a quote that is never closed
                              "Too,many,cells\n"
                              "Mixed;19\n"
                              "\"Stray\"quote,19\n"
                              "Zoe,20\n");
    REQUIRE(all.size() == 7);
    for (std::size_t i = 0; i < all.size(); ++i) {
        INFO(i);
        CHECK(all[i].row == i + 2);
        CHECK(all[i].problems.empty() == (i == 0 || i == 6));
    }
    CHECK(all[1].problems.front().reason.contains("UTF-8"));
    CHECK(*all[6].plan.site.room.winter.day_c == 20.0);
}

TEST_CASE("a list that can't be trusted as a whole is refused")
{
    CHECK_FALSE(read_list("").errors.isEmpty());
    CHECK_FALSE(read_list("name\n").errors.isEmpty());
    CHECK(read_list("winter_day_c\n19\n").errors.join(" ").contains("name"));
    CHECK(read_list("name,name\nA,B\n").errors.join(" ").contains("twice"));
    CHECK_FALSE(read_list(QByteArray("n\0a\0m\0e\0\n\0", 10)).errors.isEmpty()); // UTF-16
    CHECK_FALSE(read_list("n\xE4me\nA\n").errors.isEmpty());
    CHECK_FALSE(read_list("name\n" + QByteArray("A\n").repeated(20'001)).errors.isEmpty());
    CHECK(read_list("name,winter_day\nA,19\n").warnings.join(" ").contains("winter_day_c"));
    CHECK(read_list("name,x_mine,\nA,1,\n").warnings.isEmpty());
}

TEST_CASE("a formula stays a text")
{
    CHECK(one("name\n=cmd|' /C calc'!A0\n").name == "=cmd|' /C calc'!A0");
    CHECK(one("name\n'=1+1\n").name == "=1+1");                    // guarded by whoever exported it
    CHECK(one("name\n\"a\nb\tc\xE2\x80\xAE\"\n").name == "a b c"); // no line of its own, no turn of direction
}

TEST_CASE("several enclosures or kinds must be named")
{
    const plan::Plan two = files::read_plan(QStringLiteral(LOAM_SOURCE_DIR "/examples/upgrade.loamstead.json")).plan;
    REQUIRE(two.enclosures.size() > 1);
    CHECK(adopters("name,winter_day_c\nA,19\n", two).front().problems.empty());
    CHECK(adopters("name,box_height_cm\nA,60\n", two).front().problems.front().column == "box_height_cm");
    const std::string second = two.enclosures[1].id;
    const Adopter adopter =
        adopters("name,enclosure,box_height_cm\nA," + QByteArray::fromStdString(second) + ",60\n", two).front();
    REQUIRE(adopter.problems.empty());
    CHECK(adopter.plan.enclosures[1].shell.height_m == Approx(0.6));
    CHECK(adopter.plan.enclosures[0] == two.enclosures[0]);
    const Adopter kinds = one("name,animals\nA,1 python-regius + 2 pantherophis-guttatus\n");
    REQUIRE(kinds.problems.empty());
    REQUIRE(kinds.plan.enclosures.front().animals.size() == 2);
    CHECK(kinds.plan.enclosures.front().animals[1].count == 2);
}

TEST_CASE("rows share a climate where they differ in nothing that it hangs on")
{
    const auto all = adopters("name,winter_day_c,owned,currency,electricity_price_per_kwh\n"
                              "A,19,,USD,0.2\nB,19,scale,EUR,0.3\nC,20,,USD,0.2\nD,nan,,USD,0.2\nE,19,,USD,\n");
    const auto groups = groups_of(all);
    REQUIRE(groups.size() == 2);
    CHECK(groups[0].adopters == std::vector<std::size_t>{0, 1, 4});
    CHECK(groups[1].adopters == std::vector<std::size_t>{2});
    CHECK(groups_of(all, 2).size() == 3);
}

TEST_CASE("what is lent is all or nothing")
{
    const auto& prices = guidance().prices;
    const LentRead good = read_lent("item,quantity\nscale,1\nbark,\"2,5\"\n", prices, club_template());
    REQUIRE(good.errors.isEmpty());
    CHECK(good.lent[1].quantity == 2.5);
    CHECK(read_lent("item\nscale\n", prices, club_template()).lent.front().quantity == 1.0);
    CHECK(read_lent("item,quantity\nscael,1\n", prices, club_template()).errors.front().contains("scale"));
    CHECK(read_lent("item,quantity\nscale,0\n", prices, club_template()).errors.front().contains("row 2"));
    CHECK(read_lent("quantity\n1\n", prices, club_template()).errors.front().contains("item"));
    CHECK(read_lent("item,quantity\nscale,1\nscael,1\n", prices, club_template()).lent.empty());
}
