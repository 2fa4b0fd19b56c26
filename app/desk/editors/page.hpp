// One chapter of the form: headed groups of fields and lists in a column that scrolls.
#pragma once

#include <QScrollArea>
#include <functional>
#include <string>
#include <vector>

#include "app/desk/editors/element_list.hpp"
#include "app/desk/editors/field_set.hpp"

class QVBoxLayout;

namespace loam::desk {

class Page : public QScrollArea {
    Q_OBJECT

public:
    // `state` is owned by the form panel and outlives the page.
    Page(FormState& state, const char* name, QWidget* parent);

    void show_state();
    // By JSON Pointer or by the id of an element in one of the lists.
    bool reveal(const std::string& where);

signals:
    void edited(const QString& text, const QString& field, const loam::plan::Plan& changed);

protected:
    FormState& state() { return state_; }
    void heading(const QString& text);
    void note(const QString& text);
    FieldSet& fields(std::function<std::string(plan::Plan&)> prefix);
    ElementList& elements(const QString& what, ElementActions actions);

    // The enclosure in view; nullptr where there is none.
    plan::Enclosure* box(plan::Plan& plan) { return enclosure_in(plan, state_.enclosure); }
    // JSON Pointer of the enclosure in view; empty where there is none.
    std::string box_pointer(plan::Plan& plan) const;

    // What an element list does for a plain list of structures with an id. `list` finds it, `fresh` fills in a new
    // element, `text` names one in a line.
    template <class T> ElementActions actions_for(std::function<std::vector<T>*(plan::Plan&)> list,
                                                  const std::string& stem, std::function<T(plan::Plan&)> fresh,
                                                  std::function<QString(const T&, FormState&)> text);
    // JSON Pointer of the element `id` in the list that lies at `pointer`.
    template <class T>
    static std::string element_pointer(const std::string& pointer, const std::vector<T>* list, const std::string& id)
    {
        for (std::size_t i = 0; list != nullptr && i < list->size(); ++i) {
            if ((*list)[i].id == id) {
                return pointer + '/' + std::to_string(i);
            }
        }
        return {};
    }

private:
    FormState& state_;
    QVBoxLayout* column_;
    std::vector<FieldSet*> field_sets_;
    std::vector<ElementList*> lists_;
};

// An id that the plan does not use yet (declared here so that pages need no more of the plan's file).
std::string unused_id(const plan::Plan& plan, const std::string& stem);

template <class T> ElementActions Page::actions_for(std::function<std::vector<T>*(plan::Plan&)> list,
                                                    const std::string& stem, std::function<T(plan::Plan&)> fresh,
                                                    std::function<QString(const T&, FormState&)> text)
{
    ElementActions actions;
    actions.rows = [list, text](FormState& state) {
        std::vector<ElementRow> rows;
        if (const std::vector<T>* elements = list(state.plan)) {
            for (const T& element : *elements) {
                rows.push_back({element.id, text(element, state)});
            }
        }
        return rows;
    };
    actions.add = [list, stem, fresh](plan::Plan& plan) {
        std::vector<T>* elements = list(plan);
        if (elements == nullptr) {
            return std::string();
        }
        T made = fresh(plan);
        made.id = unused_id(plan, stem);
        elements->push_back(made);
        return made.id;
    };
    actions.remove = [list](plan::Plan& plan, const std::string& id) {
        if (std::vector<T>* elements = list(plan)) {
            std::erase_if(*elements, [&id](const T& element) { return element.id == id; });
        }
    };
    actions.copy = [list, stem](plan::Plan& plan, const std::string& id) {
        std::vector<T>* elements = list(plan);
        const T* original = elements != nullptr ? element_in(*elements, id) : nullptr;
        if (original == nullptr) {
            return std::string();
        }
        T copy = *original;
        copy.id = unused_id(plan, stem);
        if constexpr (requires { copy.measurements; }) {
            copy.measurements.clear(); // they are another animal's
        }
        elements->push_back(copy);
        return copy.id;
    };
    return actions;
}

} // namespace loam::desk
