#include "app/desk/batch/batch_dialog.hpp"

#include <QDate>
#include <QDesktopServices>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QMessageBox>
#include <QProgressBar>
#include <QPushButton>
#include <QTreeWidget>
#include <QUrl>
#include <QVBoxLayout>
#include <algorithm>

#include "app/files/plan_file.hpp"

namespace loam::desk {

namespace {

enum Column { row_column, name_column, problem_column, change_column };

QLabel* plain_label(const char* name, QWidget* parent)
{
    auto* label = new QLabel(parent);
    label->setObjectName(QLatin1String(name));
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    return label;
}

} // namespace

BatchDialog::BatchDialog(const plan::Plan& plan, SharedCatalog catalog, BatchSettings settings, QWidget* parent)
    : QDialog(parent), plan_(plan), settings_(std::move(settings)),
      preview_(new AdopterPreview(plan, std::move(catalog), this)), process_(new BatchProcess(this)),
      rows_(new QTreeWidget(this)), summary_(plain_label("batchSummary", this)), progress_(new QProgressBar(this)),
      result_(plain_label("batchResult", this))
{
    setObjectName(QStringLiteral("batchDialog"));
    setWindowTitle(tr("Sheets for a list of adopters"));
    auto* about = plain_label("batchAbout", this);
    about->setText(
        tr("The open plan, “%1”, is the template. Each row of the list changes what it names: room, box, animals, "
           "what is owned, language and units. An empty cell leaves the template as it is.")
            .arg(QString::fromStdString(plan.title)));
    rows_->setObjectName(QStringLiteral("batchRows"));
    rows_->setAccessibleName(tr("Rows of the list"));
    rows_->setRootIsDecorated(false);
    rows_->setHeaderLabels({tr("Row"), tr("Adopter"), tr("What is wrong with it"), tr("What it changes")});
    rows_->setAlternatingRowColors(true);
    rows_->header()->setSectionResizeMode(row_column, QHeaderView::ResizeToContents);
    rows_->header()->setStretchLastSection(true);
    rows_->setColumnWidth(name_column, 170);
    rows_->setColumnWidth(problem_column, 300);
    rows_->setColumnHidden(problem_column, true);
    progress_->setObjectName(QStringLiteral("batchProgress"));
    progress_->setAccessibleName(tr("Progress"));
    progress_->setFormat(tr("%v of %m"));
    progress_->hide();
    auto* form = new QFormLayout;
    list_ = add_path(*form, tr("&List (CSV)"), "batchList", &BatchDialog::ask_for_list);
    lent_ = add_path(*form, tr("What the club l&ends (CSV)"), "batchLent", &BatchDialog::ask_for_lent);
    lent_->setPlaceholderText(tr("nothing"));
    folder_ = add_path(*form, tr("&Folder for the sheets"), "batchFolder", &BatchDialog::ask_for_folder);
    folder_->setPlaceholderText(tr("an empty one, or that of an earlier run"));
    auto* column = new QVBoxLayout(this);
    column->addWidget(about);
    column->addLayout(form);
    column->addWidget(rows_, 1);
    column->addWidget(summary_);
    column->addWidget(progress_);
    column->addWidget(result_);
    column->addWidget(build_buttons());
    connect(list_, &QLineEdit::textChanged, this, [this] {
        shown_.reset();
        rows_->clear();
        summary_->setText(list_->text().isEmpty() ? QString() : tr("Reading the list…"));
        if (!list_->text().isEmpty()) {
            preview_->read(list_->text());
        }
        refresh();
    });
    connect(folder_, &QLineEdit::textChanged, this, &BatchDialog::refresh);
    connect(preview_, &AdopterPreview::ready, this, &BatchDialog::show_preview);
    connect(process_, &BatchProcess::progressed, this, [this](int done, int of) {
        progress_->setMaximum(std::max(of, 1)); // nothing to do is no busy sign
        progress_->setValue(of == 0 ? 1 : done);
    });
    connect(process_, &BatchProcess::ended, this, &BatchDialog::ended);
    resize(820, 600);
    refresh();
}

QLineEdit* BatchDialog::add_path(QFormLayout& form, const QString& label, const char* name, void (BatchDialog::*ask)())
{
    auto* edit = new QLineEdit(this);
    edit->setObjectName(QLatin1String(name));
    auto* button = new QPushButton(tr("Choose…"), this);
    button->setObjectName(QLatin1String(name) + QStringLiteral("Choose"));
    button->setAutoDefault(false);
    const QString heard = QString(label).remove(QLatin1Char('&'));
    edit->setAccessibleName(heard);
    button->setAccessibleName(tr("Choose: %1").arg(heard));
    connect(button, &QPushButton::clicked, this, ask);
    auto* row = new QHBoxLayout;
    row->addWidget(edit, 1);
    row->addWidget(button);
    form.addRow(label, row);
    if (auto* shown = qobject_cast<QLabel*>(form.labelForField(row))) {
        shown->setBuddy(edit);
    }
    return edit;
}

QWidget* BatchDialog::build_buttons()
{
    auto* box = new QDialogButtonBox(QDialogButtonBox::Close, this);
    const auto add = [&](const QString& text, const char* name) {
        QPushButton* button = box->addButton(text, QDialogButtonBox::ActionRole);
        button->setObjectName(QLatin1String(name));
        button->setAutoDefault(false);
        return button;
    };
    start_ = add(tr("&Make the sheets"), "batchStart");
    cancel_ = add(tr("&Stop"), "batchCancel");
    open_ = add(tr("&Open the folder"), "batchOpen");
    connect(start_, &QPushButton::clicked, this, &BatchDialog::start);
    connect(cancel_, &QPushButton::clicked, process_, &BatchProcess::cancel);
    connect(open_, &QPushButton::clicked, this,
            [this] { QDesktopServices::openUrl(QUrl::fromLocalFile(folder_->text())); });
    connect(box, &QDialogButtonBox::rejected, this, &BatchDialog::reject);
    return box;
}

void BatchDialog::ask_for_list()
{
    const QString path = QFileDialog::getOpenFileName(this, tr("List of adopters"), QString(), tr("CSV files (*.csv)"));
    list_->setText(path.isEmpty() ? list_->text() : path);
}

void BatchDialog::ask_for_lent()
{
    const QString path =
        QFileDialog::getOpenFileName(this, tr("What the club lends"), QString(), tr("CSV files (*.csv)"));
    lent_->setText(path.isEmpty() ? lent_->text() : path);
}

void BatchDialog::ask_for_folder()
{
    const QString path = QFileDialog::getExistingDirectory(this, tr("Folder for the sheets"), folder_->text());
    folder_->setText(path.isEmpty() ? folder_->text() : path);
}

void BatchDialog::show_preview(const SharedPreview& preview)
{
    shown_ = preview;
    QList<QTreeWidgetItem*> items;
    for (const Preview::Row& row : preview->rows) {
        auto* item = new QTreeWidgetItem(
            {QString::number(row.number), row.name, row.problems.join(QStringLiteral(" · ")), row.changes});
        item->setTextAlignment(row_column, Qt::AlignRight | Qt::AlignVCenter);
        item->setToolTip(problem_column, row.problems.join(QLatin1Char('\n')));
        item->setToolTip(change_column, row.changes);
        items << item;
    }
    rows_->addTopLevelItems(items);
    rows_->setColumnHidden(problem_column, preview->failing() == 0);
    QStringList text = preview->errors;
    if (text.isEmpty()) {
        const auto failing = static_cast<int>(preview->failing());
        text << (failing == 0 ? tr("%1 rows, all of them good.").arg(preview->rows.size())
                              : tr("%1 rows. %2 of them fail, and the others are made all the same.")
                                    .arg(preview->rows.size())
                                    .arg(failing));
    }
    summary_->setText((text + preview->warnings).join(QLatin1Char('\n')));
    refresh();
}

QString BatchDialog::template_path() const
{
    return own_.filePath(QStringLiteral("template.loamstead.json"));
}

QStringList BatchDialog::words() const
{
    const bool letter = settings_.paper == sheets::Paper::letter;
    const bool us = settings_.units == words::UnitSystem::us;
    QStringList words{template_path(),
                      list_->text(),
                      QStringLiteral("--out"),
                      folder_->text(),
                      QStringLiteral("--progress"),
                      QStringLiteral("--date"),
                      QDate::currentDate().toString(Qt::ISODate),
                      QStringLiteral("--paper"),
                      letter ? QStringLiteral("letter") : QStringLiteral("a4"),
                      QStringLiteral("--units"),
                      us ? QStringLiteral("us") : QStringLiteral("metric"),
                      QStringLiteral("--language"),
                      settings_.language};
    for (const QString& path : settings_.price_lists) {
        words << QStringLiteral("--prices") << path;
    }
    if (!settings_.printed_by.name.isEmpty()) {
        words << QStringLiteral("--club") << settings_.printed_by.name;
    }
    if (!settings_.printed_by.contact.isEmpty()) {
        words << QStringLiteral("--contact") << settings_.printed_by.contact;
    }
    if (!lent_->text().isEmpty()) {
        words << QStringLiteral("--lent") << lent_->text();
    }
    return words;
}

void BatchDialog::start()
{
    if (command_line_program().isEmpty()) {
        result_->setText(
            tr("The program “loamstead-cli”, which does this work, is not beside the window's. Install it."));
        return;
    }
    const QString error = files::write_plan(plan_, template_path());
    if (!error.isEmpty()) {
        result_->setText(error);
        return;
    }
    result_->clear();
    progress_->setRange(0, 0);
    progress_->show();
    process_->start(words());
    refresh();
}

void BatchDialog::ended(int status, const QString& told)
{
    progress_->hide();
    switch (status) {
    case 0:
        result_->setText(tr("All rows have their sheets. The order, the summary and the sheets lie in the folder."));
        break;
    case 3:
        result_->setText(shown_ && shown_->failing() > 0
                             ? tr("All good rows have their sheets. “failed.csv” in the folder tells of the others.")
                             : told);
        break;
    case -1:
        result_->setText(tr("Stopped. What is done is kept; start again to go on from there."));
        break;
    default:
        result_->setText(told);
    }
    refresh();
}

void BatchDialog::refresh()
{
    const bool at_work = process_->at_work();
    const bool readable = shown_ && shown_->errors.isEmpty();
    start_->setEnabled(!at_work && readable && !folder_->text().isEmpty());
    cancel_->setEnabled(at_work);
    open_->setEnabled(QFileInfo(folder_->text()).isDir() && !folder_->text().isEmpty());
    for (QLineEdit* edit : {list_, lent_, folder_}) {
        edit->setReadOnly(at_work);
    }
}

void BatchDialog::reject()
{
    if (process_->at_work()) {
        const auto answer =
            QMessageBox::question(this, tr("Sheets are being made"),
                                  tr("Stop making them? What is done is kept; a later run goes on from there."),
                                  QMessageBox::Yes | QMessageBox::No, QMessageBox::No);
        if (answer != QMessageBox::Yes) {
            return;
        }
        process_->cancel();
    }
    QDialog::reject();
}

} // namespace loam::desk
