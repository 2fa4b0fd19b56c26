// Unsaved work outlives a crash, and only a crash.
#include <QDir>
#include <QTemporaryDir>
#include <QtTest>

#include "app/desk/session/recovery.hpp"

using namespace loam;

namespace {

plan::Plan titled(const char* title)
{
    plan::Plan plan;
    plan.title = title;
    return plan;
}

// What a crash leaves: the copy without its owner. The lock of a session that ended in order is gone with it, so the
// copy is put back by hand.
void crash(const QString& folder, const plan::Plan& plan, const QString& path)
{
    QByteArray bytes;
    QString name;
    {
        desk::Recovery session(folder);
        session.keep(plan, path, true);
        QVERIFY(session.flush());
        const QStringList files = QDir(folder).entryList({QStringLiteral("*.json")});
        QCOMPARE(files.size(), 1);
        name = files.front();
        QFile copy(folder + QLatin1Char('/') + name);
        QVERIFY(copy.open(QIODevice::ReadOnly));
        bytes = copy.readAll();
    }
    QFile left(folder + QLatin1Char('/') + name);
    QVERIFY(left.open(QIODevice::WriteOnly));
    left.write(bytes);
}

} // namespace

class RecoveryTest : public QObject {
    Q_OBJECT

private slots:
    void unsaved_work_is_found_after_a_crash_with_its_path()
    {
        QTemporaryDir folder;
        crash(folder.path(), titled("lost and found"), QStringLiteral("/home/someone/plan.loamstead.json"));
        desk::Recovery next(folder.path());
        const auto found = next.left_behind();
        QCOMPARE(found.size(), std::size_t{1});
        QCOMPARE(found.front().plan.title, std::string("lost and found"));
        QCOMPARE(found.front().original_path, QStringLiteral("/home/someone/plan.loamstead.json"));
        QVERIFY(found.front().plan.extras.empty());
        next.discard(found.front());
        QVERIFY(next.left_behind().empty());
    }

    void an_orderly_end_leaves_nothing()
    {
        QTemporaryDir folder;
        {
            desk::Recovery session(folder.path());
            session.keep(titled("a"), {}, true);
            QVERIFY(session.flush());
        }
        desk::Recovery next(folder.path());
        QVERIFY(next.left_behind().empty());
    }

    void a_session_that_still_runs_is_not_offered()
    {
        QTemporaryDir folder;
        desk::Recovery running(folder.path());
        running.keep(titled("mine"), {}, true);
        QVERIFY(running.flush());
        desk::Recovery other(folder.path());
        QVERIFY(other.left_behind().empty());
    }

    void a_saved_plan_needs_no_copy()
    {
        QTemporaryDir folder;
        desk::Recovery session(folder.path());
        session.keep(titled("a"), {}, true);
        QVERIFY(session.flush());
        session.keep(titled("a"), {}, false);
        QVERIFY(QDir(folder.path()).entryList({QStringLiteral("*.json")}).isEmpty());
    }

    void a_broken_copy_is_passed_over()
    {
        QTemporaryDir folder;
        QFile broken(folder.filePath(QStringLiteral("0.recovery.loamstead.json")));
        QVERIFY(broken.open(QIODevice::WriteOnly));
        broken.write("{ \"format\":");
        broken.close();
        desk::Recovery session(folder.path());
        QVERIFY(session.left_behind().empty());
    }
};

QTEST_GUILESS_MAIN(RecoveryTest)
#include "recovery_test.moc"
