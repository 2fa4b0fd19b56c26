// One undoable step: the whole plan before and after. Plans are small; a whole value can't be undone half.
#pragma once

#include <QUndoCommand>

#include "core/plan/plan.hpp"

namespace loam::desk {

class PlanDocument;

class EditCommand : public QUndoCommand {
public:
    EditCommand(PlanDocument& document, const QString& text, QString field, plan::Plan before, plan::Plan after);

    void undo() override;
    void redo() override;
    int id() const override;
    bool mergeWith(const QUndoCommand* other) override;

private:
    PlanDocument& document_;
    QString field_;
    plan::Plan before_;
    plan::Plan after_;
};

} // namespace loam::desk
