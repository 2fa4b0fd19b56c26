// The menus of the window: every action has a name, a standard shortcut where one exists, and an object name.
#include "app/desk/window.hpp"

#include <QActionGroup>
#include <QDate>
#include <QFileInfo>
#include <QMenuBar>
#include <QMessageBox>
#include <QStatusBar>
#include <QUndoStack>

#include "app/desk/batch/batch_dialog.hpp"
#include "app/desk/command_finder.hpp"
#include "app/desk/document/plan_document.hpp"
#include "app/desk/help/about.hpp"
#include "app/desk/help/terms_dialog.hpp"
#include "app/desk/help/tour_bar.hpp"
#include "app/desk/prices/price_lists_dialog.hpp"
#include "app/desk/print/calendar_dialog.hpp"
#include "app/desk/print/drawing_export.hpp"
#include "app/desk/print/sheet_printing.hpp"
#include "app/desk/session/comparison_choice.hpp"
#include "app/desk/session/csv_export.hpp"
#include "app/desk/session/plan_files.hpp"
#include "app/desk/session/preferences.hpp"
#include "app/desk/session/price_choice.hpp"
#include "app/desk/session/settings.hpp"
#include "app/desk/start/first_setup.hpp"
#include "app/desk/views/drawing_view.hpp"
#include "app/desk/welcome_bar.hpp"
#include "app/report/cost_rows.hpp"
#include "app/report/shopping.hpp"

namespace loam::desk {

namespace {

template <class Receiver, class Slot> QAction* add(QMenu& menu, const QString& text, const char* name,
                                                   const QKeySequence& shortcut, Receiver* receiver, Slot slot)
{
    QAction* action = menu.addAction(text);
    action->setObjectName(QLatin1String(name));
    action->setShortcut(shortcut);
    QObject::connect(action, &QAction::triggered, receiver, slot);
    return action;
}

} // namespace

void Window::build_file_menu()
{
    QMenu& menu = *menuBar()->addMenu(tr("&File"));
    add(menu, tr("&New plan"), "fileNew", QKeySequence::New, files_, [this] { files_->start_new(); });
    add(menu, tr("&First plan, step by step…"), "fileFirst", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_N), this,
        [this] { start_first_plan(); });
    add(menu, tr("&Open…"), "fileOpen", QKeySequence::Open, files_, [this] { files_->open_asking(); });
    recent_menu_ = menu.addMenu(tr("Open &recent"));
    recent_menu_->setObjectName(QStringLiteral("recentMenu"));
    connect(&settings_, &Settings::recentFilesChanged, this, &Window::fill_recent_menu);
    fill_recent_menu();
    add(menu, tr("Open the e&xample"), "fileExample", {}, this, [this] {
        if (files_->may_discard()) {
            show_example();
        }
    });
    menu.addSeparator();
    add(menu, tr("&Save"), "fileSave", QKeySequence::Save, files_, [this] { files_->save(); });
    add(menu, tr("Save &as…"), "fileSaveAs", QKeySequence::SaveAs, files_, [this] { files_->save_as(); });
    menu.addSeparator();
    add(menu, tr("&Print sheets…"), "filePrint", QKeySequence::Print, this, [this] { print_sheets(false); });
    add(menu, tr("Sheets as P&DF…"), "filePdf", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P), this,
        [this] { print_sheets(true); });
    add(menu, tr("&Export the drawing…"), "fileDrawing", {}, this, [this] { export_drawing(); });
    add(menu, tr("Save the &calendar…"), "fileCalendar", {}, this, [this] {
        show_calendar();
    })->setStatusTip(tr("What has to be done on which day, as a list and as a file for calendar programs."));
    menu.addSeparator();
    add(menu, tr("For a list of adop&ters…"), "fileBatch", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_T), this,
        [this] { make_batch(); })
        ->setStatusTip(tr("The sheets of each row of a list, with this plan as the template, and one order over all."));
    menu.addSeparator();
    add(menu, tr("&Quit"), "fileQuit", QKeySequence::Quit, this, [this] { close(); });
}

void Window::make_batch()
{
    BatchDialog dialog(
        document_->plan(), catalog_,
        {prices_->paths(), settings_.language(), settings_.units(), settings_.paper(), settings_.printed_by()}, this);
    dialog.exec();
}

void Window::fill_recent_menu()
{
    recent_menu_->clear();
    const QStringList files = settings_.recent_files();
    for (const QString& path : files) {
        QAction* action = recent_menu_->addAction(QFileInfo(path).fileName());
        action->setToolTip(path);
        action->setStatusTip(path);
        connect(action, &QAction::triggered, this, [this, path] {
            if (QFileInfo::exists(path)) {
                files_->open(path);
                return;
            }
            QMessageBox::information(this, tr("The file is gone"),
                                     tr("“%1” is no longer there. It is taken off this list.").arg(path));
            settings_.forget_recent_file(path);
        });
    }
    recent_menu_->setEnabled(!files.isEmpty());
    if (!files.isEmpty()) {
        recent_menu_->addSeparator();
        connect(recent_menu_->addAction(tr("Clear this list")), &QAction::triggered, &settings_,
                &Settings::clear_recent_files);
    }
}

void Window::build_edit_menu()
{
    QMenu& menu = *menuBar()->addMenu(tr("&Edit"));
    QAction* undo = document_->undo_stack().createUndoAction(this, tr("&Undo"));
    undo->setObjectName(QStringLiteral("editUndo"));
    undo->setShortcut(QKeySequence::Undo);
    menu.addAction(undo);
    QAction* redo = document_->undo_stack().createRedoAction(this, tr("&Redo"));
    redo->setObjectName(QStringLiteral("editRedo"));
    redo->setShortcuts({QKeySequence(QKeySequence::Redo), QKeySequence(Qt::CTRL | Qt::Key_Y)});
    menu.addAction(redo);
    menu.addSeparator();
    QAction* preferences = add(menu, tr("&Preferences…"), "editPreferences", QKeySequence(Qt::CTRL | Qt::Key_Comma),
                               this, [this] { show_preferences(); });
    preferences->setMenuRole(QAction::PreferencesRole);
}

void Window::build_compare_menu()
{
    QMenu& menu = *menuBar()->addMenu(tr("&Compare"));
    add(menu, tr("&Keep as comparison"), "compareKeep", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_K), comparison_,
        [this] { comparison_->keep(); })
        ->setStatusTip(tr("Remembers the plan as it stands, until the window is closed, and compares with it."));
    menu.addSeparator();
    QAction* saved =
        add(menu, tr("With this plan as last &saved"), "compareSaved", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_L),
            comparison_, [this] { comparison_->with_saved(); });
    add(menu, tr("With &another plan…"), "compareFile", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_O), comparison_,
        [this] { comparison_->with_file_asking(); });
    QAction* kept =
        add(menu, tr("With the plan that was ke&pt"), "compareKept", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_B),
            comparison_, [this] { comparison_->with_kept(); });
    menu.addSeparator();
    QAction* close = add(menu, tr("&Close the comparison"), "compareClose",
                         QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_W), comparison_, [this] { comparison_->close(); });
    const auto refresh = [this, saved, kept, close] {
        saved->setEnabled(!document_->path().isEmpty());
        kept->setEnabled(comparison_->has_kept());
        close->setEnabled(comparison_->active());
    };
    connect(document_, &PlanDocument::pathChanged, &menu, refresh);
    connect(comparison_, &ComparisonChoice::changed, &menu, refresh);
    refresh();
}

void Window::build_prices_menu()
{
    QMenu& menu = *menuBar()->addMenu(tr("&Prices"));
    add(menu, tr("Price &lists…"), "pricesLists", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_R), this, [this] {
        manage_prices();
    })->setStatusTip(tr("Which price list is in use; edit, copy, take in, write out, compare and delete lists."));
    menu.addSeparator();
    add(menu, tr("&Use a price list file…"), "pricesUse", {}, prices_, [this] { prices_->choose_asking(); });
    add(menu, tr("Use the &invented prices"), "pricesBuiltIn", {}, prices_, [this] { prices_->use_built_in(); });
}

void Window::build_view_menu()
{
    QMenu& menu = *menuBar()->addMenu(tr("&View"));
    auto* units = new QActionGroup(this);
    QMenu& units_menu = *menu.addMenu(tr("&Units"));
    for (const auto system : {words::UnitSystem::metric, words::UnitSystem::us}) {
        const bool metric = system == words::UnitSystem::metric;
        QAction* action =
            add(units_menu, metric ? tr("&Metric (cm, kg, °C)") : tr("&US (in, lb, °F)"),
                metric ? "unitsMetric" : "unitsUs", {}, this, [this, system] { settings_.set_units(system); });
        action->setCheckable(true);
        action->setChecked(settings_.units() == system);
        connect(&settings_, &Settings::unitsChanged, action, [action, system](words::UnitSystem now) {
            action->setChecked(now == system); // also where the preferences have changed it
        });
        units->addAction(action);
    }
    auto* themes = new QActionGroup(this);
    QMenu& theme_menu = *menu.addMenu(tr("&Appearance"));
    const struct {
        Theme theme;
        QString text;
        const char* name;
    } choices[] = {{Theme::system, tr("As the &desktop"), "themeSystem"},
                   {Theme::light, tr("&Light"), "themeLight"},
                   {Theme::dark, tr("&Dark"), "themeDark"}};
    for (const auto& choice : choices) {
        QAction* action = add(theme_menu, choice.text, choice.name, {}, this,
                              [this, theme = choice.theme] { settings_.set_theme(theme); });
        action->setCheckable(true);
        action->setChecked(settings_.theme() == choice.theme);
        connect(&settings_, &Settings::themeChanged, action,
                [action, theme = choice.theme](Theme now) { action->setChecked(now == theme); });
        themes->addAction(action);
    }
}

void Window::build_help_menu()
{
    QMenu& menu = *menuBar()->addMenu(tr("&Help"));
    add(menu, tr("&Find a command…"), "helpFind", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_F), this,
        [this] { find_command(); });
    add(menu, tr("&Tour of the example"), "helpTour", {}, this, [this] { start_tour(); });
    add(menu, tr("&What the words mean"), "helpTerms", QKeySequence::HelpContents, this,
        [this] { TermsDialog(this).exec(); });
    add(menu, tr("&Cautions"), "helpCautions", {}, this, [this] { show_cautions(this); });
    add(menu, tr("&About Loamstead"), "helpAbout", {}, this, [this] { show_about(this); });
}

void Window::start_first_plan()
{
    if (!files_->may_discard()) {
        return;
    }
    const QDate date = QDate::currentDate();
    FirstSetup setup(catalog_, settings_.units(), std::chrono::year(date.year()) / date.month() / date.day(), this);
    if (setup.exec() == QDialog::Accepted) {
        if (const auto plan = setup.plan()) {
            document_->reset(*plan, QString(), true);
            welcome_->hide();
        }
    }
}

void Window::start_tour()
{
    if (!files_->may_discard()) {
        return;
    }
    show_example();
    welcome_->hide(); // it comes back at the end
    tour_->begin();
}

void Window::find_command()
{
    CommandFinder finder(*menuBar(), this);
    if (finder.exec() == QDialog::Accepted && finder.chosen() != nullptr) {
        finder.chosen()->trigger();
    }
}

void Window::export_drawing()
{
    say_exported(export_drawing_asking(drawing_->picture(), document_->display_name(), this));
}

void Window::show_calendar()
{
    if (!may_hand_out()) {
        return;
    }
    const SheetJob job{document_->plan(), *assessment_,      *catalog_,
                       settings_.units(), settings_.paper(), settings_.printed_by()};
    CalendarDialog dialog(job, this);
    dialog.exec();
    say_exported(dialog.saved_as());
}

void Window::show_preferences()
{
    Preferences preferences(settings_, *prices_, this);
    connect(&preferences, &Preferences::priceListsWanted, this, [this] { manage_prices(); });
    connect(&preferences, &Preferences::startAgainWanted, &preferences, &QDialog::accept);
    connect(&preferences, &Preferences::startAgainWanted, this, [this] { start_again(); });
    preferences.exec();
}

void Window::start_again()
{
    if (close()) {
        starts_again_with_ = document_->path();
    }
}

void Window::manage_prices()
{
    PriceListsDialog(*prices_, data_folder_ + QStringLiteral("/prices"), settings_.units(), this).exec();
}

bool Window::may_hand_out()
{
    if (assessment_ && up_to_date()) {
        return true;
    }
    QMessageBox::information(this, tr("One moment"),
                             tr("The figures are still being worked out. Try again in a moment."));
    return false;
}

void Window::export_shopping()
{
    if (!may_hand_out()) {
        return;
    }
    const words::Speaker speaker(words::Formatter(settings_.units(), QLocale()), document_->plan(), *catalog_);
    say_exported(export_csv_asking(tr("Export the shopping list"), tr("shopping"),
                                   report::shopping_csv(assessment_->shopping, speaker), this));
}

void Window::export_costs()
{
    if (!may_hand_out()) {
        return;
    }
    const words::Speaker speaker(words::Formatter(settings_.units(), QLocale()), document_->plan(), *catalog_);
    say_exported(
        export_csv_asking(tr("Export the costs"), tr("costs"), report::costs_csv(assessment_->costs, speaker), this));
}

void Window::say_exported(const QString& path)
{
    if (!path.isEmpty()) {
        statusBar()->showMessage(tr("Saved as “%1”.").arg(path), 10000);
    }
}

void Window::print_sheets(bool to_pdf)
{
    if (!may_hand_out()) {
        return;
    }
    const SheetJob job{document_->plan(), *assessment_,      *catalog_,
                       settings_.units(), settings_.paper(), settings_.printed_by()};
    if (to_pdf) {
        if (const QString path = save_sheets_as_pdf(job, settings_, this); !path.isEmpty()) {
            statusBar()->showMessage(tr("The sheets were saved as “%1”.").arg(path), 10000);
        }
    } else {
        preview_sheets(job, settings_, this);
    }
}

} // namespace loam::desk
