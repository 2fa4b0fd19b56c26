#include "app/desk/views/results_panel.hpp"

#include <QEvent>
#include <QLabel>
#include <QScrollArea>
#include <QSplitter>
#include <QTabWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "app/desk/views/comparison_view.hpp"
#include "app/desk/views/costs_view.hpp"
#include "app/desk/views/courses_view.hpp"
#include "app/desk/views/figures_view.hpp"
#include "app/desk/views/findings_view.hpp"
#include "app/desk/views/growth_view.hpp"
#include "app/desk/views/overview_view.hpp"
#include "app/desk/views/reading_plot.hpp"
#include "app/desk/views/shopping_view.hpp"
#include "app/desk/views/trial_readings.hpp"
#include "app/desk/views/what_if_view.hpp"
#include "app/desk/views/why_pane.hpp"
#include "app/desk/views/year_view.hpp"

namespace loam::desk {

struct ResultsPanel::Parts {
    SharedCatalog catalog;
    words::UnitSystem units;
    plan::Plan plan;
    QString enclosure;
    SharedAssessment assessment;
    QTabWidget* tabs = nullptr;
    FindingsView* findings = nullptr;
    FiguresView* figures = nullptr;
    CoursesView* courses = nullptr;
    WhatIfView* what_if = nullptr;
    YearView* year = nullptr;
    GrowthView* growth = nullptr;
    QScrollArea* reading_tab = nullptr;
    ReadingPlot* readings = nullptr;
    ShoppingView* shopping = nullptr;
    CostsView* costs = nullptr;
    ComparisonView* comparison = nullptr;
    OverviewView* overview = nullptr;
    QString compared_with; // empty: nothing
    SharedAssessment other;
    WhyPane* why = nullptr;
    QLabel* stale = nullptr;

    void refresh_enclosure(const words::Speaker& speaker) const;
    void refresh_trial() const;
    void refresh_comparison(const words::Speaker& speaker) const;
    void refresh();
};

void ResultsPanel::Parts::refresh_enclosure(const words::Speaker& speaker) const
{
    const auto& all = assessment->enclosures;
    const auto found = std::find_if(all.begin(), all.end(), [this](const assess::EnclosureResult& result) {
        return QString::fromStdString(result.id) == enclosure;
    });
    tabs->setTabVisible(tabs->indexOf(growth), found != all.end() && !found->records.empty());
    tabs->setTabVisible(tabs->indexOf(reading_tab), found != all.end() && found->calibration.has_value());
    figures->show_groups(found == all.end() ? std::vector<FigureGroup>{} : figure_groups(*assessment, *found, speaker));
    what_if->show_result(found == all.end() ? nullptr : &*found);
    if (found == all.end()) {
        courses->clear();
        year->clear();
        growth->clear();
    } else {
        year->show_year(*found, speaker);
        growth->show_records(*found, speaker);
        if (found->calibration) {
            readings->show_calibration(*found->calibration, speaker.formatter());
        }
        courses->show_courses(*found, assessment->complete, speaker);
    }
}

void ResultsPanel::Parts::refresh_trial() const
{
    what_if->show_room(enclosure.toStdString(), assess::trial_room(plan, *catalog, enclosure.toStdString()),
                       words::Formatter(units, QLocale()));
}

void ResultsPanel::Parts::refresh_comparison(const words::Speaker& speaker) const
{
    if (!compared_with.isEmpty()) {
        comparison->show_comparison(compared_with, other, assessment, speaker);
    }
}

void ResultsPanel::Parts::refresh()
{
    if (!assessment) {
        return;
    }
    const words::Speaker speaker(words::Formatter(units, QLocale()), plan, *catalog);
    findings->show_findings(*assessment, speaker);
    refresh_enclosure(speaker);
    shopping->show_order(*assessment, plan, speaker);
    costs->show_costs(*assessment, speaker);
    refresh_comparison(speaker);
    overview->show_rows(report::overview_rows(*assessment, speaker), speaker);
    tabs->setTabVisible(tabs->indexOf(overview), assessment->enclosures.size() > 1); // one alone is its own overview
    const auto serious = std::count_if(assessment->findings.begin(), assessment->findings.end(), [](const Finding& f) {
        return f.verdict == Verdict::danger || f.verdict == Verdict::falls_short;
    });
    tabs->setTabText(0, serious > 0 ? QObject::tr("Findings (%1)").arg(serious) : QObject::tr("Findings"));
}

ResultsPanel::ResultsPanel(SharedCatalog catalog, words::UnitSystem units, QWidget* parent)
    : QWidget(parent), parts_(std::make_unique<Parts>())
{
    parts_->catalog = std::move(catalog);
    parts_->units = units;
    parts_->findings = new FindingsView(this);
    parts_->figures = new FiguresView(this);
    parts_->courses = new CoursesView(this);
    parts_->what_if = new WhatIfView(this);
    parts_->year = new YearView(this);
    parts_->growth = new GrowthView(this);
    parts_->readings = new ReadingPlot(this);
    parts_->reading_tab = new QScrollArea(this);
    parts_->reading_tab->setWidget(parts_->readings);
    parts_->reading_tab->setWidgetResizable(true);
    parts_->reading_tab->setFrameShape(QFrame::NoFrame);
    parts_->shopping = new ShoppingView(this);
    parts_->costs = new CostsView(this);
    parts_->comparison = new ComparisonView(this);
    parts_->overview = new OverviewView(this);
    parts_->why = new WhyPane(this);
    parts_->tabs = new QTabWidget(this);
    parts_->tabs->setObjectName(QStringLiteral("resultTabs"));
    parts_->tabs->setDocumentMode(true);
    parts_->tabs->addTab(parts_->findings, tr("Findings"));
    parts_->tabs->addTab(parts_->figures, tr("Figures"));
    parts_->tabs->addTab(parts_->courses, tr("Hour by hour"));
    parts_->tabs->addTab(parts_->what_if, tr("What if"));
    parts_->tabs->addTab(parts_->year, tr("Year"));
    parts_->tabs->addTab(parts_->growth, tr("Growth"));
    parts_->tabs->addTab(parts_->reading_tab, tr("Readings"));
    for (QWidget* later : {static_cast<QWidget*>(parts_->growth), static_cast<QWidget*>(parts_->reading_tab)}) {
        parts_->tabs->setTabVisible(parts_->tabs->indexOf(later), false); // until something was measured
    }
    parts_->tabs->addTab(parts_->shopping, tr("Shopping"));
    parts_->tabs->addTab(parts_->costs, tr("Costs"));
    parts_->tabs->addTab(parts_->comparison, tr("Comparison"));
    parts_->tabs->addTab(parts_->overview, tr("All boxes"));
    parts_->tabs->setTabVisible(parts_->tabs->indexOf(parts_->overview), false);
    parts_->tabs->setTabVisible(parts_->tabs->indexOf(parts_->comparison), false);
    parts_->stale = new QLabel(tr("Working out the new figures; these are the last ones."), this);
    parts_->stale->setObjectName(QStringLiteral("staleNote"));
    parts_->stale->setContentsMargins(8, 2, 8, 2);
    parts_->stale->hide();

    auto* left = new QWidget(this);
    auto* column = new QVBoxLayout(left);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(parts_->tabs, 1);
    column->addWidget(parts_->stale);
    auto* split = new QSplitter(Qt::Horizontal, this);
    split->addWidget(left);
    split->addWidget(parts_->why);
    split->setStretchFactor(0, 3);
    split->setStretchFactor(1, 1);
    split->setSizes({640, 205});
    left->setMinimumWidth(380); // or the tables' own wishes would squeeze the answer beside them
    parts_->why->setMinimumWidth(170);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(split);

    const auto explain = [this](const QVariant& held) {
        if (held.canConvert<Explanation>()) {
            parts_->why->show_explanation(held.value<Explanation>());
        }
    };
    connect(parts_->findings->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this, explain](const QModelIndex& index) {
                if (parts_->tabs->currentWidget() == parts_->findings) { // what is in view has the pane
                    explain(index.data(explanation_role));
                }
            });
    for (QTreeWidget* table :
         {static_cast<QTreeWidget*>(parts_->figures), parts_->shopping->table(), parts_->costs->table(),
          parts_->year->table(), parts_->comparison->table(), static_cast<QTreeWidget*>(parts_->overview)}) {
        connect(table, &QTreeWidget::currentItemChanged, this, [this, table, explain](QTreeWidgetItem* item) {
            const QWidget* tab = parts_->tabs->currentWidget();
            if (item != nullptr && (tab == table || tab->isAncestorOf(table))) { // what is in view has the pane
                explain(item->data(0, explanation_role));
            }
        });
    }
    const auto explain_course = [this] {
        const auto why = parts_->courses->explanation();
        if (why && parts_->tabs->currentWidget() == parts_->courses) {
            parts_->why->show_explanation(*why);
        }
    };
    connect(parts_->courses, &CoursesView::courseChosen, this, explain_course);
    connect(parts_->tabs, &QTabWidget::currentChanged, this, [this, explain, explain_course] {
        // What the pane says belongs to what is in view.
        parts_->why->clear();
        const QWidget* tab = parts_->tabs->currentWidget();
        if (tab == parts_->courses) {
            explain_course();
            return;
        }
        if (tab == parts_->what_if) {
            parts_->why->show_explanation(trial_explanation());
            return;
        }
        if (tab == parts_->growth || tab == parts_->reading_tab) {
            return; // its own text says it all
        }
        const QAbstractItemView* table = tab == parts_->costs        ? parts_->costs->table()
                                         : tab == parts_->shopping   ? parts_->shopping->table()
                                         : tab == parts_->year       ? parts_->year->table()
                                         : tab == parts_->comparison ? parts_->comparison->table()
                                                                     : qobject_cast<const QAbstractItemView*>(tab);
        explain(table->currentIndex().siblingAtColumn(0).data(explanation_role));
    });
    connect(parts_->shopping, &ShoppingView::haveIt, this, &ResultsPanel::haveIt);
    connect(parts_->shopping, &ShoppingView::leftOut, this, &ResultsPanel::leftOut);
    connect(parts_->shopping, &ShoppingView::exportWanted, this, &ResultsPanel::shoppingExportWanted);
    connect(parts_->costs, &CostsView::exportWanted, this, &ResultsPanel::costsExportWanted);
    connect(parts_->comparison, &ComparisonView::exportWanted, this,
            [this] { emit comparisonExportWanted(parts_->comparison->csv()); });
    connect(parts_->comparison, &ComparisonView::closed, this, &ResultsPanel::comparisonClosed);
    connect(parts_->overview, &OverviewView::enclosureChosen, this, &ResultsPanel::enclosureChosen);
    connect(parts_->why, &WhyPane::placeChosen, this, &ResultsPanel::placeChosen);
    connect(parts_->findings, &QListView::doubleClicked, this, [this](const QModelIndex& index) {
        const auto explanation = index.data(explanation_role).value<Explanation>();
        emit placeChosen(explanation.where, explanation.enclosure);
    });
}

ResultsPanel::~ResultsPanel() = default;

void ResultsPanel::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) {
        // Marks, muted texts and charts are made for the paper they stand on. Later: the parts get theirs after us.
        QMetaObject::invokeMethod(
            this, [this] { parts_->refresh(); }, Qt::QueuedConnection);
    }
}

void ResultsPanel::show_plan(const plan::Plan& plan, const QString& enclosure)
{
    const bool moved = enclosure != parts_->enclosure;
    parts_->plan = plan;
    parts_->enclosure = enclosure;
    parts_->refresh_trial();
    if (moved) {
        parts_->refresh();
    }
}

void ResultsPanel::show_assessment(const SharedAssessment& assessment, bool stale)
{
    parts_->stale->setVisible(stale);
    if (assessment == parts_->assessment) {
        return;
    }
    parts_->assessment = assessment;
    parts_->refresh();
}

void ResultsPanel::set_units(words::UnitSystem units)
{
    parts_->units = units;
    parts_->refresh_trial();
    parts_->refresh();
}

void ResultsPanel::set_catalog(SharedCatalog catalog)
{
    parts_->catalog = std::move(catalog);
    parts_->refresh_trial();
    parts_->refresh();
}

void ResultsPanel::show_other(const QString& called, const SharedAssessment& other)
{
    parts_->compared_with = called;
    parts_->other = other;
    parts_->tabs->setTabVisible(parts_->tabs->indexOf(parts_->comparison), true);
    parts_->refresh_comparison(
        words::Speaker(words::Formatter(parts_->units, QLocale()), parts_->plan, *parts_->catalog));
}

void ResultsPanel::show_order_again()
{
    if (parts_->assessment) {
        parts_->shopping->show_order(
            *parts_->assessment, parts_->plan,
            words::Speaker(words::Formatter(parts_->units, QLocale()), parts_->plan, *parts_->catalog));
    }
}

void ResultsPanel::turn_to_comparison()
{
    parts_->tabs->setCurrentWidget(parts_->comparison);
}

void ResultsPanel::hide_other()
{
    parts_->compared_with.clear();
    parts_->other.reset();
    parts_->tabs->setTabVisible(parts_->tabs->indexOf(parts_->comparison), false);
}

WhatIfView& ResultsPanel::what_if()
{
    return *parts_->what_if;
}

void ResultsPanel::show_tab(int tab)
{
    parts_->tabs->setCurrentIndex(tab);
}

} // namespace loam::desk
