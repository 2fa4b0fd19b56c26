// The sheets as PDF, read back with pdftotext (poppler): what is on paper is what was worked out.
#include <QDir>
#include <QImage>
#include <QProcess>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QtTest>
#include <algorithm>
#include <cmath>

#include "app/files/guidance.hpp"
#include "app/files/plan_file.hpp"
#include "app/sheets/sheets.hpp"
#include "app/words/line_breaks.hpp"
#include "core/assess/assess.hpp"

using namespace loam;

class SheetsTest : public QObject {
    Q_OBJECT

    QTemporaryDir folder_;
    catalog::Catalog catalog_;
    plan::Plan plan_;
    assess::Assessment assessment_;
    sheets::PrintedBy printed_by_;

    sheets::Request request(sheets::Paper paper) const
    {
        return {.plan = plan_,
                .assessment = assessment_,
                .catalog = catalog_,
                .formatter = words::Formatter(),
                .paper = paper,
                .sheets = {sheets::Sheet::shopping, sheets::Sheet::budget},
                .printed_by = printed_by_};
    }

    QString output_of(const QString& program, const QStringList& arguments)
    {
        QProcess process;
        process.start(program, arguments);
        process.waitForFinished(300000); // an upper bound only
        QString text = QString::fromUtf8(process.readAllStandardOutput());
        // poppler gives the ligatures of the font as letters of their own.
        for (const auto& [ligature, letters] : {std::pair{"\uFB03", "ffi"}, std::pair{"\uFB00", "ff"},
                                                std::pair{"\uFB01", "fi"}, std::pair{"\uFB02", "fl"}}) {
            text.replace(QString::fromUtf8(ligature), QLatin1String(letters));
        }
        return text;
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
        const QString whole = words::figures_kept_whole(QStringLiteral("pane of 0.25 m², 15–19 mm, 100 insects"));
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
                const bool starts = page.contains(QStringLiteral("Predictions: run")) ||
                                    page.contains(QStringLiteral("Safety is not where to save"));
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

    void every_sheet_bears_at_its_head_who_hands_it_out_as_plain_text()
    {
        printed_by_ = {QStringLiteral("<i>Pond & Fen</i> club"), QStringLiteral("first line\nsecond <b>line</b>")};
        for (const sheets::SheetName& one : sheets::sheet_names()) {
            const QString text = text_of(sheets::Paper::a4, {one.sheet}).split(QLatin1Char('\f')).first();
            for (const char* there :
                 {"<i>Pond & Fen</i> club", "first line", "second <b>line</b>", "prices of 1 Nov"}) {
                QVERIFY2(text.contains(QString::fromUtf8(there)), qPrintable(text));
            }
            QVERIFY(text.indexOf(QStringLiteral("Pond")) < text.indexOf(sheets::title_of(one.sheet)));
            QVERIFY(text.contains(QRegularExpression(QStringLiteral("Page 1 of \\d"))));
        }
        printed_by_ = {};
    }

    void shopping_and_budget_have_blanks_for_paid_and_sign_off()
    {
        for (const sheets::Sheet sheet : {sheets::Sheet::shopping, sheets::Sheet::budget}) {
            const QString text = text_of(sheets::Paper::a4, {sheet});
            QVERIFY(text.contains(QStringLiteral("Paid: amount")));
            QVERIFY(text.contains(QStringLiteral("Sign-off")));
        }
    }

    // By hand: startup and ten times a year, in whole cents (the example looks at five years).
    void the_decision_sheet_tells_ten_years_life_span_doors_and_that_one_is_enough()
    {
        const QString text = text_of(sheets::Paper::letter, {sheets::Sheet::decision}).simplified();
        const assess::Costs& costs = assessment_.costs;
        const Money ten(costs.startup.typical.minor_units() + 10 * costs.running_per_year.typical.minor_units(),
                        costs.currency);
        QVERIFY2(text.contains(words::Formatter().money_bare(ten)), qPrintable(text));
        for (const char* there : {"Life span", "One animal is a valid choice", "Hours a week, all together",
                                  "to be measured", "Narrowest door", "salmonella", "quarantine"}) {
            const bool found = text.contains(QString::fromUtf8(there));
            const bool measured = text.contains(QStringLiteral("outside 142.4 cm × 77.4 cm × 51.2 cm")); // 12 mm boards
            QVERIFY2(found || (measured && QLatin1String(there) == QLatin1String("to be measured")), there);
        }
        const plan::Plan kept = plan_;
        plan_.enclosures[0].shell.wall_thickness_m.reset();
        QVERIFY(text_of(sheets::Paper::a4, {sheets::Sheet::decision})
                    .simplified()
                    .contains(QStringLiteral("to be measured")));
        plan_ = kept;
    }

    // The box of the example is 140 cm long inside, of 12 mm boards: 142.4 cm outside. At 1:15 that is 94.9 mm, which a
    // printout at 254 dots an inch shows as 949 dots; poppler draws them.
    void the_drawing_of_the_build_sheet_is_to_the_scale_it_states()
    {
        const QString text = text_of(sheets::Paper::a4, {sheets::Sheet::build}).simplified();
        const QRegularExpressionMatch scale = QRegularExpression(QStringLiteral("Scale 1:(\\d+)")).match(text);
        QVERIFY(scale.hasMatch());
        const double outside_mm = 1424.0 / scale.captured(1).toDouble();
        const QString picture = folder_.filePath(QStringLiteral("build"));
        output_of(QStringLiteral("pdftoppm"),
                  {QStringLiteral("-r"), QStringLiteral("254"), QStringLiteral("-gray"), QStringLiteral("-f"),
                   QStringLiteral("1"), QStringLiteral("-l"), QStringLiteral("1"), QStringLiteral("-singlefile"),
                   folder_.filePath(QStringLiteral("sheets.pdf")), picture});
        const QImage page(picture + QStringLiteral(".pgm"));
        QVERIFY(!page.isNull());
        int longest = 0;
        for (int y = 0; y < page.height(); ++y) {
            int run = 0;
            for (int x = 0; x < page.width(); ++x) {
                if (qGray(page.pixel(x, y)) < 128) {
                    ++run;
                    continue;
                }
                longest = run < 1500 ? std::max(longest, run) : longest; // rules of tables are as wide as the page
                run = 0;
            }
        }
        QVERIFY2(std::abs(longest / 10.0 - outside_mm) < 0.6, qPrintable(QString::number(longest)));
    }

    void the_build_sheet_lists_wiring_set_points_and_what_goes_where()
    {
        const QString text = text_of(sheets::Paper::letter, {sheets::Sheet::build}).simplified();
        for (const char* there : {"s1, timed", "thermostat at 28.5 °C", "Timer: on at 07:30", "Order of assembly",
                                  "28 cm × 20 cm × 5 cm", "102 cm", "residual-current", "no structural approval"}) {
            QVERIFY2(text.contains(QString::fromUtf8(there)), qPrintable(QString::fromUtf8(there) + text));
        }
    }

    void the_proving_sheet_has_three_readings_on_seven_days_with_targets_and_what_to_do()
    {
        const QString text = text_of(sheets::Paper::a4, {sheets::Sheet::proving}).simplified();
        for (int day = 1; day <= 7; ++day) {
            for (const char* time : {"morning", "afternoon", "night"}) {
                QVERIFY(text.contains(QStringLiteral("Day %1, %2").arg(day).arg(QLatin1String(time))));
            }
        }
        const words::Formatter formatter;
        for (const assess::ZoneResult& zone : assessment_.enclosures[0].heat.front().zones) {
            QVERIFY(text.contains(formatter.target(zone.target_c, words::Quantity::temperature)));
            QVERIFY(
                text.contains(QString(formatter.span(zone.temperature_c, words::Quantity::temperature)).simplified()));
        }
        QVERIFY(text.contains(QStringLiteral("When a reading is out of its target")));
    }

    void the_holiday_card_is_one_page_for_each_box_with_safe_hours_and_numbers_to_fill_in()
    {
        for (const sheets::Paper paper : {sheets::Paper::a4, sheets::Paper::letter}) {
            const QString text = text_of(paper, {sheets::Sheet::holiday});
            QCOMPARE(text.count(QLatin1Char('\f')), static_cast<qsizetype>(plan_.enclosures.size()));
            const QString told = text.simplified();
            for (const char* there : {"Power cut", "Lamp burnt out", "Reptile vet", "thermostat at 28.5 °C", "How much",
                                      "lamps on 07:30, off 20:30", "comes to harm"}) {
                QVERIFY2(told.contains(QString::fromUtf8(there)), there);
            }
        }
    }

    // Black on white: a page printed without colours is the same page.
    void no_sheet_needs_colour()
    {
        text_of(sheets::Paper::a4, sheets::usual_sheets(assessment_));
        const QString picture = folder_.filePath(QStringLiteral("page"));
        output_of(QStringLiteral("pdftoppm"), {QStringLiteral("-r"), QStringLiteral("40"), QStringLiteral("-png"),
                                               folder_.filePath(QStringLiteral("sheets.pdf")), picture});
        const QStringList pages = QDir(folder_.path()).entryList({QStringLiteral("page*.png")});
        QVERIFY(pages.size() > 8);
        for (const QString& name : pages) {
            const QImage page = QImage(folder_.filePath(name)).convertToFormat(QImage::Format_RGB32);
            QVERIFY2(page.allGray(), qPrintable(name));
        }
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
