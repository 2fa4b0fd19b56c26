#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include "tests/app/qt_strings.hpp"
#include "tests/catch.hpp"

#include "app/files/bytes.hpp"
#include "app/files/plan_file.hpp"
#include "core/plan/file.hpp"

using namespace loam;
using files::Failure;

namespace {

QString write_text(const QTemporaryDir& folder, const QString& name, const QByteArray& text)
{
    QFile file(folder.filePath(name));
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(text);
    return file.fileName();
}

QByteArray text_of(const QString& path)
{
    QFile file(path);
    REQUIRE(file.open(QIODevice::ReadOnly));
    return file.readAll();
}

} // namespace

TEST_CASE("A plan that was written reads back as the same value")
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("a plan with blanks.loamstead.json"));
    const plan::Plan plan = files::example_plan();
    REQUIRE(files::write_plan(plan, path).isEmpty());
    const files::PlanFile read = files::read_plan(path);
    CHECK(read.errors.isEmpty());
    CHECK(read.failure == Failure::none);
    CHECK_FALSE(read.migrated);
    CHECK(read.plan == plan);
}

TEST_CASE("The example that the window opens with has an enclosure with an animal")
{
    const plan::Plan plan = files::example_plan();
    REQUIRE_FALSE(plan.enclosures.empty());
    CHECK_FALSE(plan.enclosures.front().animals.empty());
}

TEST_CASE("A file that is missing or a folder is unreadable, and the sentence names it")
{
    const QTemporaryDir folder;
    const files::PlanFile missing = files::read_plan(folder.filePath(QStringLiteral("none.json")));
    CHECK(missing.failure == Failure::unreadable);
    REQUIRE(missing.errors.size() == 1);
    CHECK(missing.errors.front().contains("none.json"));
    CHECK(missing.errors.front().contains("does not exist"));
    CHECK(files::read_plan(folder.path()).errors.front().contains("is a folder"));
}

TEST_CASE("A file that is too large is refused before it is read")
{
    const QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("huge.json")));
    REQUIRE(file.open(QIODevice::WriteOnly));
    REQUIRE(file.resize(100 * 1024 * 1024)); // sparse: takes no room
    const files::PlanFile read = files::read_plan(file.fileName());
    CHECK(read.failure == Failure::unreadable);
    CHECK(read.errors.front().contains("larger than 8 MB"));
}

TEST_CASE("All that is wrong with a plan is told at once, each with its place")
{
    const QTemporaryDir folder;
    const QString path = write_text(folder, QStringLiteral("bad.json"),
                                    R"({"format": "loamstead-plan", "version": 1, "title": "t", "currency": "USD",
                                        "site": {"room": {"heatwave_c": 33}, "latitude_deg": 91},
                                        "enclosures": []})");
    const files::PlanFile read = files::read_plan(path);
    CHECK(read.failure == Failure::invalid);
    const QString all = read.errors.join(QLatin1Char('\n'));
    CHECK(all.contains("/site/room/heatwave_c: "));
    CHECK(all.contains("Did you mean “heat_wave_c”?"));
    CHECK(all.contains("/site/latitude_deg: 91 is too large."));
    CHECK(read.problems.size() == static_cast<std::size_t>(read.errors.size()));
}

TEST_CASE("An older version is read, and said to be migrated")
{
    const files::PlanFile read = files::read_plan(QStringLiteral(LOAM_TEST_DATA_DIR "/plan/version-0.json"));
    CHECK(read.errors.isEmpty());
    CHECK(read.migrated);
}

TEST_CASE("A save that fails leaves the old file as it was")
{
    const QTemporaryDir folder;
    const QString path = write_text(folder, QStringLiteral("kept.json"), "old");
    const QString error =
        files::write_plan(files::example_plan(), folder.filePath(QStringLiteral("no-such-folder/plan.json")));
    CHECK(error.contains("can't be written"));
    CHECK(text_of(path) == "old");
    // Nothing half written is left beside it.
    CHECK(QDir(folder.path()).entryList(QDir::Files) == QStringList{QStringLiteral("kept.json")});
}

TEST_CASE("Saving twice gives the same bytes")
{
    const QTemporaryDir folder;
    const QString first = folder.filePath(QStringLiteral("1.json"));
    const QString second = folder.filePath(QStringLiteral("2.json"));
    REQUIRE(files::write_plan(files::example_plan(), first).isEmpty());
    REQUIRE(files::write_plan(files::read_plan(first).plan, second).isEmpty());
    CHECK(text_of(first) == text_of(second));
}
