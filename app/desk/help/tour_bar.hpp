// A tour of the example: a line above the drawing that explains one part of the window after another.
#pragma once

#include <QFrame>
#include <vector>

class QLabel;
class QPushButton;

namespace loam::desk {

class TourBar : public QFrame {
    Q_OBJECT

public:
    explicit TourBar(QWidget* parent = nullptr);

    void begin(); // from the first stop
    int stops() const;

signals:
    // What the stop is about is to come into view: a chapter of the form and a tab of the results, by number.
    void stopped(int chapter, int tab);
    void ended();

private:
    void go_to(int stop);

    QLabel* text_;
    QPushButton* back_;
    QPushButton* next_;
    int stop_ = 0;
};

} // namespace loam::desk
