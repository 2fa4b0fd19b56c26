#include "app/desk/editors/form_panel.hpp"

#include <QHBoxLayout>
#include <QListWidget>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <utility>
#include <vector>

#include "app/desk/editors/animals_page.hpp"
#include "app/desk/editors/bed_page.hpp"
#include "app/desk/editors/box_page.hpp"
#include "app/desk/editors/budget_page.hpp"
#include "app/desk/editors/enclosure_bar.hpp"
#include "app/desk/editors/equipment_page.hpp"
#include "app/desk/editors/fittings_page.hpp"
#include "app/desk/editors/readings_page.hpp"
#include "app/desk/editors/site_page.hpp"
#include "app/desk/editors/water_page.hpp"

namespace loam::desk {

struct FormPanel::Parts {
    FormState state;
    EnclosureBar* bar = nullptr;
    QListWidget* chapters = nullptr;
    QStackedWidget* stack = nullptr;
    std::vector<Page*> pages;

    void show_all() const;
};

void FormPanel::Parts::show_all() const
{
    bar->show_state();
    // Pages out of sight are filled when they are turned to: an edit costs one page, not nine.
    pages.at(static_cast<std::size_t>(std::max(0, stack->currentIndex())))->show_state();
}

FormPanel::FormPanel(SharedCatalog catalog, words::UnitSystem units, QWidget* parent)
    : QWidget(parent), parts_(std::make_unique<Parts>())
{
    Parts& parts = *parts_;
    parts.state.catalog = std::move(catalog);
    parts.state.formatter = words::Formatter(units, QLocale());
    parts.bar = new EnclosureBar(parts.state, this);
    parts.chapters = new QListWidget(this);
    parts.chapters->setObjectName(QStringLiteral("chapters"));
    parts.chapters->setAccessibleName(tr("Chapters of the plan"));
    parts.chapters->setFrameShape(QFrame::NoFrame);
    parts.chapters->setSpacing(3);
    parts.stack = new QStackedWidget(this);

    const auto add = [this, &parts](const QString& name, Page* page) {
        parts.chapters->addItem(name);
        parts.stack->addWidget(page);
        parts.pages.push_back(page);
        connect(page, &Page::edited, this, &FormPanel::edited);
    };
    add(tr("Animals"), new AnimalsPage(parts.state, this));
    add(tr("Box"), new BoxPage(parts.state, this));
    add(tr("Bed"), new BedPage(parts.state, this));
    add(tr("Furniture"), new FittingsPage(parts.state, this));
    add(tr("Equipment"), new EquipmentPage(parts.state, this));
    add(tr("Water and light"), new WaterPage(parts.state, this));
    add(tr("Readings"), new ReadingsPage(parts.state, this));
    add(tr("Site and room"), new SitePage(parts.state, this));
    add(tr("Budget"), new BudgetPage(parts.state, this));
    parts.chapters->setFixedWidth(parts.chapters->sizeHintForColumn(0) + 14);
    parts.chapters->setCurrentRow(0);

    auto* columns = new QHBoxLayout;
    columns->setSpacing(6);
    columns->addWidget(parts.chapters);
    columns->addWidget(parts.stack, 1);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(8, 8, 4, 4);
    whole->addWidget(parts.bar);
    whole->addLayout(columns, 1);
    setMinimumWidth(400);

    connect(parts.bar, &EnclosureBar::edited, this, &FormPanel::edited);
    connect(parts.bar, &EnclosureBar::chosen, this, &FormPanel::choose_enclosure);
    connect(parts.chapters, &QListWidget::currentRowChanged, this, [this](int row) {
        parts_->stack->setCurrentIndex(row);
        parts_->show_all();
    });
}

FormPanel::~FormPanel() = default;

void FormPanel::show_plan(const plan::Plan& plan)
{
    FormState& state = parts_->state;
    state.plan = plan;
    if (enclosure_in(state.plan, state.enclosure) == nullptr) {
        state.enclosure = plan.enclosures.empty() ? std::string() : plan.enclosures.front().id;
    }
    parts_->show_all();
}

void FormPanel::show_assessment(const SharedAssessment& assessment)
{
    parts_->state.assessment = assessment;
    parts_->show_all();
}

void FormPanel::set_units(words::UnitSystem units)
{
    parts_->state.formatter = words::Formatter(units, QLocale());
    parts_->show_all();
}

void FormPanel::set_catalog(SharedCatalog catalog)
{
    parts_->state.catalog = std::move(catalog);
    parts_->show_all();
}

QString FormPanel::enclosure() const
{
    return QString::fromStdString(parts_->state.enclosure);
}

void FormPanel::choose_enclosure(const QString& id)
{
    if (enclosure_in(parts_->state.plan, id.toStdString()) == nullptr || id == enclosure()) {
        return;
    }
    parts_->state.enclosure = id.toStdString();
    parts_->show_all();
    emit enclosureChosen(id);
}

bool FormPanel::reveal(const QString& where, const QString& enclosure)
{
    choose_enclosure(enclosure);
    for (std::size_t i = 0; i < parts_->pages.size(); ++i) {
        parts_->pages[i]->show_state();
        if (parts_->pages[i]->reveal(where.toStdString())) {
            parts_->chapters->setCurrentRow(static_cast<int>(i));
            parts_->pages[i]->reveal(where.toStdString()); // again, now that it can take the focus
            return true;
        }
    }
    return false;
}

void FormPanel::show_chapter(int chapter)
{
    parts_->chapters->setCurrentRow(chapter);
}

} // namespace loam::desk
