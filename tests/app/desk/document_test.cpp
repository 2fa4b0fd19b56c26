// The document changes only by undoable steps.
#include <QSignalSpy>
#include <QtTest>

#include "app/desk/document/plan_document.hpp"
#include "core/plan/file.hpp"

using namespace loam;

namespace {

plan::Plan titled(const char* title)
{
    plan::Plan plan;
    plan.title = title;
    return plan;
}

} // namespace

class DocumentTest : public QObject {
    Q_OBJECT

private slots:
    void an_edit_is_undone_and_redone_to_the_same_bytes()
    {
        desk::PlanDocument document;
        document.reset(titled("before"), {});
        const std::string before = plan::write(document.plan());
        document.edit(QStringLiteral("Change"), {}, titled("after"));
        const std::string after = plan::write(document.plan());
        QVERIFY(before != after);
        document.undo_stack().undo();
        QCOMPARE(plan::write(document.plan()), before);
        document.undo_stack().redo();
        QCOMPARE(plan::write(document.plan()), after);
    }

    void successive_edits_of_one_field_are_one_step()
    {
        desk::PlanDocument document;
        document.reset(titled(""), {});
        for (const char* text : {"a", "ab", "abc"}) {
            document.edit(QStringLiteral("Change title"), QStringLiteral("/title"), titled(text));
        }
        QCOMPARE(document.undo_stack().count(), 1);
        document.undo_stack().undo();
        QCOMPARE(document.plan().title, std::string());
    }

    void edits_of_different_fields_or_without_a_field_stay_apart()
    {
        desk::PlanDocument document;
        document.reset(titled(""), {});
        document.edit(QStringLiteral("x"), QStringLiteral("/title"), titled("a"));
        document.edit(QStringLiteral("y"), QStringLiteral("/currency"), titled("b"));
        document.edit(QStringLiteral("z"), {}, titled("c"));
        document.edit(QStringLiteral("z"), {}, titled("d"));
        QCOMPARE(document.undo_stack().count(), 4);
    }

    void an_edit_that_changes_nothing_is_dropped()
    {
        desk::PlanDocument document;
        document.reset(titled("same"), {});
        QSignalSpy changed(&document, &desk::PlanDocument::planChanged);
        document.edit(QStringLiteral("x"), {}, titled("same"));
        QCOMPARE(changed.count(), 0);
        QVERIFY(!document.modified());
    }

    void typing_back_to_the_beginning_leaves_nothing_to_undo()
    {
        desk::PlanDocument document;
        document.reset(titled("a"), {});
        document.edit(QStringLiteral("x"), QStringLiteral("/title"), titled("ab"));
        document.edit(QStringLiteral("x"), QStringLiteral("/title"), titled("a"));
        QVERIFY(!document.undo_stack().canUndo());
        QVERIFY(!document.modified());
    }

    void saving_marks_clean_and_undoing_past_it_marks_modified()
    {
        desk::PlanDocument document;
        document.reset(titled("a"), {});
        document.edit(QStringLiteral("x"), {}, titled("b"));
        QVERIFY(document.modified());
        document.mark_saved(QStringLiteral("plan.loamstead.json"));
        QVERIFY(!document.modified());
        document.undo_stack().undo();
        QVERIFY(document.modified());
    }

    void a_recovered_plan_is_unsaved_from_the_start()
    {
        desk::PlanDocument document;
        document.reset(titled("recovered"), {}, true);
        QVERIFY(document.modified());
    }
};

QTEST_GUILESS_MAIN(DocumentTest)
#include "document_test.moc"
