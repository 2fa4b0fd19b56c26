// Which enclosure the form and the drawing show; add, copy and remove enclosures.
#pragma once

#include <QWidget>

#include "app/desk/editors/form_state.hpp"

class QComboBox;
class QToolButton;

namespace loam::desk {

class EnclosureBar : public QWidget {
    Q_OBJECT

public:
    explicit EnclosureBar(FormState& state, QWidget* parent = nullptr);

    void show_state();

signals:
    void chosen(const QString& id);
    void edited(const QString& text, const QString& field, const loam::plan::Plan& changed);

private:
    void add();
    void copy();
    void remove();

    FormState& state_;
    QComboBox* list_;
    QToolButton* copy_;
    QToolButton* remove_;
};

} // namespace loam::desk
