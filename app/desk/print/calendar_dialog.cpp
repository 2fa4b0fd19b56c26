#include "app/desk/print/calendar_dialog.hpp"

#include <QDateEdit>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QScrollArea>
#include <QStandardPaths>
#include <QTreeWidget>
#include <QVBoxLayout>

#include "app/desk/look/table_manners.hpp"
#include "app/files/bytes.hpp"
#include "app/report/calendar_ics.hpp"
#include "app/words/capitals.hpp"
#include "app/words/tasks.hpp"
#include "core/calendar/care_tasks.hpp"

namespace loam::desk {

namespace {

QLabel* plain_text(const QString& text, QWidget* parent)
{
    auto* label = new QLabel(text, parent);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    return label;
}

std::chrono::sys_days day_of(const QDate& date)
{
    return std::chrono::sys_days(std::chrono::year(date.year()) / date.month() / date.day());
}

} // namespace

CalendarDialog::CalendarDialog(const SheetJob& job, QWidget* parent)
    : QDialog(parent), job_(job), speaker_(words::Formatter(job.units, QLocale()), job.plan, job.catalog),
      start_(new QDateEdit(QDate::currentDate(), this)), table_(new QTreeWidget(this)), advice_(plain_text({}, this))
{
    setObjectName(QStringLiteral("calendarDialog"));
    setWindowTitle(tr("Care calendar"));
    resize(820, 600);
    start_->setObjectName(QStringLiteral("calendarStart"));
    start_->setAccessibleName(tr("First day of care"));
    start_->setDateRange(QDate(1970, 1, 1), QDate(2199, 12, 31));
    start_->setDisplayFormat(QStringLiteral("d MMM yyyy")); // as dates are shown everywhere
    start_->setCalendarPopup(true);
    auto* start_label = new QLabel(tr("&First day of care:"), this);
    start_label->setBuddy(start_);
    auto* top = new QHBoxLayout;
    top->addWidget(start_label);
    top->addWidget(start_);
    top->addStretch();

    table_->setObjectName(QStringLiteral("calendarTasks"));
    table_->setAccessibleName(tr("What is done, how often, and first on which day"));
    table_->setRootIsDecorated(false);
    table_->setHeaderLabels({tr("What"), tr("How often"), tr("First on")});
    set_table_manners(*table_);
    advice_->setObjectName(QStringLiteral("calendarAdvice"));
    advice_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    advice_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    advice_->setMargin(6);
    auto* advice_area = new QScrollArea(this);
    advice_area->setObjectName(QStringLiteral("calendarAdviceArea"));
    advice_area->setAccessibleName(tr("What to do, and why"));
    advice_area->setWidgetResizable(true);
    advice_area->setWidget(advice_);
    advice_area->setFrameShape(QFrame::NoFrame);

    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    QPushButton* save = buttons->addButton(tr("&Save for a calendar program…"), QDialogButtonBox::ActionRole);
    save->setObjectName(QStringLiteral("calendarSave"));
    auto* column = new QVBoxLayout(this);
    column->addLayout(top);
    column->addWidget(table_, 3);
    column->addWidget(advice_area, 1);
    column->addWidget(
        plain_text(tr("The file is read by calendar programs (iCalendar). Reading it in again replaces what "
                      "it said before, as long as the plan's title stays the same. Give it a calendar of "
                      "its own."),
                   this));
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(save, &QPushButton::clicked, this, &CalendarDialog::save);
    connect(start_, &QDateEdit::dateChanged, this, &CalendarDialog::fill);
    connect(table_, &QTreeWidget::currentItemChanged, this, &CalendarDialog::tell_chosen);
    fill();
}

void CalendarDialog::fill()
{
    const int row = table_->indexOfTopLevelItem(table_->currentItem());
    tasks_ = calendar::care_tasks(job_.plan, job_.assessment, job_.catalog, day_of(start_->date()));
    const bool several = job_.plan.enclosures.size() > 1;
    {
        const QSignalBlocker quiet(table_); // while it is filled nothing is chosen
        table_->clear();
        for (const calendar::Task& task : tasks_) {
            table_->addTopLevelItem(new QTreeWidgetItem(
                {several ? words::task_title_placed(task, speaker_) : words::task_title(task, speaker_),
                 words::task_when(task, speaker_.formatter()),
                 speaker_.formatter().date(std::chrono::year_month_day(task.first))}));
        }
    }
    table_->setCurrentItem(table_->topLevelItem(std::max(0, row)));
    tell_chosen();
}

void CalendarDialog::tell_chosen()
{
    const int row = table_->indexOfTopLevelItem(table_->currentItem());
    if (row < 0 || row >= static_cast<int>(tasks_.size())) {
        advice_->clear();
        return;
    }
    const calendar::Task& task = tasks_[static_cast<std::size_t>(row)];
    QStringList lines{words::task_advice(task, speaker_)};
    if (task.wash_hands) {
        lines << words::hands_advice();
    }
    lines << words::task_basis(task, speaker_.formatter());
    advice_->setText(lines.join(QLatin1Char('\n')));
}

void CalendarDialog::save()
{
    QFileDialog dialog(this, tr("Save the calendar"),
                       QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation),
                       tr("Calendars (*.ics);;All files (*)"));
    dialog.setObjectName(QStringLiteral("calendarFileDialog"));
    dialog.setAcceptMode(QFileDialog::AcceptSave);  // asks before a file is replaced
    dialog.setDefaultSuffix(QStringLiteral("ics")); // before it asks, so that it asks about the right one
    dialog.selectFile(tr("care") + QStringLiteral(".ics"));
    if (dialog.exec() != QDialog::Accepted || dialog.selectedFiles().isEmpty()) {
        return;
    }
    const QString path = dialog.selectedFiles().front();
    const report::CalendarOf of{job_.plan.title, job_.assessment.date};
    const QString error = files::write_bytes(report::calendar_ics(tasks_, of, speaker_), path);
    if (!error.isEmpty()) {
        QMessageBox::warning(this, tr("The calendar was not saved"), error);
        return;
    }
    saved_as_ = path;
    accept();
}

} // namespace loam::desk
