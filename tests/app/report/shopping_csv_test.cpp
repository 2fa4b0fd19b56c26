// The form of a CSV file: RFC 4180 (from memory), sections 2.1 to 2.7. Cells read as formulas: OWASP, "CSV Injection"
// (from memory): those that begin with = + - @, a tab or a carriage return.
#include "tests/app/qt_strings.hpp"
#include "tests/catch.hpp"

#include "app/report/shopping.hpp"

using namespace loam;

namespace {

assess::ShoppingLine line(const std::string& name)
{
    const Currency currency = *Currency::find("USD");
    assess::ShoppingLine line;
    line.need = "lamp.flood-lamp";
    line.item = "lamp";
    line.item_name = name;
    line.pack = "one";
    line.unit = "each";
    line.amount_needed = 2;
    line.packs = 2;
    line.pack_price = MoneyRange{Money(100, currency), Money(150, currency), Money(200, currency)};
    line.line_total = line.pack_price->times(2);
    line.enclosures = {"e1"};
    line.why = "need.device";
    return line;
}

QString csv(const assess::ShoppingLine& one)
{
    const plan::Plan plan;
    const catalog::Catalog catalog;
    return QString::fromStdString(report::shopping_csv({one}, words::Speaker(words::Formatter(), plan, catalog)));
}

} // namespace

TEST_CASE("Lines end with CR LF, and every row has as many cells as the header")
{
    const QStringList rows = csv(line("Lamp")).split("\r\n");
    REQUIRE(rows.size() == 3);
    CHECK(rows[2].isEmpty());
    CHECK(rows[0].count(',') == rows[1].count(','));
    CHECK(rows[1].contains(",USD,1.00,1.50,2.00,2.00,3.00,4.00,"));
}

TEST_CASE("A cell with a comma, a quote or a line break is quoted, its quotes doubled")
{
    CHECK(csv(line("Lamp, large")).contains(",\"Lamp, large\","));
    CHECK(csv(line("Lamp 3\" wide")).contains(",\"Lamp 3\"\" wide\","));
    CHECK(csv(line("Lamp\nlarge")).contains(",\"Lamp\nlarge\","));
}

TEST_CASE("No cell is read as a formula")
{
    for (const char* name : {"=1+1", "+1", "-1", "@sum", "\tx"}) {
        INFO(name);
        const QString safe = QLatin1Char('\'') + QString::fromUtf8(name);
        const QString quoted = QLatin1Char('"') + safe + QLatin1Char('"'); // a tab is some spreadsheets' separator
        CHECK(csv(line(name)).contains(QLatin1Char(',') + (safe.contains('\t') ? quoted : safe)));
    }
}

TEST_CASE("A need without a price has empty cells, not zeros")
{
    assess::ShoppingLine unpriced = line("Lamp");
    unpriced.pack_price.reset();
    unpriced.line_total.reset();
    CHECK(csv(unpriced).contains(",each,,,,,,,,"));
}
