#include "app/desk/document/plan_document.hpp"

#include <QFileInfo>
#include <utility>

#include "app/desk/document/edit_command.hpp"

namespace loam::desk {

PlanDocument::PlanDocument(QObject* parent) : QObject(parent)
{
    connect(&undo_stack_, &QUndoStack::cleanChanged, this, [this](bool clean) { emit modifiedChanged(!clean); });
}

QString PlanDocument::display_name() const
{
    if (!path_.isEmpty()) {
        return QFileInfo(path_).fileName();
    }
    return plan_.title.empty() ? tr("Unnamed plan") : QString::fromStdString(plan_.title);
}

void PlanDocument::reset(plan::Plan plan, QString path, bool modified)
{
    plan_ = std::move(plan);
    path_ = std::move(path);
    undo_stack_.clear();
    if (modified) {
        undo_stack_.resetClean();
    }
    emit pathChanged();
    emit planChanged();
    emit modifiedChanged(this->modified());
}

void PlanDocument::edit(const QString& text, const QString& field, plan::Plan changed)
{
    if (changed == plan_) {
        return;
    }
    undo_stack_.push(new EditCommand<plan::Plan>([this](const plan::Plan& plan) { put(plan); }, text, field, plan_,
                                                 std::move(changed)));
}

void PlanDocument::mark_saved(const QString& path)
{
    path_ = path;
    undo_stack_.setClean();
    emit pathChanged();
}

void PlanDocument::put(const plan::Plan& plan)
{
    plan_ = plan;
    emit planChanged();
}

} // namespace loam::desk
