#include "tests/app/qt_strings.hpp"
#include "tests/catch.hpp"

#include "app/words/sentences.hpp"

using namespace loam;
using namespace loam::words;

namespace {

Filled filled(const char* sentence)
{
    return fill(QString::fromUtf8(sentence), [](const QString& name, const QString& form) -> std::optional<QString> {
        if (name == QStringLiteral("size")) {
            return form.isEmpty() ? QStringLiteral("4 cm") : QStringLiteral("4 cm as ") + form;
        }
        return std::nullopt;
    });
}

} // namespace

TEST_CASE("A placeholder is filled, with its form handed on")
{
    CHECK(filled("It is {size} wide.").text == "It is 4 cm wide.");
    CHECK(filled("It is {size:percent}.").text == "It is 4 cm as percent.");
}

TEST_CASE("A part in brackets is left out where something in it is missing")
{
    CHECK(filled("Wide[ by {size}].").text == "Wide by 4 cm.");
    CHECK(filled("Wide[ by {size} and {other}].").text == "Wide.");
}

TEST_CASE("A missing placeholder outside brackets is said to be not known, and told")
{
    const Filled result = filled("Wide by {other}.");
    CHECK(result.text == "Wide by not known.");
    CHECK(result.unfilled == QStringList{QStringLiteral("other")});
}

TEST_CASE("A sentence begins with a capital letter, also where it begins with a name")
{
    CHECK(fill(QStringLiteral("{x} is hot."), [](const QString&, const QString&) {
              return std::optional(QStringLiteral("lamp d1"));
          }).text == "Lamp d1 is hot.");
}

TEST_CASE("A broken template neither hangs nor reads past its end")
{
    CHECK(filled("open {size").text == "Open 4 cm");
    CHECK(filled("open [part").text == "Open part");
    CHECK(filled("").text.isEmpty());
}

TEST_CASE("The row that says most about the case at hand wins")
{
    static constexpr Sentence rows[] = {
        {"a", "any"}, {"a", "danger", Verdict::danger}, {"a", "short above", Verdict::falls_short, Direction::above}};
    CHECK(std::string(find_sentence(rows, "a", {Verdict::fits, Direction::none})->text) == "any");
    CHECK(std::string(find_sentence(rows, "a", {Verdict::danger, Direction::below})->text) == "danger");
    CHECK(std::string(find_sentence(rows, "a", {Verdict::falls_short, Direction::above})->text) == "short above");
    CHECK(std::string(find_sentence(rows, "a", {Verdict::falls_short, Direction::below})->text) == "any");
    CHECK(find_sentence(rows, "b") == nullptr);
}
