#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include "tests/app/qt_strings.hpp"
#include "tests/catch.hpp"

#include "app/files/guidance.hpp"
#include "app/files/price_file.hpp"

using namespace loam;

namespace {

void write_text(const QString& path, const QByteArray& text)
{
    REQUIRE(QDir().mkpath(QFileInfo(path).path()));
    QFile file(path);
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(text);
}

QByteArray shipped_sheet(const QString& id)
{
    QFile file(QStringLiteral(":/loamstead/species/") + id + QStringLiteral(".json"));
    REQUIRE(file.open(QIODevice::ReadOnly));
    return file.readAll();
}

} // namespace

TEST_CASE("The shipped guidance has no problem, and all its kinds are there")
{
    const files::Guidance guidance = files::load_guidance(QString());
    CHECK(guidance.problems == QStringList());
    CHECK(guidance.catalog.species.size() >= 16);
    CHECK_FALSE(guidance.catalog.rules.empty());
    CHECK_FALSE(guidance.catalog.materials.empty());
    CHECK_FALSE(guidance.catalog.devices.empty());
    CHECK_FALSE(guidance.catalog.assumptions.empty());
    CHECK_FALSE(guidance.catalog.prices.items.empty());
}

TEST_CASE("A sheet of the user's replaces the shipped one with the same id, and only that")
{
    const QTemporaryDir folder;
    const QByteArray own =
        shipped_sheet(QStringLiteral("testudo-hermanni")).replace("\"common_name\": \"", "\"common_name\": \"My own ");
    write_text(folder.filePath(QStringLiteral("species/mine.json")), own);
    const files::Guidance guidance = files::load_guidance(folder.path());
    CHECK(guidance.problems == QStringList());
    const catalog::Catalog shipped = files::load_guidance(QString()).catalog;
    CHECK(guidance.catalog.species.size() == shipped.species.size());
    REQUIRE(guidance.catalog.find_species("testudo-hermanni") != nullptr);
    CHECK(guidance.catalog.find_species("testudo-hermanni")->common_name.rfind("My own ", 0) == 0);
    CHECK(*guidance.catalog.find_species("python-regius") == *shipped.find_species("python-regius"));
}

TEST_CASE("A broken file of the user's is left out and named, and the rest is used")
{
    const QTemporaryDir folder;
    write_text(folder.filePath(QStringLiteral("species/broken.json")), "{\"format\": \"loamstead-species\", ");
    const files::Guidance guidance = files::load_guidance(folder.path());
    REQUIRE(guidance.problems.size() == 1);
    CHECK(guidance.problems.front().startsWith("species/broken.json: "));
    CHECK(guidance.catalog == files::load_guidance(QString()).catalog);
}

TEST_CASE("A folder that does not exist is no problem")
{
    const QTemporaryDir folder;
    CHECK(files::load_guidance(folder.filePath(QStringLiteral("none"))).problems == QStringList());
}

TEST_CASE("A price list survives the way to CSV and back, and to JSON and back")
{
    const QTemporaryDir folder;
    const catalog::PriceList prices = files::load_guidance(QString()).catalog.prices;
    const QString json = folder.filePath(QStringLiteral("prices.json"));
    const QString csv = folder.filePath(QStringLiteral("prices.csv"));
    REQUIRE(files::write_prices(prices, json).isEmpty());
    const files::PriceFile from_json = files::read_prices(json);
    CHECK(from_json.errors == QStringList());
    CHECK(from_json.prices == prices);
    REQUIRE(files::write_prices(prices, csv).isEmpty());
    const files::PriceFile from_csv = files::read_prices(csv);
    CHECK(from_csv.errors == QStringList());
    REQUIRE(from_csv.prices.items.size() == prices.items.size());
    for (std::size_t i = 0; i < prices.items.size(); ++i) {
        CHECK(from_csv.prices.items[i].id == prices.items[i].id);
        CHECK(from_csv.prices.items[i].packs == prices.items[i].packs);
    }
}

TEST_CASE("Each bad row of a CSV price list is named with its column")
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("prices.csv"));
    const catalog::PriceList prices = files::load_guidance(QString()).catalog.prices;
    REQUIRE(files::write_prices(prices, path).isEmpty());
    QFile file(path);
    REQUIRE(file.open(QIODevice::ReadOnly));
    QByteArray text = file.readAll();
    file.close();
    const QByteArray price = QByteArray::fromStdString(prices.items.front().packs.front().typical.text());
    const qsizetype at = text.indexOf("," + price + ",");
    REQUIRE(at > 0);
    text.replace(at + 1, price.size(), "cheap");
    write_text(path, text);
    const files::PriceFile read = files::read_prices(path);
    CHECK(read.failure == files::Failure::invalid);
    REQUIRE(read.errors.size() == 1);
    CHECK(read.errors.front().startsWith("row 2, column "));
    CHECK(read.errors.front().contains("“cheap” is not a number."));
}
