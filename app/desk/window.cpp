#include "app/desk/window.hpp"

#include <QCloseEvent>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QLabel>
#include <QLocale>
#include <QMessageBox>
#include <QMimeData>
#include <QPushButton>
#include <QRegularExpression>
#include <QSplitter>
#include <QStatusBar>
#include <QUrl>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "app/desk/document/have_it.hpp"
#include "app/desk/document/plan_document.hpp"
#include "app/desk/document/trial_runner.hpp"
#include "app/desk/editors/form_panel.hpp"
#include "app/desk/help/tour_bar.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/session/comparison_choice.hpp"
#include "app/desk/session/csv_export.hpp"
#include "app/desk/session/plan_files.hpp"
#include "app/desk/session/price_choice.hpp"
#include "app/desk/session/recovery.hpp"
#include "app/desk/session/settings.hpp"
#include "app/desk/views/drawing_view.hpp"
#include "app/desk/views/results_panel.hpp"
#include "app/desk/views/what_if_view.hpp"
#include "app/desk/welcome_bar.hpp"
#include "app/drawing/placing.hpp"
#include "app/files/plan_file.hpp"
#include "app/words/problems.hpp"
#include "core/plan/file.hpp"

namespace loam::desk {

namespace {

// The first stage has everything but the climate; the last adds only remedies.
bool climate_is_judged(const assess::Assessment& assessment)
{
    return assessment.complete ||
           std::all_of(assessment.enclosures.begin(), assessment.enclosures.end(),
                       [](const assess::EnclosureResult& enclosure) { return !enclosure.heat.empty(); });
}

} // namespace

Window::Window(SharedCatalog catalog, Settings& settings, const QString& data_folder, QWidget* parent)
    : QMainWindow(parent), settings_(settings), data_folder_(data_folder),
      prices_(new PriceChoice(std::move(catalog), settings, this)), catalog_(prices_->initial()),
      document_(new PlanDocument(this)), files_(new PlanFiles(*document_, settings, this)),
      comparison_(new ComparisonChoice(*document_, *files_, catalog_, this)),
      runner_(new AssessmentRunner(catalog_, this)), trials_(new TrialRunner(this)),
      recovery_(std::make_unique<Recovery>(data_folder_ + QStringLiteral("/recovery")))
{
    setObjectName(QStringLiteral("window"));
    setAcceptDrops(true);
    build_panels();
    build_file_menu();
    build_edit_menu();
    build_compare_menu();
    build_prices_menu();
    build_view_menu();
    build_help_menu();
    wire_document();
    wire_panels();
    wire_comparison();
    resize(1280, 800);
    restoreGeometry(settings_.window_geometry());
    across_->restoreState(settings_.window_layout(QStringLiteral("across")));
    down_->restoreState(settings_.window_layout(QStringLiteral("down")));
}

Window::~Window()
{
    // The undo stack tells of its end when it goes, after the members that would listen.
    document_->disconnect(this);
    runner_->disconnect(this);
    comparison_->disconnect(this);
    trials_->disconnect();
}

void Window::build_panels()
{
    const words::UnitSystem units = settings_.units();
    form_ = new FormPanel(catalog_, units, this);
    form_->setObjectName(QStringLiteral("form"));
    drawing_ = new DrawingView(units, this);
    drawing_->setObjectName(QStringLiteral("drawing"));
    results_ = new ResultsPanel(catalog_, units, this);
    results_->setObjectName(QStringLiteral("results"));
    welcome_ = new WelcomeBar(this);
    welcome_->hide();
    tour_ = new TourBar(this);
    message_ = new MessageBar(this);

    down_ = new QSplitter(Qt::Vertical, this);
    down_->addWidget(drawing_);
    down_->addWidget(results_);
    down_->setChildrenCollapsible(false);
    down_->setStretchFactor(0, 1);
    down_->setStretchFactor(1, 1);
    down_->setSizes({400, 380});

    auto* right = new QWidget(this);
    auto* column = new QVBoxLayout(right);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(message_);
    column->addWidget(welcome_);
    column->addWidget(tour_);
    column->addWidget(down_, 1);

    across_ = new QSplitter(Qt::Horizontal, this);
    across_->addWidget(form_);
    across_->addWidget(right);
    across_->setChildrenCollapsible(false);
    across_->setStretchFactor(0, 0);
    across_->setStretchFactor(1, 1);
    across_->setSizes({445, 835});
    setCentralWidget(across_);

    state_label_ = new QLabel(this);
    state_label_->setObjectName(QStringLiteral("stateLabel"));
    statusBar()->addPermanentWidget(state_label_);
}

void Window::wire_document()
{
    connect(document_, &PlanDocument::planChanged, this, &Window::plan_changed);
    connect(document_, &PlanDocument::pathChanged, this, &Window::refresh_title);
    connect(document_, &PlanDocument::modifiedChanged, this, [this](bool modified) {
        setWindowModified(modified);
        recovery_->keep(document_->plan(), document_->path(), modified);
    });
    connect(runner_, &AssessmentRunner::ready, this, &Window::assessment_ready);
    connect(runner_, &AssessmentRunner::looked, drawing_, &DrawingView::show_look);
    connect(prices_, &PriceChoice::changed, this, &Window::catalog_changed);
    connect(files_, &PlanFiles::opened, welcome_, &QWidget::hide);
    connect(files_, &PlanFiles::startedNew, welcome_, &QWidget::hide);
    connect(files_, &PlanFiles::opened, tour_, &QWidget::hide);
    connect(files_, &PlanFiles::startedNew, tour_, &QWidget::hide);
}

void Window::wire_panels()
{
    connect(tour_, &TourBar::stopped, this, [this](int chapter, int tab) {
        form_->show_chapter(chapter);
        results_->show_tab(tab);
    });
    connect(tour_, &TourBar::ended, welcome_, &QWidget::show);
    connect(welcome_, &WelcomeBar::tourWanted, this, &Window::start_tour);
    connect(form_, &FormPanel::edited, this, &Window::take_edit);
    connect(form_, &FormPanel::enclosureChosen, this, [this](const QString& id) {
        drawing_->show_plan(document_->plan(), id);
        results_->show_plan(document_->plan(), id);
    });
    connect(results_, &ResultsPanel::placeChosen, this, [this](const QString& where, const QString& enclosure) {
        form_->reveal(where, enclosure);
        drawing_->highlight(where);
    });
    connect(results_, &ResultsPanel::enclosureChosen, form_, &FormPanel::choose_enclosure);
    connect(drawing_, &DrawingView::elementChosen, this,
            [this](const QString& id) { form_->reveal(id, form_->enclosure()); });
    connect(drawing_, &DrawingView::enclosureEdited, this, &Window::take_enclosure);
    connect(drawing_, &DrawingView::duplicateWanted, this, &Window::duplicate_thing);
    connect(drawing_, &DrawingView::fieldWanted, this, [this](const QString& id) {
        form_->reveal(id, form_->enclosure());
        form_->setFocus(Qt::OtherFocusReason);
    });
    connect(results_, &ResultsPanel::haveIt, this, &Window::take_tick);
    connect(results_, &ResultsPanel::leftOut, this, [this](const assess::ShoppingLine& line) {
        take_edit(tr("Leave it out of the order"), QString(), left_out(document_->plan(), line));
    });
    connect(results_, &ResultsPanel::shoppingExportWanted, this, &Window::export_shopping);
    connect(results_, &ResultsPanel::costsExportWanted, this, &Window::export_costs);
    WhatIfView& what_if = results_->what_if();
    connect(&what_if, &WhatIfView::wanted, this, [this](const std::string& enclosure, const assess::Trial& trial) {
        trials_->request(document_->plan(), catalog_, enclosure, trial);
    });
    connect(trials_, &TrialRunner::tried, &what_if, &WhatIfView::show_answer);
    connect(&what_if, &WhatIfView::taken, this, &Window::take_trial);
    connect(welcome_, &WelcomeBar::startOwn, this, &Window::start_first_plan);
    connect(welcome_, &WelcomeBar::openFile, files_, &PlanFiles::open_asking);
    connect(&settings_, &Settings::unitsChanged, this, [this](words::UnitSystem units) {
        form_->set_units(units);
        drawing_->set_units(units);
        results_->set_units(units);
    });
}

void Window::wire_comparison()
{
    connect(comparison_, &ComparisonChoice::changed, this, &Window::comparison_changed);
    connect(comparison_, &ComparisonChoice::begun, results_, &ResultsPanel::turn_to_comparison);
    connect(results_, &ResultsPanel::comparisonExportWanted, this, [this](const std::string& csv) {
        if (may_hand_out()) {
            say_exported(export_csv_asking(tr("Export the comparison"), tr("comparison"), csv, this));
        }
    });
    connect(results_, &ResultsPanel::comparisonClosed, comparison_, &ComparisonChoice::close);
}

void Window::comparison_changed()
{
    if (comparison_->active()) {
        results_->show_other(comparison_->called(), comparison_->assessment());
    } else {
        results_->hide_other();
    }
}

void Window::take_edit(const QString& text, const QString& field, const plan::Plan& changed)
{
    const json::Problems problems = plan::problems_of(changed);
    if (problems.empty()) {
        message_->hide();
        document_->edit(text, field, changed);
        return;
    }
    message_->say(tr("Not changed."), words::problem(problems.front()));
    form_->show_plan(document_->plan());
}

void Window::take_trial(const std::string& enclosure, const assess::Trial& trial)
{
    if (const auto changed = assess::with_trial(document_->plan(), *catalog_, enclosure, trial)) {
        take_edit(tr("Take what was tried"), QString(), *changed);
    }
}

void Window::take_tick(const assess::ShoppingLine& line, bool have)
{
    const plan::Plan before = document_->plan();
    const QString name = QString::fromStdString(line.item_name);
    take_edit(have ? tr("Have “%1”").arg(name) : tr("Buy “%1”").arg(name), QString(),
              have ? with_it(before, line) : without_it(before, line));
    if (document_->plan() == before) {
        results_->show_order_again(); // the tick says what the plan says
    }
}

void Window::take_enclosure(const QString& text, const QString& field, const plan::Enclosure& changed)
{
    plan::Plan plan = document_->plan();
    for (plan::Enclosure& enclosure : plan.enclosures) {
        if (enclosure.id == changed.id) {
            enclosure = changed;
        }
    }
    take_edit(text, field, plan);
}

void Window::duplicate_thing(const QString& id)
{
    const plan::Plan& plan = document_->plan();
    const QString shown = form_->enclosure();
    const auto enclosure = std::find_if(plan.enclosures.begin(), plan.enclosures.end(),
                                        [&shown](const auto& one) { return QString::fromStdString(one.id) == shown; });
    if (enclosure == plan.enclosures.end()) {
        return;
    }
    const QString stem = id.left(std::max<qsizetype>(1, id.indexOf(QRegularExpression(QStringLiteral("\\d*$")))));
    const QString copy = QString::fromStdString(plan::fresh_id(plan, stem.toStdString()));
    take_enclosure(tr("Duplicate"), {}, drawing::duplicated(*enclosure, id, copy));
    drawing_->highlight(copy);
}

void Window::catalog_changed(const SharedCatalog& catalog)
{
    catalog_ = catalog;
    form_->set_catalog(catalog);
    results_->set_catalog(catalog);
    comparison_->set_catalog(catalog);
    stale_ = true;
    runner_->set_catalog(catalog);
    refresh_status();
}

void Window::plan_changed()
{
    stale_ = true;
    form_->show_plan(document_->plan());
    drawing_->show_plan(document_->plan(), form_->enclosure());
    results_->show_plan(document_->plan(), form_->enclosure());
    if (assessment_) {
        // The last good result stays in view, marked, until the new one is there.
        drawing_->show_assessment(assessment_, true);
        results_->show_assessment(assessment_, true);
    }
    recovery_->keep(document_->plan(), document_->path(), document_->modified());
    runner_->request(document_->plan(), drawing_->shown());
    refresh_title();
    refresh_status();
}

void Window::assessment_ready(const SharedAssessment& assessment)
{
    const bool judged = climate_is_judged(*assessment);
    if (!judged && assessment_ && climate_is_judged(*assessment_) &&
        assessment_->enclosures.size() == assessment->enclosures.size()) {
        return; // the old climate, marked stale, tells more than none for these few milliseconds
    }
    assessment_ = assessment;
    stale_ = !judged;
    form_->show_assessment(assessment);
    drawing_->show_assessment(assessment, stale_);
    results_->show_assessment(assessment, stale_);
    comparison_->assess_for(assessment->date);
    refresh_status();
}

bool Window::up_to_date() const
{
    return !runner_->pending();
}

void Window::refresh_title()
{
    setWindowTitle(document_->display_name() + QStringLiteral("[*] — ") + tr("Loamstead"));
    setWindowModified(document_->modified());
    setWindowFilePath(document_->path());
}

void Window::refresh_status()
{
    if (stale_) {
        state_label_->setText(tr("Working out…"));
    } else {
        state_label_->setText(assessment_->complete ? tr("Up to date") : tr("Looking for remedies…"));
    }
}

void Window::show_example()
{
    document_->reset(files::example_plan(), QString());
    welcome_->show();
}

bool Window::offer_recovery()
{
    for (RecoveredPlan& recovered : recovery_->left_behind()) {
        QMessageBox box(QMessageBox::Question, tr("Unsaved work was found"),
                        tr("Loamstead did not end properly. There is unsaved work on “%1” from %2.")
                            .arg(QString::fromStdString(recovered.plan.title),
                                 QLocale().toString(recovered.when, QLocale::ShortFormat)),
                        QMessageBox::NoButton, this);
        box.setObjectName(QStringLiteral("recoveryQuestion"));
        QPushButton* take = box.addButton(tr("Recover it"), QMessageBox::AcceptRole);
        QPushButton* later = box.addButton(tr("Ask again next time"), QMessageBox::RejectRole);
        QPushButton* drop = box.addButton(tr("Delete it"), QMessageBox::DestructiveRole);
        box.setDefaultButton(take);
        box.setEscapeButton(later);
        box.exec();
        if (box.clickedButton() == drop) {
            recovery_->discard(recovered);
        } else if (box.clickedButton() == take) {
            document_->reset(recovered.plan, recovered.original_path, true);
            recovery_->flush(); // our own copy stands before the old one goes
            recovery_->discard(recovered);
            return true;
        }
    }
    return false;
}

void Window::showEvent(QShowEvent* event)
{
    QMainWindow::showEvent(event);
    if (event->spontaneous() || !settings_.window_layout(QStringLiteral("across")).isEmpty()) {
        return;
    }
    // Opened for the first time: a wide window has room for longer fields too.
    constexpr int least = 445;
    constexpr int most = 560;
    const int form = std::clamp(width() * 27 / 100, least, most);
    across_->setSizes({form, width() - form});
}

void Window::closeEvent(QCloseEvent* event)
{
    if (!files_->may_discard()) {
        event->ignore();
        return;
    }
    settings_.keep_window(saveGeometry());
    settings_.keep_layout(QStringLiteral("across"), across_->saveState());
    settings_.keep_layout(QStringLiteral("down"), down_->saveState());
    recovery_->keep(document_->plan(), document_->path(), false);
    event->accept();
}

void Window::dragEnterEvent(QDragEnterEvent* event)
{
    const QList<QUrl> urls = event->mimeData()->urls();
    if (urls.size() == 1 && urls.front().isLocalFile()) {
        event->acceptProposedAction();
    }
}

void Window::dropEvent(QDropEvent* event)
{
    const QList<QUrl> urls = event->mimeData()->urls();
    if (urls.size() == 1 && urls.front().isLocalFile()) {
        event->acceptProposedAction();
        files_->open(urls.front().toLocalFile());
    }
}

} // namespace loam::desk
