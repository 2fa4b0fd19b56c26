// Numbers and file names as people and their enemies write them.
#include "app/batch/columns.hpp"
#include "app/batch/file_name.hpp"
#include "app/batch/groups.hpp"
#include "app/batch/number_cell.hpp"
#include "tests/catch.hpp"

#include <QRegularExpression>

using namespace loam;
using namespace loam::batch;

namespace {

std::string read(const char* cell, char separator = ',')
{
    const auto number = plain_number(cell, separator);
    return std::holds_alternative<std::string>(number) ? std::get<std::string>(number) : "refused";
}

} // namespace

TEST_CASE("a number has a point or a comma where that can mean one thing only")
{
    CHECK(read("19") == "19");
    CHECK(read(" 19.5 ") == "19.5");
    CHECK(read("19,5") == "19.5");
    CHECK(read("-4") == "-4");
    CHECK(read("\xE2\x88\x92"
               "4") == "-4"); // U+2212
    CHECK(read("+5") == "5");
    CHECK(read("007") == "7");
    CHECK(read(",5") == "0.5");
    CHECK(read("47.123") == "47.123");
    CHECK(read("47,123") == "refused"); // forty-seven thousand, or not
    CHECK(read("0,125") == "0.125");
    CHECK(read("47,123", ';') == "47.123");
    CHECK(read("47.123", ';') == "refused");
    CHECK(read("47.1234", ';') == "47.1234");
}

TEST_CASE("what is no plain number of a decent size is refused")
{
    for (const char* cell : {"", "nan", "inf", "-inf", "1e9", "0x10", "21 C", "20°", "1.000,5", "1,2,3", "1 000",
                             "=1+1", "99999999999999999999", "0.00000000000001", "--5", "5-", ".", ",", "٣"}) {
        INFO(cell);
        CHECK(read(cell) == "refused");
    }
}

TEST_CASE("a file name is made of the row and of tame letters, whatever the name is")
{
    CHECK(pdf_name(2, "Anna O'Malley") == "0002-anna-o-malley.pdf");
    CHECK(pdf_name(12, "Jürgen Groß") == "0012-jurgen-gross.pdf");
    CHECK(pdf_name(3, "../../etc/passwd") == "0003-etc-passwd.pdf");
    CHECK(pdf_name(4, "..\\..\\CON") == "0004-con.pdf");
    CHECK(pdf_name(5, "=cmd|' /C calc'!A0") == "0005-cmd-c-calc-a0.pdf");
    CHECK(pdf_name(6, "") == "0006-adopter.pdf");
    CHECK(pdf_name(7, QString::fromUtf8("李雷")) == "0007-adopter.pdf");
    CHECK(pdf_name(20000, "x") == "20000-x.pdf");
    static const QRegularExpression tame(QStringLiteral("^[0-9]{4,}-[a-z0-9]([a-z0-9-]{0,38}[a-z0-9])?\\.pdf$"));
    for (const QString& name :
         QStringList{QString(1000, QLatin1Char('x')), QString(50, QLatin1Char('-')) + QLatin1Char('a'),
                     QString::fromLatin1("a\nb\0c", 5), QString("-rf *"), QString(" . "),
                     QString::fromUtf8("a\u202Efdp.exe")}) {
        const QString file = pdf_name(8, name);
        INFO(file.toStdString());
        CHECK(tame.match(file).hasMatch());
    }
}

TEST_CASE("a slice is one of so many")
{
    CHECK(slice_of("1/1") == Slice{1, 1});
    CHECK(slice_of("2/8") == Slice{2, 8});
    for (const char* text : {"0/2", "3/2", "1", "1/", "/2", "a/b", "1/1001", "-1/2", "1/2/3"}) {
        CHECK_FALSE(slice_of(text));
    }
}

TEST_CASE("every group is of one slice, and a climate weighs more than a row")
{
    std::vector<Group> groups(7);
    std::size_t next = 0;
    for (Group& group : groups) {
        group.adopters = {next, next + 1};
        next += 2;
    }
    std::vector<std::size_t> seen;
    for (std::size_t i = 1; i <= 3; ++i) {
        const auto own = slice_of_groups(groups, {i, 3});
        CHECK(own.size() >= 2);
        for (const Group& group : own) {
            seen.insert(seen.end(), group.adopters.begin(), group.adopters.end());
        }
    }
    std::sort(seen.begin(), seen.end());
    REQUIRE(seen.size() == 14);
    for (std::size_t i = 0; i < seen.size(); ++i) {
        CHECK(seen[i] == i);
    }
}

TEST_CASE("each column is named once")
{
    for (const Column& column : columns()) {
        CHECK(find_column(column.name) == &column);
    }
    CHECK(find_column("winter_day") == nullptr);
}
