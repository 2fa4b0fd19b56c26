// The tour, the words and the preferences.
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTabWidget>
#include <QtTest>

#include "app/desk/help/terms_dialog.hpp"
#include "app/desk/session/preferences.hpp"
#include "tests/app/desk/window_of_its_own.hpp"

using namespace loam;
using test::patience_ms;

class HelpTest : public test::WindowOfItsOwn {
    Q_OBJECT

private slots:
    void initTestCase() { QCOMPARE(load_guidance(), QStringList()); }

    void init()
    {
        open_window();
        window_->show_example();
    }

    void cleanup() { close_window(); }

    // Each stop's text names the part that it brings into view.
    void the_tour_goes_through_the_window_and_ends()
    {
        find<QPushButton>("welcomeTour")->click();
        auto* bar = find<QWidget>("tourBar");
        auto* text = find<QLabel>("tourText");
        auto* next = find<QPushButton>("tourNext");
        auto* tabs = find<QTabWidget>("resultTabs");
        QVERIFY(bar->isVisible());
        QVERIFY(find<QWidget>("welcomeBar")->isHidden());
        const QStringList words{QStringLiteral("left"),     QStringLiteral("drawing"),      QStringLiteral("drawing"),
                                QStringLiteral("Findings"), QStringLiteral("Hour by hour"), QStringLiteral("What if"),
                                QStringLiteral("Shopping"), QStringLiteral("Costs")};
        for (int stop = 0; stop < words.size(); ++stop) {
            QVERIFY2(text->text().contains(words[stop]), qPrintable(text->text()));
            if (stop >= 3) {
                QVERIFY2(tabs->tabText(tabs->currentIndex()).contains(words[stop]),
                         qPrintable(tabs->tabText(tabs->currentIndex())));
            }
            next->click();
        }
        QVERIFY(bar->isHidden());
        QVERIFY(!find<QWidget>("welcomeBar")->isHidden());
    }

    void a_word_is_found_in_the_names_and_in_the_meanings()
    {
        desk::TermsDialog dialog;
        auto* list = dialog.findChild<QListWidget*>(QStringLiteral("termsList"));
        auto* line = dialog.findChild<QLineEdit*>(QStringLiteral("termsLine"));
        const auto shown = [list] {
            int count = 0;
            for (int i = 0; i < list->count(); ++i) {
                count += list->item(i)->isHidden() ? 0 : 1;
            }
            return count;
        };
        QVERIFY(shown() > 15);
        line->setText(QStringLiteral("fogs"));
        QCOMPARE(shown(), 1);
        QCOMPARE(list->currentItem()->text(), QStringLiteral("Dew point"));
        line->setText(QStringLiteral("no such word"));
        QCOMPARE(shown(), 0);
        line->clear();
        QVERIFY(shown() > 15);
    }

    void preferences_count_at_once_and_the_language_at_the_next_start()
    {
        desk::Preferences dialog(*settings_, window_->prices());
        dialog.show();
        const auto choose = [&dialog](const char* name, int index) {
            auto* box = dialog.findChild<QComboBox*>(QLatin1String(name));
            box->setCurrentIndex(index);
            emit box->activated(index);
        };
        choose("preferUnits", 1);
        QCOMPARE(settings_->units(), words::UnitSystem::us);
        QVERIFY(window_->findChild<QAction*>(QStringLiteral("unitsUs"))->isChecked());
        choose("preferPaper", 1);
        QCOMPARE(settings_->paper(), sheets::Paper::letter);
        auto* note = dialog.findChild<QLabel*>(QStringLiteral("languageNote"));
        QVERIFY(note->isHidden());
        choose("preferLanguage", 2);
        QCOMPARE(settings_->language(), QStringLiteral("de"));
        QVERIFY(!note->isHidden());
        QSignalSpy again(&dialog, &desk::Preferences::startAgainWanted);
        dialog.findChild<QPushButton*>(QStringLiteral("startAgain"))->click();
        QCOMPARE(again.size(), 1);
        choose("preferLanguage", 0);
        QCOMPARE(settings_->chosen_language(), QString());
        dialog.findChild<QLineEdit*>(QStringLiteral("printedName"))->setText(QStringLiteral("Invented club"));
        QCOMPARE(settings_->printed_by().name, QStringLiteral("Invented club"));
    }
};

QTEST_MAIN(HelpTest)
#include "help_test.moc"
