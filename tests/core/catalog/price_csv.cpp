#include <algorithm>
#include <string>

#include "core/catalog/problem_codes.hpp"
#include "core/json/problem_codes.hpp"
#include "shipped.hpp"
#include "tests/catch.hpp"

using namespace loam;
using namespace loam::catalog;

namespace {

const std::string head = "item_id,item_name,serves,category,unit,pack_id,pack_name,amount_likely,"
                         "price_low,price_typical,price_high,currency,date,place\r\n";
const std::string lamp = "lamp,Lamp,lamp.flood-lamp,heat,each,one,one,1,5.00,12.30,16.00,USD,2025-03-01,town\r\n";

std::string with(std::string row, const std::string& from, const std::string& to)
{
    const std::size_t at = row.find(from);
    REQUIRE(at != std::string::npos);
    return row.replace(at, from.size(), to);
}

std::string all_replaced(std::string text, char from, char to)
{
    std::replace(text.begin(), text.end(), from, to);
    return text;
}

PriceListRead good(const std::string& text)
{
    PriceListRead read = read_prices_csv(text);
    INFO(shipped::listed(read.problems));
    REQUIRE(read.problems.empty());
    REQUIRE(read.prices.items.size() == 1);
    return read;
}

json::Problem only_problem(const std::string& text)
{
    PriceListRead read = read_prices_csv(text);
    INFO(shipped::listed(read.problems));
    REQUIRE(read.problems.size() == 1);
    CHECK(read.prices == PriceList{});
    return read.problems.front();
}

} // namespace

TEST_CASE("the shipped list comes back whole from CSV and from JSON")
{
    const PriceList& shipped_list = shipped::catalog().prices;
    const auto csv = read_prices_csv(write_csv(shipped_list));
    INFO(shipped::listed(csv.problems));
    REQUIRE(csv.problems.empty());
    CHECK(csv.prices == shipped_list);
    const auto json = read_prices(write(shipped_list));
    CHECK(json.problems.empty());
    CHECK(json.prices == shipped_list);
    CHECK(write(json.prices) == write(shipped_list));
    CHECK(write_csv(csv.prices) == write_csv(shipped_list));
}

TEST_CASE("a price keeps its digits from text to text and never becomes a double")
{
    const auto read = good(head + lamp);
    CHECK(read.prices.items[0].packs[0].typical.text() == "12.30");
    CHECK(read.prices.items[0].packs[0].typical == Decimal{1230, 2});
    CHECK(write(read.prices).find("12.30") != std::string::npos);
    CHECK(write_csv(read.prices).find(",12.30,") != std::string::npos);
    // 0.1 + 0.2 in doubles would show here: a price that no double holds.
    const auto large = good(head + with(with(lamp, "12.30", "900000000.07"), "16.00", "900000000.07"));
    CHECK(large.prices.items[0].packs[0].typical.text() == "900000000.07");
}

TEST_CASE("a list may have semicolons, decimal commas, a byte order mark and bare line feeds")
{
    const PriceList expected = good(head + lamp).prices;
    std::string european = all_replaced(all_replaced(head + lamp, ',', ';'), '.', ',');
    european = with(european, "lamp,flood-lamp", "lamp.flood-lamp");
    CHECK(good(european).prices == expected);
    CHECK(good("\xEF\xBB\xBF" + head + lamp).prices == expected);
    std::string bare = head + lamp;
    bare.erase(std::remove(bare.begin(), bare.end(), '\r'), bare.end());
    CHECK(good(bare).prices == expected);
    CHECK(good(all_replaced(head + lamp, ',', '\t')).prices == expected);
}

TEST_CASE("a comma in a number is refused where it might group thousands")
{
    const auto problem = only_problem(head + with(lamp, "12.30", "\"12,300\""));
    CHECK(problem == json::Problem{"row 2, column price_typical", std::string(problem::csv_not_a_number), {"12,300"}});
}

TEST_CASE("an empty low or high price is the typical one, an empty amount bound the likely one")
{
    const auto read = good(head + with(with(lamp, "5.00", ""), "16.00", ""));
    const Pack& pack = read.prices.items[0].packs[0];
    CHECK(pack.low == pack.typical);
    CHECK(pack.high == pack.typical);
    CHECK(pack.amount == exactly(1.0));
    CHECK(pack.in_stock);
    CHECK_FALSE(read.prices.illustrative);
    CHECK(read.prices.channel == "shop");
}

TEST_CASE("an empty typical price is a problem, never zero")
{
    const auto problem = only_problem(head + with(lamp, "12.30", ""));
    CHECK(problem.where == "row 2, column price_typical");
    CHECK(problem.code == json::problem::missing);
    // Told once, of the column that the other two fall back on.
    const std::string none = with(with(with(lamp, "5.00", ""), "12.30", ""), "16.00", "");
    CHECK(only_problem(head + none).where == "row 2, column price_typical");
}

TEST_CASE("every bad cell of every bad row is told by row and column at once")
{
    const auto read = read_prices_csv(head + lamp + with(with(lamp, "lamp,", "a,"), "12.30", "twelve") +
                                      with(with(lamp, "lamp,", "b,"), "heat", "warmth") +
                                      with(with(lamp, "lamp,", "c,"), ",5.00,", ",13.00,") +
                                      with(with(lamp, "lamp,", "D d,"), "16.00", "-1"));
    INFO(shipped::listed(read.problems));
    const auto told = [&](const char* where, std::string_view code) {
        return std::any_of(read.problems.begin(), read.problems.end(),
                           [&](const auto& each) { return each.where == where && each.code == code; });
    };
    CHECK(told("row 3, column price_typical", problem::csv_not_a_number));
    CHECK(told("row 4, column category", json::problem::unknown_choice));
    CHECK(told("row 5", problem::out_of_order));
    CHECK(told("row 6, column item_id", json::problem::pattern));
    CHECK(told("row 6, column price_high", json::problem::below_minimum));
    CHECK(std::none_of(read.problems.begin(), read.problems.end(),
                       [](const auto& each) { return each.where.rfind("row 2", 0) == 0; }));
    CHECK(read.prices == PriceList{});
}

TEST_CASE("huge, infinite and exponential numbers are refused where they stand")
{
    CHECK(only_problem(head + with(lamp, "16.00", "1e400")).where == "row 2, column price_high");
    CHECK(only_problem(head + with(lamp, "16.00", "inf")).code == problem::csv_not_a_number);
    CHECK(only_problem(head + with(lamp, "16.00", "nan")).code == problem::csv_not_a_number);
    CHECK(only_problem(head + with(lamp, "16.00", "1e3")).code == json::problem::not_plain_decimal);
    CHECK(only_problem(head + with(lamp, "16.00", "99999999999")).code == json::problem::above_maximum);
    CHECK(only_problem(head + with(lamp, ",1,", ",1e300,")).code == json::problem::above_maximum);
    CHECK(only_problem(head + with(lamp, ",1,", ",0,")).code == json::problem::not_above);
}

TEST_CASE("a price finer than the currency is refused")
{
    const auto problem = only_problem(head + with(lamp, "12.30", "12.305"));
    CHECK(problem.where == "row 2, column price_typical");
    CHECK(problem.code == problem::too_many_decimals);
    std::string yen = with(lamp, "USD", "JPY");
    CHECK(only_problem(head + yen).args == std::vector<std::string>{"12.30", "JPY", "0"}); // 5.00 is 5 yen
    yen = with(with(with(yen, "5.00", "5"), "12.30", "12"), "16.00", "16");
    CHECK(good(head + yen).prices.currency == "JPY");
}

TEST_CASE("what belongs to the list is told of its column")
{
    CHECK(only_problem(head + with(lamp, "USD", "XQZ")).where == "row 2, column currency");
    CHECK(only_problem(head + with(lamp, "2025-03-01", "2025-02-30")).code == problem::no_such_date);
    CHECK(only_problem(head + with(lamp, "2025-03-01", "1 March")).where == "row 2, column date");
}

TEST_CASE("missing, unknown and repeated columns are told before any row is read")
{
    const auto missing = only_problem(with(head, "price_typical,", "") + with(lamp, "12.30,", ""));
    CHECK(missing == json::Problem{"row 1", std::string(problem::csv_missing_column), {"price_typical"}});
    const auto mistyped = read_prices_csv(with(head, "price_low", "price_lwo") + lamp);
    REQUIRE(mistyped.problems.size() == 1);
    CHECK(mistyped.problems[0].args == std::vector<std::string>{"price_lwo", "price_low"});
    const auto twice = only_problem(with(head, "price_low", "place") + lamp);
    CHECK(twice.code == problem::csv_duplicate_column);
    CHECK(good(with(head, "item_id", "x_mine,item_id") + "note," + lamp).prices == good(head + lamp).prices);
}

TEST_CASE("a row with too few or too many cells is told")
{
    CHECK(only_problem(head + with(lamp, ",town", "")).code == problem::csv_cell_count);
    const auto more = only_problem(head + with(lamp, "town", "town,x"));
    CHECK(more == json::Problem{"row 2", std::string(problem::csv_cell_count), {"15", "14"}});
}

TEST_CASE("no text, or a head alone, is no price list")
{
    CHECK(only_problem("").code == problem::csv_no_rows);
    CHECK(only_problem(head).code == problem::csv_no_rows);
}

TEST_CASE("rows with one item id are packs of one item, and may leave out what the first has said")
{
    const std::string second = "lamp,,,,,pair,pair,2,9.00,16.00,29.00,,,\r\n";
    const auto read = good(head + lamp + second);
    REQUIRE(read.prices.items[0].packs.size() == 2);
    CHECK(read.prices.items[0].packs[1].amount.likely == 2.0);
    const auto differs = only_problem(head + lamp + with(second, "lamp,,,", "lamp,,lamp.uv-tube,"));
    CHECK(differs == json::Problem{"row 3, column serves",
                                   std::string(problem::csv_differs),
                                   {"lamp.uv-tube", "lamp.flood-lamp"}});
    CHECK(only_problem(head + lamp + with(second, ",,\r", ",2024-01-01,\r")).where == "row 3, column date");
    CHECK(only_problem(head + lamp + with(second, "pair,pair", "one,pair")).where == "row 3, column pack_id");
}

TEST_CASE("a name that a spreadsheet would run as a formula is written as text and read back")
{
    PriceList list = good(head + lamp).prices;
    list.items[0].name = "=HYPERLINK(\"x\";\"y\")";
    const std::string text = write_csv(list);
    CHECK(text.find("\"'=HYPERLINK") != std::string::npos);
    CHECK(good(text).prices == list);
}

TEST_CASE("whatever befalls the bytes of a list, reading it ends with a good list or with problems")
{
    const std::string whole = write_csv(shipped::catalog().prices).substr(0, 12'000);
    const std::string bytes = ",;\t\"\r\n'=-.e9\xC3\xFF";
    unsigned state = 12345; // a fixed sequence, so that a failure can be repeated
    const auto next = [&](std::size_t below) {
        state = state * 1664525u + 1013904223u; // Numerical Recipes' generator, from memory
        return static_cast<std::size_t>(state >> 8u) % below;
    };
    int good_lists = 0;
    for (int round = 0; round < 300; ++round) {
        std::string text = whole.substr(0, round % 2 == 0 ? whole.rfind('\n') + 1 : next(whole.size()));
        for (std::size_t hits = next(4); hits > 0 && !text.empty(); --hits) {
            text[next(text.size())] = bytes[next(bytes.size())];
        }
        const auto read = read_prices_csv(text);
        CHECK((read.problems.empty() || read.prices == PriceList{}));
        if (read.problems.empty()) {
            ++good_lists;
            CHECK(read_prices_csv(write_csv(read.prices)).prices == read.prices);
        }
    }
    CHECK(good_lists > 10);
    CHECK(good_lists < 290);
}

TEST_CASE("a JSON price list tells its problems by pointer")
{
    PriceList list = good(head + lamp).prices;
    list.items.push_back(list.items[0]);
    list.items[0].packs[0].high = Decimal{16005, 3};
    const auto read = read_prices(write(list));
    INFO(shipped::listed(read.problems));
    REQUIRE(read.problems.size() == 2);
    CHECK(read.problems[0].where == "/items/0/packs/0/high");
    CHECK(read.problems[1].where == "/items/1/id");
    CHECK(read.prices == PriceList{});
    CHECK_FALSE(read_prices("{").problems.empty());
}
