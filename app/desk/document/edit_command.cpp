#include "app/desk/document/edit_command.hpp"

#include <utility>

#include "app/desk/document/plan_document.hpp"

namespace loam::desk {

namespace {
constexpr int edit_command_id = 1;
}

EditCommand::EditCommand(PlanDocument& document, const QString& text, QString field, plan::Plan before,
                         plan::Plan after)
    : QUndoCommand(text), document_(document), field_(std::move(field)), before_(std::move(before)),
      after_(std::move(after))
{
}

void EditCommand::undo()
{
    document_.put(before_);
}

void EditCommand::redo()
{
    document_.put(after_);
}

int EditCommand::id() const
{
    return field_.isEmpty() ? -1 : edit_command_id;
}

bool EditCommand::mergeWith(const QUndoCommand* other)
{
    const auto* next = dynamic_cast<const EditCommand*>(other);
    if (next == nullptr || next->field_ != field_) {
        return false;
    }
    after_ = next->after_;
    // Typed back to where it began: nothing is left to undo.
    setObsolete(after_ == before_);
    return true;
}

} // namespace loam::desk
