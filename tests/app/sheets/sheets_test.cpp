// The sheets as PDF, read back with pdftotext (poppler): what is on paper is what was worked out.
#include <QProcess>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QtTest>

#include "app/files/guidance.hpp"
#include "app/files/plan_file.hpp"
#include "app/sheets/sheets.hpp"
#include "app/sheets/typography.hpp"
#include "core/assess/assess.hpp"

using namespace loam;

class SheetsTest : public QObject {
    Q_OBJECT

    QTemporaryDir folder_;
    catalog::Catalog catalog_;
    plan::Plan plan_;
    assess::Assessment assessment_;

    sheets::Request request(sheets::Paper paper) const
    {
        return {.plan = plan_,
                .assessment = assessment_,
                .catalog = catalog_,
                .formatter = words::Formatter(),
                .paper = paper,
                .sheets = {sheets::Sheet::shopping, sheets::Sheet::budget}};
    }

    QString output_of(const QString& program, const QStringList& arguments)
    {
        QProcess process;
        process.start(program, arguments);
        process.waitForFinished();
        return QString::fromUtf8(process.readAllStandardOutput());
    }

    QString text_of(sheets::Paper paper,
                    std::vector<sheets::Sheet> only = {sheets::Sheet::shopping, sheets::Sheet::budget})
    {
        const QString path = folder_.filePath(QStringLiteral("sheets.pdf"));
        sheets::Request wanted = request(paper);
        wanted.sheets = std::move(only);
        const auto error = sheets::write_pdf(wanted, path);
        if (error) {
            qWarning("%s", qPrintable(*error));
        }
        return output_of(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), path, QStringLiteral("-")});
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
        assessment_ = *assess::assess(plan_, catalog_, std::chrono::year(2026) / 3 / 1, workspace);
    }

    void every_shopping_line_and_the_totals_are_on_paper()
    {
        const QString text = text_of(sheets::Paper::a4).simplified();
        QVERIFY(text.contains(QStringLiteral("Shopping sheet")));
        for (const assess::ShoppingLine& line : assessment_.shopping) {
            if (line.line_total) {
                const QString total = words::Formatter().money_bare(line.line_total->typical);
                QVERIFY2(text.contains(total), qPrintable(total));
            }
        }
        QVERIFY(text.contains(words::Formatter().money_bare(assessment_.costs.startup.typical)));
        QVERIFY(text.contains(words::Formatter().money_bare(assessment_.costs.running_per_year.typical)));
        QVERIFY(text.contains(words::Formatter().iso_date(assessment_.costs.price_date)));
    }

    // By hand: delivery 7.25 and tax of 0.10 of goods and delivery stand in rows of their own; what is set aside is the
    // plan's share of all that is paid.
    void deliveries_and_tax_are_told_apart_from_what_is_set_aside()
    {
        const assess::Assessment before = assessment_;
        catalog::Catalog brought = catalog_;
        const Decimal price{725, 2};
        brought.prices.delivery = catalog::Delivery{price, price, price, std::nullopt, {}};
        brought.prices.tax_share = 0.1;
        plan::Plan plan = plan_;
        plan.budget.contingency = 0.0;
        assess::Workspace workspace;
        assessment_ =
            *assess::assess(plan, brought, std::chrono::year(2026) / 3 / 1, workspace, {}, {}, assess::Until::at_once);
        const QString text = text_of(sheets::Paper::a4, {sheets::Sheet::budget}).simplified();
        QVERIFY(text.contains(QStringLiteral("Delivery, shop 7.25 7.25 7.25")));
        const MoneyRange& tax = assessment_.costs.deliveries.at(0).tax;
        QVERIFY(text.contains(QStringLiteral("Tax on top, shop ") + words::Formatter().money_bare(tax.low)));
        QVERIFY(!text.contains(QStringLiteral("Set aside for surprises")));
        assessment_ = before;
    }

    void pages_are_counted_and_cautions_printed()
    {
        const QString text = text_of(sheets::Paper::letter);
        QVERIFY(text.contains(QStringLiteral("Page 1 of")));
        QVERIFY(text.contains(QStringLiteral("licensed electrician")));
        QVERIFY(text.contains(QStringLiteral("Salmonella")));
    }

    void a_figure_and_its_unit_stay_on_one_line()
    {
        const QString whole = sheets::figures_kept_whole(QStringLiteral("pane of 0.25 m², 15–19 mm, 100 insects"));
        QVERIFY(whole.contains(QString(QStringLiteral("0.25 m²")).replace(QLatin1Char(' '), QChar(0x00a0))));
        QVERIFY(whole.contains(QChar(0x2060)));
        QVERIFY(whole.contains(QStringLiteral("100 insects")));
    }

    void the_cautions_stand_on_one_page_and_no_page_is_nearly_empty()
    {
        for (const sheets::Paper paper : {sheets::Paper::a4, sheets::Paper::letter}) {
            for (const QString& page : text_of(paper).split(QLatin1Char('\f'), Qt::SkipEmptyParts)) {
                const QStringList lines = page.split(QLatin1Char('\n'), Qt::SkipEmptyParts);
                QVERIFY2(lines.size() >= 8, qPrintable(page));
                const bool starts = page.contains(QStringLiteral("Predictions: run"));
                QCOMPARE(page.contains(QStringLiteral("may need papers")), starts);
            }
        }
    }

    void paper_sizes_are_as_asked()
    {
        for (const auto& [paper, size] :
             {std::pair{sheets::Paper::a4, "595"}, std::pair{sheets::Paper::letter, "612"}}) {
            text_of(paper);
            const QString info = output_of(QStringLiteral("pdfinfo"), {folder_.filePath(QStringLiteral("sheets.pdf"))});
            QVERIFY2(info.contains(QLatin1String("Page size:")) && info.contains(QLatin1String(size)),
                     qPrintable(info));
        }
    }

    void fonts_are_embedded()
    {
        text_of(sheets::Paper::a4);
        const QStringList lines =
            output_of(QStringLiteral("pdffonts"), {folder_.filePath(QStringLiteral("sheets.pdf"))})
                .split(QLatin1Char('\n'), Qt::SkipEmptyParts);
        QVERIFY(lines.size() > 2);
        for (const QString& line : lines.mid(2)) {
            // Columns: name, type, encoding, then embedded, subset and mapped to Unicode.
            const QRegularExpression embedded(QStringLiteral("\\byes\\s+(yes|no)\\s+yes\\b"));
            QVERIFY2(line.contains(embedded), qPrintable(line));
        }
    }

    void markup_in_a_title_is_printed_as_it_is()
    {
        const plan::Plan kept = plan_;
        plan_.title = "<b>bold</b> & =1+1";
        const QString text = text_of(sheets::Paper::a4);
        plan_ = kept;
        QVERIFY(text.contains(QStringLiteral("<b>bold</b> & =1+1")));
    }

    void a_rest_that_is_asked_for_has_a_sheet_with_weeks_weights_and_a_blank_for_the_vet()
    {
        const plan::Plan kept = plan_;
        const assess::Assessment known = assessment_;
        plan::Animal& animal = plan_.enclosures[0].animals[0];
        animal.condition = plan::Condition::well;
        animal.cool_season =
            plan::CoolSeason{.begins = "2026-11-02", .cold_weeks = 8, .vet_checked = std::nullopt, .extras = {}};
        assess::Workspace workspace;
        assessment_ = *assess::assess(plan_, catalog_, std::chrono::year(2026) / 3 / 1, workspace);
        const auto wanted = sheets::usual_sheets(assessment_);
        QVERIFY(std::find(wanted.begin(), wanted.end(), sheets::Sheet::winter_rest) != wanted.end());
        const QString rest = text_of(sheets::Paper::a4, {sheets::Sheet::winter_rest}).simplified();
        animal.condition = plan::Condition::ill;
        assessment_ = *assess::assess(plan_, catalog_, std::chrono::year(2026) / 3 / 1, workspace);
        const QString refused = text_of(sheets::Paper::letter, {sheets::Sheet::winter_rest}).simplified();
        plan_ = kept;
        assessment_ = known;
        for (const char* there : {"Winter rest", "may be cooled", "Checked on, by", "winding down", "23 Nov 2026",
                                  "18 Jan 2027", "331 g"}) { // 8 % of 360 g lost, by hand; three weeks of fast
            QVERIFY2(rest.contains(QLatin1String(there)), there);
        }
        QVERIFY(refused.contains(QStringLiteral("must not be cooled: it is ill")));
        QVERIFY(!refused.contains(QStringLiteral("winding down")));
        const auto usual = sheets::usual_sheets(assessment_);
        QVERIFY(std::find(usual.begin(), usual.end(), sheets::Sheet::winter_rest) == usual.end());
    }

    void a_folder_that_is_not_there_is_named()
    {
        const auto error =
            sheets::write_pdf(request(sheets::Paper::a4), folder_.filePath(QStringLiteral("no/sheets.pdf")));
        QVERIFY(error.has_value());
        QVERIFY(error->contains(QStringLiteral("no/sheets.pdf")));
    }
};

QTEST_MAIN(SheetsTest)
#include "sheets_test.moc"
