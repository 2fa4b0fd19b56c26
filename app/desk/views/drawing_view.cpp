#include "app/desk/views/drawing_view.hpp"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QMouseEvent>
#include <QPainter>
#include <QPixmap>
#include <QVBoxLayout>
#include <algorithm>
#include <functional>
#include <optional>

#include "app/desk/look/theme.hpp"
#include "app/drawing/enclosure_drawing.hpp"
#include "app/drawing/probe.hpp"
#include "app/words/verdicts.hpp"

namespace loam::desk {

namespace {

// The sheet itself: paints the picture, tells what was clicked, and reads the temperatures under the pointer.
class Sheet : public QWidget {
public:
    explicit Sheet(QWidget* parent) : QWidget(parent)
    {
        setMinimumSize(320, 260);
        setFocusPolicy(Qt::ClickFocus);
        setMouseTracking(true);
    }

    drawing::Picture picture;
    std::function<void(const QString&)> chosen;

    // After a change of `picture`.
    void redraw()
    {
        drawn_ = QPixmap();
        update();
    }

protected:
    void paintEvent(QPaintEvent*) override
    {
        // The drawing is kept: the pointer moves far more often than it changes.
        const QSize pixels = size() * devicePixelRatio();
        if (drawn_.size() != pixels) {
            draw(pixels);
        }
        QPainter painter(this);
        painter.drawPixmap(rect(), drawn_);
        if (pointer_) {
            drawing::paint_probe(painter, *pointer_, rect(), picture);
        }
    }

    void changeEvent(QEvent* event) override
    {
        QWidget::changeEvent(event);
        redraw(); // palette or font, perhaps
    }

    void mousePressEvent(QMouseEvent* event) override
    {
        chosen(drawing::element_at(event->position(), rect(), picture));
    }

    void mouseMoveEvent(QMouseEvent* event) override
    {
        pointer_ = event->position();
        update();
    }

    void leaveEvent(QEvent*) override
    {
        pointer_.reset();
        update();
    }

private:
    void draw(const QSize& pixels)
    {
        drawn_ = QPixmap(pixels);
        drawn_.setDevicePixelRatio(devicePixelRatio());
        picture.font = font();
        picture.inks = is_dark(palette()) ? drawing::Inks::dark() : drawing::Inks::light();
        QPainter painter(&drawn_);
        drawing::paint(painter, rect(), picture);
    }

    QPixmap drawn_;
    std::optional<QPointF> pointer_;
};

} // namespace

struct DrawingView::Parts {
    Sheet* sheet = nullptr;
    QComboBox* cases = nullptr;
    QLabel* title = nullptr;
    SharedAssessment assessment;
    QString enclosure;

    void find_result() const;
    void fill_cases() const;
};

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
    parts_->sheet->chosen = [this](const QString& id) {
        highlight(id);
        if (!id.isEmpty()) {
            emit elementChosen(id);
        }
    };
    parts_->title = new QLabel(this);
    QFont bold = font();
    bold.setBold(true);
    parts_->title->setFont(bold);
    parts_->cases = new QComboBox(this);
    parts_->cases->setObjectName(QStringLiteral("caseChooser"));
    parts_->cases->setAccessibleName(tr("Case that the drawing shows"));
    parts_->cases->setMinimumContentsLength(14);
    auto* label = new QLabel(tr("&Show:"), this);
    label->setBuddy(parts_->cases);
    auto* row = new QHBoxLayout;
    row->setContentsMargins(10, 6, 10, 4);
    row->addWidget(parts_->title, 1);
    row->addWidget(label);
    row->addWidget(parts_->cases);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(row);
    column->addWidget(parts_->sheet, 1);
    connect(parts_->cases, &QComboBox::currentIndexChanged, this, [this] {
        parts_->sheet->picture.case_id = parts_->cases->currentData().toString();
        parts_->sheet->redraw();
    });
}

DrawingView::~DrawingView() = default;

void DrawingView::show_plan(const plan::Plan& plan, const QString& enclosure)
{
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
    parts_->sheet->picture.stale = stale;
    parts_->find_result();
    parts_->fill_cases();
    parts_->sheet->redraw();
}

void DrawingView::set_units(words::UnitSystem units)
{
    parts_->sheet->picture.formatter = words::Formatter(units, QLocale());
    parts_->sheet->redraw();
}

void DrawingView::highlight(const QString& element)
{
    parts_->sheet->picture.highlighted = element;
    parts_->sheet->redraw();
}

} // namespace loam::desk
