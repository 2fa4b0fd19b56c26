// Answers "why?" for the row that was chosen: verdict, remedy, rule, numbers, source.
#pragma once

#include <QWidget>

#include "app/desk/views/explanation.hpp"

class QPushButton;
class QTextBrowser;

namespace loam::desk {

class WhyPane : public QWidget {
    Q_OBJECT

public:
    explicit WhyPane(QWidget* parent = nullptr);

    void show_explanation(const Explanation& explanation);
    void clear();

signals:
    void placeChosen(const QString& where, const QString& enclosure);

private:
    QTextBrowser* text_;
    QPushButton* go_;
    Explanation explanation_;
};

} // namespace loam::desk
