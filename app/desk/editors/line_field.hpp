// A line of text that leaves undo and redo to the plan once nothing unfinished stands in it. A plain line keeps these
// keys to itself: the text would go back and the plan would not.
#pragma once

#include <QLineEdit>

namespace loam::desk {

class LineField : public QLineEdit {
    Q_OBJECT

public:
    using QLineEdit::QLineEdit;

protected:
    bool event(QEvent* event) override;
    // True while the text is not in the plan yet.
    virtual bool unfinished() const { return false; }
};

} // namespace loam::desk
