#include "app/desk/session/plan_files.hpp"

#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QPushButton>
#include <QStandardPaths>
#include <utility>

#include "app/desk/document/plan_document.hpp"
#include "app/desk/session/settings.hpp"
#include "app/files/plan_file.hpp"

namespace loam::desk {

namespace {

const auto file_suffix = QStringLiteral(".loamstead.json");

QString file_filter()
{
    return QObject::tr("Loamstead plans (*.loamstead.json);;All files (*)");
}

} // namespace

plan::Plan blank_plan()
{
    plan::Plan plan;
    plan.title = QObject::tr("New plan").toStdString();
    plan::Enclosure enclosure;
    enclosure.id = "e1";
    enclosure.name = QObject::tr("Enclosure 1").toStdString();
    plan.enclosures.push_back(std::move(enclosure));
    return plan;
}

PlanFiles::PlanFiles(PlanDocument& document, Settings& settings, QWidget* dialog_parent)
    : QObject(dialog_parent), document_(document), settings_(settings), dialog_parent_(dialog_parent)
{
}

bool PlanFiles::may_discard()
{
    if (!document_.modified()) {
        return true;
    }
    QMessageBox box(QMessageBox::Question, tr("Unsaved changes"),
                    tr("“%1” has changes that are not saved.").arg(document_.display_name()), QMessageBox::NoButton,
                    dialog_parent_);
    box.setObjectName(QStringLiteral("unsavedQuestion"));
    box.setInformativeText(tr("Save them first?"));
    QPushButton* save_button = box.addButton(tr("Save"), QMessageBox::AcceptRole);
    QPushButton* discard_button = box.addButton(tr("Discard changes"), QMessageBox::DestructiveRole);
    QPushButton* cancel_button = box.addButton(tr("Cancel"), QMessageBox::RejectRole);
    box.setDefaultButton(save_button);
    box.setEscapeButton(cancel_button);
    box.exec();
    if (box.clickedButton() == save_button) {
        return save();
    }
    return box.clickedButton() == discard_button;
}

QString PlanFiles::ask_for_plan(const QString& title)
{
    const QString start = document_.path().isEmpty()
                              ? QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)
                              : QFileInfo(document_.path()).absolutePath();
    return QFileDialog::getOpenFileName(dialog_parent_, title, start, file_filter());
}

bool PlanFiles::open_asking()
{
    const QString path = ask_for_plan(tr("Open plan"));
    return !path.isEmpty() && open(path);
}

std::optional<files::PlanFile> PlanFiles::read_or_tell(const QString& path)
{
    files::PlanFile read = files::read_plan(path);
    if (!read.errors.isEmpty()) {
        show_problems(path, read.errors);
        return std::nullopt;
    }
    return read;
}

std::optional<plan::Plan> PlanFiles::read(const QString& path)
{
    std::optional<files::PlanFile> read = read_or_tell(path);
    return read ? std::optional(std::move(read->plan)) : std::nullopt;
}

bool PlanFiles::open(const QString& path)
{
    if (!may_discard()) {
        return false;
    }
    std::optional<files::PlanFile> read = read_or_tell(path);
    if (!read) {
        return false;
    }
    // A migrated file is shown as changed: saving it would write the new version.
    document_.reset(std::move(read->plan), QFileInfo(path).absoluteFilePath(), read->migrated);
    settings_.add_recent_file(path);
    emit opened(path);
    return true;
}

bool PlanFiles::save()
{
    return document_.path().isEmpty() ? save_as() : write_to(document_.path());
}

bool PlanFiles::save_as()
{
    const QString start = document_.path().isEmpty()
                              ? QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation) + QLatin1Char('/') +
                                    tr("plan") + file_suffix
                              : document_.path();
    QString path = QFileDialog::getSaveFileName(dialog_parent_, tr("Save plan as"), start, file_filter());
    if (path.isEmpty()) {
        return false;
    }
    if (QFileInfo(path).suffix().isEmpty()) {
        path += file_suffix;
    }
    return write_to(path);
}

bool PlanFiles::write_to(const QString& path)
{
    const QString error = files::write_plan(document_.plan(), path);
    if (!error.isEmpty()) {
        QMessageBox box(QMessageBox::Warning, tr("The plan was not saved"), error, QMessageBox::Ok, dialog_parent_);
        box.setInformativeText(tr("Your work is still here. Save it under another name or in another folder."));
        box.exec();
        return false;
    }
    document_.mark_saved(QFileInfo(path).absoluteFilePath());
    settings_.add_recent_file(path);
    emit saved(path);
    return true;
}

bool PlanFiles::start_new()
{
    if (!may_discard()) {
        return false;
    }
    document_.reset(blank_plan(), QString());
    emit startedNew();
    return true;
}

void PlanFiles::show_problems(const QString& path, const QStringList& lines)
{
    constexpr int shown_lines = 6;
    QMessageBox box(QMessageBox::Warning, tr("This plan can't be opened"),
                    tr("“%1” can't be opened. Nothing was changed.").arg(QFileInfo(path).fileName()), QMessageBox::Ok,
                    dialog_parent_);
    box.setObjectName(QStringLiteral("fileProblems"));
    QStringList shown = lines.mid(0, shown_lines);
    if (lines.size() > shown_lines) {
        shown << tr("… and %n more, listed under details.", nullptr, static_cast<int>(lines.size()) - shown_lines);
        box.setDetailedText(lines.join(QLatin1Char('\n')));
    }
    box.setInformativeText(shown.join(QStringLiteral("\n\n")));
    box.setTextInteractionFlags(Qt::TextSelectableByMouse);
    box.exec();
}

} // namespace loam::desk
