// The running card and the printed year, read back with pdftotext (poppler) and held against the tasks they are made
// of.
#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QtTest>

#include "app/files/guidance.hpp"
#include "app/files/plan_file.hpp"
#include "app/sheets/sheets.hpp"
#include "app/words/tasks.hpp"
#include "core/assess/assess.hpp"
#include "core/calendar/care_tasks.hpp"

using namespace loam;

class CareSheetsTest : public QObject {
    Q_OBJECT

    QTemporaryDir folder_;
    catalog::Catalog catalog_;
    plan::Plan plan_;
    assess::Assessment assessment_;

    QString text_of(sheets::Sheet sheet, bool as_laid_out = false)
    {
        const QString path = folder_.filePath(QStringLiteral("care.pdf"));
        const sheets::Request request{.plan = plan_,
                                      .assessment = assessment_,
                                      .catalog = catalog_,
                                      .formatter = words::Formatter(),
                                      .paper = sheets::Paper::a4,
                                      .sheets = {sheets::Sheet::budget, sheet}};
        if (const auto error = sheets::write_pdf(request, path)) {
            qWarning("%s", qPrintable(*error));
        }
        QProcess process;
        process.start(QStringLiteral("pdftotext"),
                      as_laid_out ? QStringList{QStringLiteral("-layout"), path, QStringLiteral("-")}
                                  : QStringList{path, QStringLiteral("-")});
        process.waitForFinished();
        const QString title =
            sheet == sheets::Sheet::year ? QStringLiteral("The year") : QStringLiteral("Running card");
        const QString whole = QString::fromUtf8(process.readAllStandardOutput());
        return whole.mid(whole.indexOf(title)).normalized(QString::NormalizationForm_KC); // without ligatures
    }

    std::vector<calendar::Task> tasks() const
    {
        return calendar::care_tasks(plan_, assessment_, catalog_, assessment_.date);
    }

    static QString flat(QString text)
    {
        return text.remove(QChar(0x2060)).replace(QChar(0x00a0), QLatin1Char(' ')).simplified();
    }

private slots:
    void initTestCase()
    {
        if (QStandardPaths::findExecutable(QStringLiteral("pdftotext")).isEmpty()) {
            QSKIP("pdftotext (poppler-utils) is not installed");
        }
        catalog_ = files::load_guidance(QString()).catalog;
        plan_ = files::example_plan();
        assess::Workspace workspace;
        assessment_ = *assess::assess(plan_, catalog_, std::chrono::year(2026) / 11 / 30, workspace);
    }

    void the_card_says_what_is_done_every_day_and_how_much()
    {
        const QString text = flat(text_of(sheets::Sheet::running));
        const words::Speaker speaker(words::Formatter(), plan_, catalog_);
        int daily = 0;
        for (const calendar::Task& task : tasks()) {
            if (task.recurrence.frequency == calendar::Frequency::daily && task.recurrence.every == 1) {
                const QString advice = words::task_advice(task, speaker);
                QVERIFY2(text.contains(flat(advice)), qPrintable(advice));
                ++daily;
            }
        }
        QVERIFY(daily >= 3);
    }

    void the_card_has_targets_the_power_cut_and_the_vet()
    {
        const QString text = flat(text_of(sheets::Sheet::running));
        QVERIFY(text.contains(QStringLiteral("Basking spot")));
        const assess::ZoneResult& basking = assessment_.enclosures[0].heat.front().zones.front();
        QVERIFY(text.contains(flat(words::Formatter().target(basking.target_c, words::Quantity::temperature))));
        for (const char* phrase : {"When the power fails", "Never heat with a flame", "When to call a reptile vet",
                                   "Reptile vet, telephone", "decide how often", "Wash your hands"}) {
            QVERIFY2(text.contains(QLatin1String(phrase)), phrase);
        }
    }

    void with_other_sheets_before_it_the_card_has_two_pages()
    {
        QVERIFY(text_of(sheets::Sheet::running).contains(QStringLiteral("Page 2 of 2")));
    }

    void the_year_has_every_replacement_on_its_day()
    {
        const QStringList lines = text_of(sheets::Sheet::year, true).split(QLatin1Char('\n'));
        QVERIFY(assessment_.costs.replacements.size() > 2);
        for (const assess::Replacement& one : assessment_.costs.replacements) {
            const QDate due(static_cast<int>(one.due.year()), static_cast<int>(static_cast<unsigned>(one.due.month())),
                            static_cast<int>(static_cast<unsigned>(one.due.day())));
            const QString month =
                words::Formatter().locale().standaloneMonthName(due.month()) + QStringLiteral(" %1").arg(due.year());
            QString now;
            bool found = false;
            for (const QString& line : lines) {
                const QString text = flat(line);
                now = text.size() < 16 && text.contains(QStringLiteral(" 202")) ? text : now;
                found = found || (now == month && text.startsWith(QStringLiteral("%1 Replace").arg(due.day())));
            }
            QVERIFY2(found, qPrintable(month + QLatin1Char(' ') + QString::fromStdString(one.name)));
        }
    }

    // From 30 November: 28 February 2027 is the last day of its month.
    void a_day_that_a_month_lacks_is_its_last()
    {
        const QString text = flat(text_of(sheets::Sheet::year, true));
        QVERIFY(text.contains(QStringLiteral("Every month, from November 2026 on")));
        QVERIFY(text.contains(QStringLiteral("February 2027 28 Quarantine")) ||
                text.contains(QStringLiteral("28 Read the UV")));
    }
};

QTEST_MAIN(CareSheetsTest)
#include "care_sheets_test.moc"
