// desk_pictures: opens the real window on a plan, waits until it is assessed, and saves what it shows as a PNG.
// Used by the demo and to look at the screens; not installed.
#include <QAbstractButton>
#include <QAccessible>
#include <QAction>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QCommandLineParser>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QListWidget>
#include <QMetaEnum>
#include <QMouseEvent>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QTextStream>
#include <QTimer>
#include <QTreeWidget>
#include <cstdio>

#include "app/desk/look/theme.hpp"
#include "app/desk/session/comparison_choice.hpp"
#include "app/desk/session/plan_files.hpp"
#include "app/desk/session/settings.hpp"
#include "app/desk/views/sheet.hpp"
#include "app/desk/window.hpp"
#include "app/files/guidance.hpp"
#include "app/files/identity.hpp"
#include "app/words/language.hpp"

namespace {

bool wait_for_result(const loam::desk::Window& window)
{
    QElapsedTimer timer;
    timer.start();
    while (!window.up_to_date() && timer.elapsed() < 30000) {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    }
    return window.up_to_date();
}

// Layouts ask for one another; what is drawn a moment later is what a user sees.
void settle()
{
    QElapsedTimer timer;
    timer.start();
    while (timer.elapsed() < 150) {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    }
}

bool compare(loam::desk::Window& window, const QString& path)
{
    loam::desk::ComparisonChoice& comparison = window.comparison();
    if (!comparison.with_file(path)) {
        return false;
    }
    QElapsedTimer timer;
    timer.start();
    while (!comparison.assessment() && timer.elapsed() < 30000) {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    }
    return comparison.assessment() != nullptr;
}

void choose_row(QWidget& tab, int row)
{
    auto* table = qobject_cast<QTreeWidget*>(&tab);
    table = table != nullptr ? table : tab.findChild<QTreeWidget*>();
    if (table == nullptr || table->topLevelItemCount() == 0) {
        return;
    }
    QTreeWidgetItem* item = table->topLevelItem(0);
    for (int i = 0; i < row && item != nullptr; ++i) {
        item = table->itemBelow(item);
    }
    table->setCurrentItem(item);
}

// "0.3,0.5": a third from the left, half way down.
void point_at(QWidget& drawing, const QString& shares)
{
    const QPointF at(shares.section(QLatin1Char(','), 0, 0).toDouble() * drawing.width(),
                     shares.section(QLatin1Char(','), 1).toDouble() * drawing.height());
    QMouseEvent move(QEvent::MouseMove, at, drawing.mapToGlobal(at), Qt::NoButton, Qt::NoButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&drawing, &move);
}

QWidget* on_top(QWidget& window)
{
    QWidget* modal = QApplication::activeModalWidget();
    return modal != nullptr ? modal : &window;
}

// Presses the named actions and buttons one after another, each in the dialog that the one before opened, and takes the
// picture of what is on top then. False: something is not there, or the picture was not written.
bool press_and_take(QWidget& window, QStringList names, const QString& out)
{
    if (names.isEmpty()) {
        settle();
        const bool written = on_top(window)->grab().save(out);
        while (QWidget* dialog = QApplication::activeModalWidget()) {
            dialog->close();
            QCoreApplication::processEvents();
        }
        return written;
    }
    const QString name = names.takeFirst();
    bool done = false;
    QTimer::singleShot(200, &window, [&window, names, out, &done] { done = press_and_take(window, names, out); });
    if (auto* action = on_top(window)->findChild<QAction*>(name)) {
        action->trigger(); // comes back when what it opened was closed
    } else if (auto* button = on_top(window)->findChild<QAbstractButton*>(name)) {
        button->click();
    } else {
        return false;
    }
    QElapsedTimer timer;
    timer.start();
    while (!done && timer.elapsed() < 5000) {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20); // what opened no dialog came back at once
    }
    return done;
}

// Every chapter of the form beside every tab of the results, and the dialogs that need no answer, as numbered files.
bool take_set(loam::desk::Window& window, const QString& folder)
{
    auto* chapters = window.findChild<QListWidget*>(QStringLiteral("chapters"));
    auto* tabs = window.findChild<QTabWidget*>(QStringLiteral("resultTabs"));
    bool written = QDir().mkpath(folder);
    for (int i = 0; i < std::max(chapters->count(), tabs->count()); ++i) {
        chapters->setCurrentRow(std::min(i, chapters->count() - 1));
        if (i < tabs->count() && tabs->isTabVisible(i)) {
            tabs->setCurrentIndex(i);
        }
        settle();
        written =
            window.grab().save(QStringLiteral("%1/%2.png").arg(folder).arg(i, 2, 10, QLatin1Char('0'))) && written;
    }
    for (const char* name :
         {"editPreferences", "helpTerms", "helpCautions", "helpAbout", "pricesLists", "helpFind", "fileFirst"}) {
        const QString out = QStringLiteral("%1/%2.png").arg(folder, QLatin1String(name));
        written = press_and_take(window, {QLatin1String(name)}, out) && written;
    }
    return written;
}

// What a screen reader finds: one line for each thing, indented as it is nested.
void write_tree(QAccessibleInterface* thing, int depth, QTextStream& out)
{
    if (thing == nullptr || !thing->isValid()) {
        return;
    }
    out << QString(2 * depth, QLatin1Char(' '))
        << QMetaEnum::fromType<QAccessible::Role>().valueToKey(static_cast<int>(thing->role())) << ": "
        << thing->text(QAccessible::Name).simplified() << "\n";
    for (int i = 0; i < thing->childCount(); ++i) {
        write_tree(thing->child(i), depth + 1, out);
    }
}

bool write_tree(QWidget& window, const QString& path)
{
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly)) {
        return false;
    }
    QTextStream out(&file);
    write_tree(QAccessible::queryAccessibleInterface(&window), 0, out);
    return true;
}

} // namespace

int main(int argc, char** argv)
{
    QTemporaryDir home; // the user's own settings stay out of the picture
    qputenv("XDG_CONFIG_HOME", home.path().toUtf8());
    qputenv("XDG_DATA_HOME", home.path().toUtf8());
    QApplication application(argc, argv);
    loam::files::set_identity(application);
    QCommandLineParser parser;
    parser.addHelpOption();
    parser.addOptions(
        {{QStringLiteral("plan"), QStringLiteral("Plan to show; the example without it."), QStringLiteral("file")},
         {QStringLiteral("out"), QStringLiteral("PNG to write."), QStringLiteral("file")},
         {QStringLiteral("size"), QStringLiteral("Width x height."), QStringLiteral("size"),
          QStringLiteral("1280x800")},
         {QStringLiteral("theme"), QStringLiteral("light or dark."), QStringLiteral("theme"), QStringLiteral("light")},
         {QStringLiteral("language"), QStringLiteral("en, de or es."), QStringLiteral("code"), QStringLiteral("en")},
         {QStringLiteral("mirrored"), QStringLiteral("Laid out from right to left.")},
         {QStringLiteral("units"), QStringLiteral("metric or us."), QStringLiteral("units"), QStringLiteral("metric")},
         {QStringLiteral("chapter"), QStringLiteral("Chapter of the form, from 0."), QStringLiteral("number"),
          QStringLiteral("0")},
         {QStringLiteral("tab"), QStringLiteral("Tab of the results, from 0."), QStringLiteral("number"),
          QStringLiteral("0")},
         {QStringLiteral("layer"), QStringLiteral("What is laid over the floor, from 0."), QStringLiteral("number"),
          QStringLiteral("0")},
         {QStringLiteral("walls"), QStringLiteral("Fold the walls out.")},
         {QStringLiteral("grid"), QStringLiteral("Draw the grid.")},
         {QStringLiteral("choose"), QStringLiteral("Thing of the drawing to choose, as if just moved."),
          QStringLiteral("id")},
         {QStringLiteral("zoom"), QStringLiteral("How much the drawing is enlarged."), QStringLiteral("factor"),
          QStringLiteral("1")},
         {QStringLiteral("course"), QStringLiteral("Day or drill that the chart of hours shows, from 0."),
          QStringLiteral("number"), QStringLiteral("0")},
         {QStringLiteral("compare"), QStringLiteral("Plan to compare with; its tab is shown."), QStringLiteral("file")},
         {QStringLiteral("only-differing"), QStringLiteral("Of the comparison, only what differs.")},
         {QStringLiteral("press"), QStringLiteral("Actions and buttons to press before, by object name."),
          QStringLiteral("names,…")},
         {QStringLiteral("set"), QStringLiteral("Take all screens into this folder instead."),
          QStringLiteral("folder")},
         {QStringLiteral("tree"), QStringLiteral("Also write what a screen reader finds."), QStringLiteral("file")},
         {QStringLiteral("row"), QStringLiteral("Row of the table in view to choose, from 0."),
          QStringLiteral("number")},
         {QStringLiteral("pointer"), QStringLiteral("Where the mouse points, in shares of the drawing."),
          QStringLiteral("x,y")}});
    parser.process(application);

    loam::words::speak(parser.value(QStringLiteral("language")), QLocale(parser.value(QStringLiteral("language"))));
    if (parser.isSet(QStringLiteral("mirrored"))) {
        QApplication::setLayoutDirection(Qt::RightToLeft);
    }
    loam::desk::Settings settings;
    settings.set_theme(parser.value(QStringLiteral("theme")) == QStringLiteral("dark") ? loam::desk::Theme::dark
                                                                                       : loam::desk::Theme::light);
    settings.set_units(parser.value(QStringLiteral("units")) == QStringLiteral("us") ? loam::words::UnitSystem::us
                                                                                     : loam::words::UnitSystem::metric);
    loam::desk::apply_theme(application, settings.theme());
    const auto catalog = std::make_shared<const loam::catalog::Catalog>(loam::files::load_guidance(QString()).catalog);
    loam::desk::Window window(catalog, settings, home.path());
    const QStringList size = parser.value(QStringLiteral("size")).split(QLatin1Char('x'));
    window.resize(size.value(0).toInt(), size.value(1).toInt());
    window.show();
    const QString plan = parser.value(QStringLiteral("plan"));
    if (plan.isEmpty()) {
        window.show_example();
    } else if (!window.files().open(plan)) {
        return 3;
    }
    window.findChild<QListWidget*>(QStringLiteral("chapters"))
        ->setCurrentRow(parser.value(QStringLiteral("chapter")).toInt());
    window.findChild<QTabWidget*>(QStringLiteral("resultTabs"))
        ->setCurrentIndex(parser.value(QStringLiteral("tab")).toInt());
    if (!wait_for_result(window)) {
        std::fputs("The plan was not assessed in time.\n", stderr);
        return 1;
    }
    if (parser.isSet(QStringLiteral("compare")) && !compare(window, parser.value(QStringLiteral("compare")))) {
        return 3;
    }
    window.findChild<QCheckBox*>(QStringLiteral("onlyDiffering"))
        ->setChecked(parser.isSet(QStringLiteral("only-differing")));
    if (parser.isSet(QStringLiteral("row"))) {
        choose_row(*window.findChild<QTabWidget*>(QStringLiteral("resultTabs"))->currentWidget(),
                   parser.value(QStringLiteral("row")).toInt());
    }
    window.findChild<QComboBox*>(QStringLiteral("courseChooser"))
        ->setCurrentIndex(parser.value(QStringLiteral("course")).toInt());
    window.findChild<QComboBox*>(QStringLiteral("layerChooser"))
        ->setCurrentIndex(parser.value(QStringLiteral("layer")).toInt());
    window.findChild<QCheckBox*>(QStringLiteral("wallsBox"))->setChecked(parser.isSet(QStringLiteral("walls")));
    window.findChild<QCheckBox*>(QStringLiteral("gridBox"))->setChecked(parser.isSet(QStringLiteral("grid")));
    auto* sheet = window.findChild<loam::desk::Sheet*>(QStringLiteral("sheet"));
    sheet->zoom_by(parser.value(QStringLiteral("zoom")).toDouble(), QRectF(sheet->rect()).center());
    if (const QString id = parser.value(QStringLiteral("choose")); !id.isEmpty()) {
        emit sheet->chosen(id);
        sheet->picture.in_hand = loam::drawing::InHand{id, {QLineF(0.0, 0.1, 0.5, 0.1)}};
        sheet->setFocus();
        sheet->redraw();
    }
    if (parser.isSet(QStringLiteral("pointer"))) {
        point_at(*window.findChild<QWidget*>(QStringLiteral("sheet")), parser.value(QStringLiteral("pointer")));
    }
    settle();
    if (parser.isSet(QStringLiteral("tree")) && !write_tree(window, parser.value(QStringLiteral("tree")))) {
        return 4;
    }
    if (parser.isSet(QStringLiteral("set"))) {
        return take_set(window, parser.value(QStringLiteral("set"))) ? 0 : 4;
    }
    const QString out = parser.value(QStringLiteral("out"));
    const QStringList presses = parser.value(QStringLiteral("press")).split(QLatin1Char(','), Qt::SkipEmptyParts);
    if (!press_and_take(window, presses, out)) {
        std::fprintf(stderr, "%s can't be written, or something to press is not there.\n", qPrintable(out));
        return 4;
    }
    return 0;
}
