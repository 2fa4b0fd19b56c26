// How the animals of the enclosure in view have grown, and whether one loses weight.
#pragma once

#include <QWidget>

#include "app/words/speaker.hpp"
#include "core/assess/assessment.hpp"

class QComboBox;
class QLabel;

namespace loam::desk {

class GrowthChart;

class GrowthView : public QWidget {
    Q_OBJECT

public:
    explicit GrowthView(QWidget* parent = nullptr);

    void show_records(const assess::EnclosureResult& enclosure, const words::Speaker& speaker);
    void clear();

private:
    void show_chosen();

    std::vector<assess::RecordResult> records_;
    std::vector<QString> told_; // below the charts, one text for each record
    words::Formatter formatter_;
    QComboBox* chooser_;
    QLabel* text_;
    GrowthChart* lengths_;
    GrowthChart* masses_;
};

} // namespace loam::desk
