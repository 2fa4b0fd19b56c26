#include "app/desk/views/drawing_view.hpp"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desk/views/sheet.hpp"
#include "app/words/verdicts.hpp"

namespace loam::desk {

struct DrawingView::Parts {
    Sheet* sheet = nullptr;
    QComboBox* layers = nullptr;
    QComboBox* cases = nullptr;
    QCheckBox* walls = nullptr;
    QCheckBox* grid = nullptr;
    QLabel* cases_label = nullptr;
    QLabel* title = nullptr;
    SharedAssessment assessment;
    SharedLook look;
    QString enclosure;

    void take_look(const SharedLook& taken);
    void find_result() const;
    void fill_cases() const;
};

void DrawingView::Parts::take_look(const SharedLook& taken)
{
    look = taken;
    sheet->picture.look = look ? &look->heat : nullptr; // kept alive by `look`
}

void DrawingView::Parts::find_result() const
{
    sheet->picture.result = nullptr;
    if (!assessment) {
        return;
    }
    for (const assess::EnclosureResult& result : assessment->enclosures) {
        if (QString::fromStdString(result.id) == enclosure) {
            sheet->picture.result = &result; // kept alive by `assessment`
        }
    }
}

void DrawingView::Parts::fill_cases() const
{
    if (sheet->picture.result == nullptr || sheet->picture.result->heat.empty()) {
        return;
    }
    const QSignalBlocker quiet(cases);
    const QString kept = cases->currentData().toString();
    cases->clear();
    for (const assess::HeatCase& heat : sheet->picture.result->heat) {
        const QString id = QString::fromStdString(heat.id);
        cases->addItem(words::case_name(heat.id), id);
    }
    cases->setCurrentIndex(std::max(0, cases->findData(kept)));
    sheet->picture.case_id = cases->currentData().toString();
}

DrawingView::DrawingView(words::UnitSystem units, QWidget* parent) : QWidget(parent), parts_(std::make_unique<Parts>())
{
    parts_->sheet = new Sheet(this);
    parts_->sheet->setObjectName(QStringLiteral("sheet"));
    parts_->sheet->setAccessibleName(tr("Drawing of the enclosure to scale"));
    parts_->sheet->picture.formatter = words::Formatter(units, QLocale());
    connect(parts_->sheet, &Sheet::chosen, this, [this](const QString& id) {
        highlight(id);
        if (!id.isEmpty()) {
            emit elementChosen(id);
        }
    });
    connect(parts_->sheet, &Sheet::edited, this, &DrawingView::enclosureEdited);
    connect(parts_->sheet, &Sheet::duplicateWanted, this, &DrawingView::duplicateWanted);
    connect(parts_->sheet, &Sheet::fieldWanted, this, &DrawingView::fieldWanted);
    parts_->title = new QLabel(this);
    QFont bold = font();
    bold.setBold(true);
    parts_->title->setFont(bold);
    parts_->layers = new QComboBox(this);
    parts_->layers->setObjectName(QStringLiteral("layerChooser"));
    parts_->layers->setAccessibleName(tr("What the drawing shows over the floor"));
    parts_->layers->addItem(tr("temperature"), static_cast<int>(drawing::Layer::heat));
    parts_->layers->addItem(tr("UV index"), static_cast<int>(drawing::Layer::uv));
    parts_->layers->addItem(tr("humidity"), static_cast<int>(drawing::Layer::moisture));
    auto* layer_label = new QLabel(tr("&Show:"), this);
    layer_label->setBuddy(parts_->layers);
    parts_->cases = new QComboBox(this);
    parts_->cases->setObjectName(QStringLiteral("caseChooser"));
    parts_->cases->setAccessibleName(tr("Case that the drawing shows"));
    parts_->cases->setMinimumContentsLength(14);
    parts_->cases_label = new QLabel(tr("&on a:"), this);
    parts_->cases_label->setBuddy(parts_->cases);
    parts_->walls = new QCheckBox(tr("w&alls"), this);
    parts_->walls->setObjectName(QStringLiteral("wallsBox"));
    parts_->walls->setAccessibleName(tr("Fold out the walls, with the top beside them"));
    parts_->walls->setToolTip(parts_->walls->accessibleName());
    parts_->grid = new QCheckBox(tr("&grid"), this);
    parts_->grid->setObjectName(QStringLiteral("gridBox"));
    parts_->grid->setAccessibleName(tr("Faint lines at round distances"));
    parts_->grid->setToolTip(parts_->grid->accessibleName());
    auto* row = new QHBoxLayout;
    row->setContentsMargins(10, 6, 10, 4);
    row->setSpacing(6);
    row->addWidget(parts_->title, 1);
    row->addWidget(layer_label);
    row->addWidget(parts_->layers);
    row->addWidget(parts_->walls);
    row->addWidget(parts_->grid);
    row->addWidget(parts_->cases_label);
    row->addWidget(parts_->cases);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(row);
    column->addWidget(parts_->sheet, 1);
    connect(parts_->layers, &QComboBox::currentIndexChanged, this, [this] {
        const auto layer = static_cast<drawing::Layer>(parts_->layers->currentData().toInt());
        parts_->sheet->picture.layer = layer;
        parts_->cases->setEnabled(layer != drawing::Layer::uv); // which is alike in every season
        parts_->walls->setEnabled(layer == drawing::Layer::heat);
        parts_->cases_label->setEnabled(layer != drawing::Layer::uv);
        parts_->sheet->redraw();
    });
    connect(parts_->walls, &QCheckBox::toggled, this, [this](bool unfolded) {
        parts_->sheet->picture.unfolded = unfolded;
        parts_->sheet->redraw();
    });
    connect(parts_->grid, &QCheckBox::toggled, this, [this](bool shown) {
        parts_->sheet->picture.grid = shown;
        parts_->sheet->redraw();
    });
    connect(parts_->cases, &QComboBox::currentIndexChanged, this, [this] {
        parts_->sheet->picture.case_id = parts_->cases->currentData().toString();
        parts_->sheet->redraw();
    });
}

DrawingView::~DrawingView() = default;

void DrawingView::show_plan(const plan::Plan& plan, const QString& enclosure)
{
    if (parts_->enclosure != enclosure) {
        parts_->take_look(nullptr);
    }
    parts_->enclosure = enclosure;
    for (const plan::Enclosure& candidate : plan.enclosures) {
        if (QString::fromStdString(candidate.id) == enclosure) {
            parts_->sheet->picture.enclosure = candidate;
            parts_->title->setText(QString::fromStdString(candidate.name));
        }
    }
    parts_->find_result();
    parts_->fill_cases();
    parts_->sheet->redraw();
}

void DrawingView::show_assessment(const SharedAssessment& assessment, bool stale)
{
    parts_->assessment = assessment;
    if (!stale) {
        parts_->take_look(nullptr);
    }
    parts_->sheet->picture.stale = stale;
    parts_->find_result();
    parts_->fill_cases();
    parts_->sheet->redraw();
}

void DrawingView::show_look(const SharedLook& look)
{
    const bool fits = look && QString::fromStdString(look->at.enclosure) == parts_->enclosure;
    if (fits || parts_->look) {
        parts_->take_look(fits ? look : nullptr);
        parts_->sheet->redraw();
    }
}

assess::LookAt DrawingView::shown() const
{
    return {parts_->enclosure.toStdString(), parts_->sheet->picture.case_id.toStdString()};
}

void DrawingView::set_units(words::UnitSystem units)
{
    parts_->sheet->picture.formatter = words::Formatter(units, QLocale());
    parts_->sheet->redraw();
}

const drawing::Picture& DrawingView::picture() const
{
    return parts_->sheet->picture;
}

void DrawingView::highlight(const QString& element)
{
    parts_->sheet->picture.highlighted = element;
    parts_->sheet->redraw();
}

} // namespace loam::desk
