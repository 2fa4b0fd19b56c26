#include "app/desk/views/growth_view.hpp"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "app/desk/views/growth_chart.hpp"
#include "app/report/record_lines.hpp"

namespace loam::desk {

GrowthView::GrowthView(QWidget* parent)
    : QWidget(parent), chooser_(new QComboBox(this)), text_(new QLabel(this)),
      lengths_(new GrowthChart(GrowthChart::Shows::length, this)),
      masses_(new GrowthChart(GrowthChart::Shows::mass, this))
{
    chooser_->setObjectName(QStringLiteral("growthChooser"));
    chooser_->setAccessibleName(tr("Animal"));
    text_->setObjectName(QStringLiteral("growthText"));
    text_->setWordWrap(true);
    text_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    text_->setAccessibleName(tr("What the measurements tell"));
    auto* column = new QVBoxLayout(this);
    column->addWidget(chooser_, 0, Qt::AlignLeft);
    auto* charts = new QHBoxLayout;
    charts->addWidget(lengths_, 3);
    charts->addWidget(masses_, 2);
    column->addLayout(charts, 1);
    column->addWidget(text_);
    connect(chooser_, &QComboBox::currentIndexChanged, this, &GrowthView::show_chosen);
    clear();
}

void GrowthView::show_records(const assess::EnclosureResult& enclosure, const words::Speaker& speaker)
{
    const QString before = chooser_->currentData().toString();
    records_ = enclosure.records;
    told_.clear();
    formatter_ = speaker.formatter();
    {
        const QSignalBlocker quiet(chooser_);
        chooser_->clear();
        for (const assess::RecordResult& record : records_) {
            chooser_->addItem(
                QStringLiteral("%1 (%2)").arg(speaker.name_of(record.animal), speaker.name_of(record.species)),
                QString::fromStdString(record.animal));
            told_.push_back(report::record_lines(record, speaker).join(QLatin1Char('\n')));
        }
        chooser_->setCurrentIndex(std::max(0, chooser_->findData(before)));
    }
    show_chosen();
}

void GrowthView::clear()
{
    records_.clear();
    told_.clear();
    chooser_->clear();
    show_chosen();
}

void GrowthView::show_chosen()
{
    const int index = chooser_->currentIndex();
    const bool any = index >= 0 && index < static_cast<int>(records_.size());
    chooser_->setVisible(any);
    if (!any) {
        lengths_->hide();
        masses_->hide();
        text_->setText(
            tr("Nothing has been measured over time yet. In the chapter “Animals” enter a day with length and "
               "weight, every month or so: growth is then set against what is published, and a loss of "
               "weight is told before it is a danger."));
        return;
    }
    lengths_->show_record(records_[static_cast<std::size_t>(index)], formatter_);
    masses_->show_record(records_[static_cast<std::size_t>(index)], formatter_);
    text_->setText(told_[static_cast<std::size_t>(index)]);
}

} // namespace loam::desk
