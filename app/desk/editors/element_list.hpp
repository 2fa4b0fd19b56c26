// A short list of plan elements with add, copy and remove; the fields below it show the chosen one.
#pragma once

#include <QWidget>
#include <functional>
#include <string>
#include <vector>

#include "app/desk/editors/form_state.hpp"

class QListWidget;
class QToolButton;

namespace loam::desk {

struct ElementRow {
    std::string id;
    QString text;
};

struct ElementActions {
    std::function<std::vector<ElementRow>(FormState&)> rows;
    std::function<std::string(plan::Plan&)> add; // returns the new id
    std::function<void(plan::Plan&, const std::string&)> remove;
    std::function<std::string(plan::Plan&, const std::string&)> copy; // returns the new id
};

class ElementList : public QWidget {
    Q_OBJECT

public:
    // `what` names one element for the Edit menu and the tool tips: "animal", "lamp or heater".
    ElementList(const QString& what, ElementActions actions, QWidget* parent = nullptr);

    void show(FormState& state);
    const std::string& chosen() const { return chosen_; } // empty: none
    bool choose(const std::string& id);                   // false where it is not in the list

signals:
    void chosenChanged();
    void edited(const QString& text, const QString& field, const loam::plan::Plan& changed);

private:
    void refresh_buttons();

    QString what_;
    ElementActions actions_;
    QListWidget* list_;
    QToolButton* add_;
    QToolButton* copy_;
    QToolButton* remove_;
    FormState* state_ = nullptr;
    std::string chosen_;
};

} // namespace loam::desk
