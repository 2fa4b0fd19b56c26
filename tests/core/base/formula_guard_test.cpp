#include "core/formula_guard.hpp"

#include <string>

#include "tests/catch.hpp"

using loam::reads_as_formula;

TEST_CASE("what a spreadsheet may run is known, behind blanks and in full width too")
{
    for (const char* cell : {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", " =1", "\xC2\xA0=1", "  \n @x",
                             "\xEF\xBC\x9D"
                             "1",
                             "\xEF\xBC\x8B"
                             "1",
                             "\xEF\xBC\x8D"
                             "1",
                             "\xEF\xBC\xA0x", "\xE3\x80\x80=1"}) {
        INFO(cell);
        CHECK(reads_as_formula(cell));
    }
}

TEST_CASE("plain text is left alone")
{
    for (const char* cell : {"", " ", "Turtle", "a=b", "'=1", "1-2", "\xC3\xA4", "\xEF\xBC\x91"}) {
        INFO(cell);
        CHECK_FALSE(reads_as_formula(cell));
    }
}
