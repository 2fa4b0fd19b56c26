// The care calendar in the window: what is done how often from a first day on, and its file for calendar programs.
#pragma once

#include <QDialog>
#include <vector>

#include "app/desk/print/sheet_printing.hpp"
#include "app/words/speaker.hpp"
#include "core/calendar/task.hpp"

class QDateEdit;
class QLabel;
class QTreeWidget;

namespace loam::desk {

class CalendarDialog : public QDialog {
    Q_OBJECT

public:
    // `job` names plan and assessment, which must outlive the dialog.
    explicit CalendarDialog(const SheetJob& job, QWidget* parent = nullptr);

    const QString& saved_as() const { return saved_as_; } // empty: it was not saved

private:
    void fill();
    void tell_chosen();
    void save();

    SheetJob job_;
    words::Speaker speaker_;
    std::vector<calendar::Task> tasks_;
    QDateEdit* start_;
    QTreeWidget* table_;
    QLabel* advice_;
    QString saved_as_;
};

} // namespace loam::desk
