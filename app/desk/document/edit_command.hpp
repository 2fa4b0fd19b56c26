// One undoable step: the whole value (a plan, a price list) before and after. Both are small; a whole value can't be
// undone half.
#pragma once

#include <QString>
#include <QUndoCommand>
#include <functional>
#include <utility>

namespace loam::desk {

template <class Value> class EditCommand : public QUndoCommand {
public:
    using Put = std::function<void(const Value&)>;

    EditCommand(Put put, const QString& text, QString field, Value before, Value after)
        : QUndoCommand(text), put_(std::move(put)), field_(std::move(field)), before_(std::move(before)),
          after_(std::move(after))
    {
    }

    void undo() override { put_(before_); }
    void redo() override { put_(after_); }
    int id() const override { return field_.isEmpty() ? -1 : 1; }

    // Edits of one field in a row are one step.
    bool mergeWith(const QUndoCommand* other) override
    {
        const auto* next = dynamic_cast<const EditCommand*>(other);
        if (next == nullptr || next->field_ != field_) {
            return false;
        }
        after_ = next->after_;
        setObsolete(after_ == before_); // typed back to where it began: nothing is left to undo
        return true;
    }

private:
    Put put_;
    QString field_;
    Value before_;
    Value after_;
};

} // namespace loam::desk
