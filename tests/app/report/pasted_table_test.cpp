// A table for the clipboard. HTML's characters: "Special characters" of the HTML standard (& < > ", from memory). Cells
// read as formulas: OWASP, "CSV Injection" (from memory): those that begin with = + - @, a tab or a carriage return.
#include "tests/app/qt_strings.hpp"
#include "tests/catch.hpp"

#include "app/report/csv.hpp"
#include "app/report/pasted_table.hpp"

using namespace loam;

namespace {

report::PastedTable table(const QString& name)
{
    report::PastedTable table;
    table.title = QStringLiteral("Plan <1>");
    table.heads = {{QStringLiteral("Item"), false}, {QStringLiteral("Total"), true}};
    table.rows = {{{name, false}, {QStringLiteral("-3.50"), true}}};
    table.notes = {QStringLiteral("a & b")};
    return table;
}

} // namespace

TEST_CASE("What people wrote is no markup in a pasted table")
{
    const QString html = report::pasted_html(table(QStringLiteral("<script>\"x\"</script> & more")));
    CHECK(html.contains("<td>&lt;script&gt;&quot;x&quot;&lt;/script&gt; &amp; more</td>"));
    CHECK(html.contains("<b>Plan &lt;1&gt;</b>"));
    CHECK(html.contains("<p>a &amp; b</p>"));
    CHECK_FALSE(html.contains("<script>"));
}

TEST_CASE("What people wrote is no formula in a pasted table, and a figure stays a figure")
{
    for (const char* name : {"=1+1", "+1", "-1", "@sum"}) {
        INFO(name);
        const report::PastedTable pasted = table(QString::fromUtf8(name));
        CHECK(report::pasted_html(pasted).contains(QStringLiteral("<td>'") + QString::fromUtf8(name).toHtmlEscaped()));
        CHECK(report::pasted_lines(pasted).contains(QStringLiteral("\n'") + QString::fromUtf8(name)));
        CHECK(report::pasted_html(pasted).contains("<td align=\"right\">-3.50</td>"));
        CHECK(report::pasted_lines(pasted).contains("\t-3.50\n"));
    }
}

TEST_CASE("A formula behind blanks is none in a table's CSV, and a negative figure stays a number there")
{
    CHECK(report::pasted_csv(table(QStringLiteral("  =1+1"))) == "Item,Total\r\n'  =1+1,-3.50\r\n");
    CHECK(report::csv_cell(json::Node::of(-1.5)) == "-1.5");
    CHECK(report::csv_cell(json::Node::of("-1.5")) == "'-1.5"); // what a person typed
}

TEST_CASE("What another separator would split off stays in its cell")
{
    CHECK(report::csv_cell(std::string("lamp;=1+1")) == "\"lamp;=1+1\"");
    CHECK(report::csv_cell(std::string("lamp\t=1+1")) == "\"lamp\t=1+1\"");
}

TEST_CASE("Tabs and line breaks within a cell don't break the lines of a pasted table")
{
    const QStringList lines = report::pasted_lines(table(QStringLiteral("a\tb\nc\rd"))).split('\n');
    REQUIRE(lines.size() == 5); // title, heads, row, note, and nothing after the last line feed
    CHECK(lines[2] == "a b c d\t-3.50");
    CHECK(lines[1].count('\t') == lines[2].count('\t'));
}

TEST_CASE("A formula behind a tab is none either")
{
    CHECK(report::pasted_lines(table(QStringLiteral("\t=1+1"))).contains("' =1+1\t"));
}

TEST_CASE("The same as CSV has heads and rows only, quoted where needed, and no formula")
{
    CHECK(report::pasted_csv(table(QStringLiteral("=1+1, \"x\""))) == "Item,Total\r\n\"'=1+1, \"\"x\"\"\",-3.50\r\n");
}
