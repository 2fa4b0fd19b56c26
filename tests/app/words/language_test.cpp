// The languages that the program speaks, and whether every text that is looked up has its translation.
#include <QCoreApplication>

#include <algorithm>
#include <set>
#include <string>

#include "app/files/guidance.hpp"
#include "app/words/catalog_names.hpp"
#include "app/words/language.hpp"
#include "app/words/sentences.hpp"
#include "app/words/verdicts.hpp"
#include "tests/catch.hpp"

using namespace loam;

namespace {

struct Running {
    int argc = 1;
    char name[5] = "test";
    char* argv[2] = {name, nullptr};
    QCoreApplication application{argc, argv};
    ~Running()
    {
        words::speak(QStringLiteral("en"), QLocale::c());
        QLocale::setDefault(QLocale::c());
    }
};

} // namespace

TEST_CASE("The reader's first language that the program speaks is taken")
{
    CHECK(words::best_language({QStringLiteral("de-AT"), QStringLiteral("en")}) == QStringLiteral("de"));
    CHECK(words::best_language({QStringLiteral("fr"), QStringLiteral("es_MX")}) == QStringLiteral("es"));
    CHECK(words::best_language({QStringLiteral("fr-FR"), QStringLiteral("it")}) == QStringLiteral("en"));
    CHECK(words::best_language({}) == QStringLiteral("en"));
    CHECK(words::best_language({QStringLiteral("C")}) == QStringLiteral("en"));
}

TEST_CASE("Numbers go by the reader's region where the language is spoken there")
{
    const QLocale austria(QLocale::German, QLocale::Austria);
    CHECK(words::locale_for(QStringLiteral("de"), austria) == austria);
    CHECK(words::locale_for(QStringLiteral("es"), austria).language() == QLocale::Spanish);
}

TEST_CASE("A language is spoken until another one is")
{
    const Running running;
    for (const auto& [code, word] : {std::pair{"de", "passt"}, {"es", "cumple"}, {"en", "fits"}, {"xx", "fits"}}) {
        words::speak(QString::fromLatin1(code), QLocale::c());
        CHECK(words::verdict(Verdict::fits) == QString::fromUtf8(word));
    }
}

TEST_CASE("Every sentence about a plan is there in every language, with the same figures to fill in")
{
    const Running running;
    const auto placeholders = [](const QString& text) {
        std::multiset<QString> found;
        for (qsizetype at = text.indexOf(QLatin1Char('{')); at >= 0; at = text.indexOf(QLatin1Char('{'), at + 1)) {
            found.insert(text.mid(at, text.indexOf(QLatin1Char('}'), at) - at + 1));
        }
        return found;
    };
    for (const char* code : {"de", "es"}) {
        words::speak(QString::fromLatin1(code), QLocale::c());
        for (const words::Sentences table :
             {words::danger_sentences(), words::space_sentences(), words::heat_sentences(), words::moisture_sentences(),
              words::reading_sentences(), words::record_sentences(), words::light_sentences(),
              words::electricity_sentences(), words::money_sentences(), words::caution_sentences(),
              words::remedy_sentences(), words::rule_sentences(), words::need_sentences()}) {
            for (const words::Sentence& row : table) {
                const QString spoken = words::translated(row.text);
                INFO(code << ": " << row.text);
                CHECK((spoken != QString::fromUtf8(row.text) || spoken == QStringLiteral("{species}: {note}")));
                CHECK(placeholders(spoken) == placeholders(QString::fromUtf8(row.text)));
            }
        }
    }
}

TEST_CASE("The table of names in the guidance has every name of it, and no other")
{
    const catalog::Catalog catalog = files::load_guidance(QString()).catalog;
    std::set<std::string> names{catalog.prices.title, catalog.prices.place};
    for (const catalog::Species& each : catalog.species) {
        names.insert(each.common_name);
    }
    for (const catalog::Material& each : catalog.materials) {
        names.insert(each.name);
    }
    for (const catalog::Rule& each : catalog.rules) {
        names.insert(each.title);
    }
    for (const catalog::Item& each : catalog.prices.items) {
        names.insert(each.name);
        for (const catalog::Pack& pack : each.packs) {
            names.insert(pack.name);
        }
    }
    const auto table = words::catalog_names();
    CHECK(std::set<std::string>(table.begin(), table.end()) == names);
}

TEST_CASE("Names of the guidance are translated, ids are not")
{
    const Running running;
    const catalog::Catalog english = files::load_guidance(QString()).catalog;
    words::speak(QStringLiteral("de"), QLocale::c());
    const catalog::Catalog german = files::load_guidance(QString()).catalog;
    CHECK(german.find_species("testudo-hermanni")->common_name == "Griechische Landschildkröte");
    CHECK(english.find_species("testudo-hermanni")->common_name !=
          german.find_species("testudo-hermanni")->common_name);
    REQUIRE(german.prices.items.size() == english.prices.items.size());
    CHECK(german.prices.items.front().id == english.prices.items.front().id);
    CHECK(german.prices.items.front().name != english.prices.items.front().name);
}

TEST_CASE("A remark on a source is in the reader's language up to what it cites")
{
    const Running running;
    const Source practice{"Common practice, no source: every day", Confidence::practice};
    const Source unsourced{"No source: order of magnitude", Confidence::derived};
    words::speak(QStringLiteral("de"), QLocale::c());
    CHECK(words::source(practice).startsWith(QStringLiteral("Gängige Praxis, ohne Quelle: ")));
    CHECK(words::source(unsourced).startsWith(QStringLiteral("Ohne Quelle: ")));
    words::speak(QStringLiteral("en"), QLocale::c());
    CHECK(words::source(practice) == QStringLiteral("Common practice, no source: every day"));
}
