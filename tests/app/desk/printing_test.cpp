// Sheets from the window: which are wanted is asked, and kept for the next time.
#include <QCheckBox>
#include <QDialog>
#include <QDialogButtonBox>
#include <QPushButton>
#include <QTimer>
#include <QtTest>

#include "app/desk/print/sheet_choice.hpp"
#include "app/sheets/sheets.hpp"
#include "tests/app/desk/window_of_its_own.hpp"

using namespace loam;
using sheets::Sheet;

class PrintingTest : public test::WindowOfItsOwn {
    Q_OBJECT

    const std::vector<Sheet> on_offer_{Sheet::decision, Sheet::shopping, Sheet::holiday};

    static QDialog* asked()
    {
        QWidget* shown = QApplication::activeModalWidget();
        return shown != nullptr && shown->objectName() == QStringLiteral("sheetChoice") ? qobject_cast<QDialog*>(shown)
                                                                                        : nullptr;
    }

    // Presses the boxes named, then the button.
    std::optional<std::vector<Sheet>> choose(const QStringList& press, QDialogButtonBox::StandardButton button)
    {
        QTimer hand;
        QObject::connect(&hand, &QTimer::timeout, &hand, [&] {
            QDialog* dialog = asked();
            if (dialog == nullptr) {
                return;
            }
            hand.stop();
            for (const QString& name : press) {
                dialog->findChild<QCheckBox*>(QStringLiteral("sheet-") + name)->click();
            }
            QPushButton* pressed = dialog->findChild<QDialogButtonBox*>()->button(button);
            allowed_ = pressed->isEnabled();
            allowed_ ? pressed->click() : dialog->reject();
        });
        hand.start(20);
        return desk::ask_for_sheets(on_offer_, *settings_, nullptr);
    }

    bool allowed_ = false;

private slots:
    void initTestCase() { QVERIFY(load_guidance().isEmpty()); }
    void init() { settings_ = std::make_unique<desk::Settings>(); }
    void cleanup() { settings_->set_left_out_sheets({}); }

    void all_are_ticked_at_first_and_what_is_left_out_is_kept()
    {
        QCOMPARE(choose({}, QDialogButtonBox::Ok).value(), on_offer_);
        const std::vector<Sheet> two{Sheet::decision, Sheet::holiday};
        QCOMPARE(choose({QStringLiteral("shopping")}, QDialogButtonBox::Ok).value(), two);
        QCOMPARE(choose({}, QDialogButtonBox::Ok).value(), two);
        QCOMPARE(choose({QStringLiteral("shopping")}, QDialogButtonBox::Ok).value(), on_offer_);
    }

    void who_thinks_better_of_it_changes_nothing()
    {
        QVERIFY(!choose({QStringLiteral("holiday")}, QDialogButtonBox::Cancel).has_value());
        QVERIFY(settings_->left_out_sheets().isEmpty());
    }

    void no_sheet_at_all_can_not_be_printed()
    {
        choose({QStringLiteral("decision"), QStringLiteral("shopping"), QStringLiteral("holiday")},
               QDialogButtonBox::Ok);
        QVERIFY(!allowed_);
    }

    void what_was_not_on_offer_stays_left_out()
    {
        settings_->set_left_out_sheets({QStringLiteral("winter-rest")});
        choose({QStringLiteral("shopping")}, QDialogButtonBox::Ok);
        QVERIFY(settings_->left_out_sheets().contains(QStringLiteral("winter-rest")));
        QVERIFY(settings_->left_out_sheets().contains(QStringLiteral("shopping")));
    }
};

QTEST_MAIN(PrintingTest)
#include "printing_test.moc"
