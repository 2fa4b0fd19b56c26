// The open plan with its undo stack and its path. The only place where the plan changes.
#pragma once

#include <QObject>
#include <QString>
#include <QUndoStack>

#include "core/plan/plan.hpp"

namespace loam::desk {

class PlanDocument : public QObject {
    Q_OBJECT

public:
    explicit PlanDocument(QObject* parent = nullptr);

    const plan::Plan& plan() const { return plan_; }
    const QString& path() const { return path_; } // empty: never saved
    QString display_name() const;
    QUndoStack& undo_stack() { return undo_stack_; }
    bool modified() const { return !undo_stack_.isClean(); }

    // Replaces the whole plan without a way back (open, new, recover). `modified` marks it unsaved at once.
    void reset(plan::Plan plan, QString path, bool modified = false);
    // One step of the user. `text` names it in the Edit menu; successive edits of one non-empty `field` become one
    // step; a plan that equals the present one is dropped.
    void edit(const QString& text, const QString& field, plan::Plan changed);
    void mark_saved(const QString& path);

signals:
    void planChanged();
    void pathChanged();
    void modifiedChanged(bool modified);

private:
    void put(const plan::Plan& plan);

    plan::Plan plan_;
    QString path_;
    QUndoStack undo_stack_;
};

} // namespace loam::desk
