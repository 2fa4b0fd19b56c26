#include "app/desk/help/tour_bar.hpp"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

#include <algorithm>
#include <array>

#include "app/desk/hide_button.hpp"

namespace loam::desk {

namespace {

struct Stop {
    int chapter;
    int tab;
    const char* text;
};

// Chapters and tabs by their numbers in the window: a test goes along and compares.
constexpr std::array<Stop, 8> stops_in_order{{
    {0, 0,
     QT_TRANSLATE_NOOP("tour", "On the left you say what there is: animals, box, bed, lamps, room, prices. What you "
                               "don't know stays empty; it is then taken as a range, and said.")},
    {3, 0,
     QT_TRANSLATE_NOOP("tour", "The drawing is to scale. Drag a lamp, a bowl or a hide, or choose it and use the arrow "
                               "keys. Every change can be undone.")},
    {4, 0,
     QT_TRANSLATE_NOOP("tour", "Above the drawing choose what lies over the floor: warmth, humidity or UV. Point at a "
                               "place to read it.")},
    {4, 0,
     QT_TRANSLATE_NOOP("tour", "Findings say what is the matter, most serious first. Choose one: the field is opened, "
                               "its place marked, and beside it stands why, with source and range.")},
    {7, 2,
     QT_TRANSLATE_NOOP("tour", "Hour by hour shows a winter and a summer day, and the drills: power cut, burnt lamp, "
                               "heat wave.")},
    {5, 3,
     QT_TRANSLATE_NOOP("tour", "What if: move a cover or mist more often, and see at once what it would do, before the "
                               "plan is changed.")},
    {8, 7,
     QT_TRANSLATE_NOOP("tour", "Shopping counts whole packs, less what you have; tick what is on the shelf already.")},
    {8, 8,
     QT_TRANSLATE_NOOP("tour", "Costs stand by sum, month and year. The prices are invented: use a list of your own "
                               "from the menu Prices. Sheets for the shop are under File.")},
}};

} // namespace

TourBar::TourBar(QWidget* parent)
    : QFrame(parent), text_(new QLabel(this)), back_(new QPushButton(tr("&Back"), this)),
      next_(new QPushButton(tr("&Next"), this))
{
    setObjectName(QStringLiteral("tourBar"));
    setFrameShape(QFrame::StyledPanel);
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::AlternateBase);
    text_->setObjectName(QStringLiteral("tourText"));
    text_->setWordWrap(true);
    back_->setObjectName(QStringLiteral("tourBack"));
    next_->setObjectName(QStringLiteral("tourNext"));
    auto* close = new HideButton(this);
    close->setObjectName(QStringLiteral("tourClose"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(10, 6, 6, 6);
    row->addWidget(text_, 1);
    row->addWidget(back_);
    row->addWidget(next_);
    row->addWidget(close);
    connect(back_, &QPushButton::clicked, this, [this] { go_to(stop_ - 1); });
    connect(next_, &QPushButton::clicked, this, [this] { go_to(stop_ + 1); });
    hide();
}

int TourBar::stops() const
{
    return static_cast<int>(stops_in_order.size());
}

void TourBar::begin()
{
    show();
    go_to(0);
    next_->setFocus();
}

void TourBar::go_to(int stop)
{
    if (stop >= stops()) {
        hide();
        emit ended();
        return;
    }
    stop_ = std::max(0, stop);
    const Stop& here = stops_in_order[static_cast<std::size_t>(stop_)];
    text_->setText(tr("<b>%1 of %2.</b> %3")
                       .arg(QString::number(stop_ + 1), QString::number(stops()),
                            QCoreApplication::translate("tour", here.text).toHtmlEscaped()));
    back_->setEnabled(stop_ > 0);
    next_->setText(stop_ + 1 == stops() ? tr("&Done") : tr("&Next"));
    emit stopped(here.chapter, here.tab);
}

} // namespace loam::desk
