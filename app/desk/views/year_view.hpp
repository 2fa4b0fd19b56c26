// The year of the enclosure in view: the strip, and the same months as a table.
#pragma once

#include <QWidget>
#include <memory>

#include "app/words/speaker.hpp"
#include "core/assess/assessment.hpp"

class QTreeWidget;

namespace loam::desk {

class YearView : public QWidget {
    Q_OBJECT

public:
    explicit YearView(QWidget* parent = nullptr);
    ~YearView() override;

    void show_year(const assess::EnclosureResult& enclosure, const words::Speaker& speaker);
    void clear();
    QTreeWidget* table() const;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    struct Parts;
    std::unique_ptr<Parts> parts_;
};

} // namespace loam::desk
