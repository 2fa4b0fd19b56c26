// One order over all enclosures, by where things stand and what they are: whole packs, price each, total, what is left
// over and why it is needed. What one has already is ticked off here.
#pragma once

#include <QWidget>

#include "app/words/speaker.hpp"
#include "core/assess/assessment.hpp"

class QAction;
class QTreeWidget;
class QTreeWidgetItem;

namespace loam::desk {

class TableBar;

class ShoppingView : public QWidget {
    Q_OBJECT

public:
    explicit ShoppingView(QWidget* parent = nullptr);

    void show_order(const assess::Assessment& assessment, const plan::Plan& plan, const words::Speaker& speaker);
    QTreeWidget* table() const { return table_; }

signals:
    void haveIt(const loam::assess::ShoppingLine& line, bool have); // ticked by the user
    void leftOut(const loam::assess::ShoppingLine& line);           // not to be bought at all
    void exportWanted();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void fill(const assess::Assessment& assessment, const plan::Plan& plan, const words::Speaker& speaker);
    QTreeWidgetItem* item_like(const assess::ShoppingLine& line) const;
    void ticked(const QTreeWidgetItem& item);
    const assess::ShoppingLine* line_of(const QTreeWidgetItem* item) const; // nullptr: a heading

    QTreeWidget* table_;
    TableBar* bar_;
    QAction* leave_out_;
    std::vector<assess::ShoppingLine> lines_; // as shown
};

} // namespace loam::desk
