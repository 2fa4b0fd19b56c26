#include "app/desk/editors/page.hpp"

#include <QLabel>
#include <QVBoxLayout>
#include <utility>

#include "core/plan/file.hpp"

namespace loam::desk {

std::string unused_id(const plan::Plan& plan, const std::string& stem)
{
    return plan::fresh_id(plan, stem);
}

Page::Page(FormState& state, const char* name, QWidget* parent) : QScrollArea(parent), state_(state)
{
    setObjectName(QLatin1String(name));
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* content = new QWidget(this);
    auto* outer = new QVBoxLayout(content);
    column_ = new QVBoxLayout;
    outer->addLayout(column_);
    outer->addStretch(1);
    setWidget(content);
}

void Page::heading(const QString& text)
{
    auto* label = new QLabel(text, widget());
    QFont font = label->font();
    font.setBold(true);
    label->setFont(font);
    label->setContentsMargins(0, column_->count() > 0 ? 10 : 0, 0, 2);
    column_->addWidget(label);
}

void Page::note(const QString& text)
{
    auto* label = new QLabel(text, widget());
    label->setWordWrap(true);
    label->setForegroundRole(QPalette::PlaceholderText);
    column_->addWidget(label);
}

FieldSet& Page::fields(std::function<std::string(plan::Plan&)> prefix)
{
    auto* holder = new QWidget(widget());
    auto* form = new QFormLayout(holder);
    form->setContentsMargins(0, 0, 0, 0);
    column_->addWidget(holder);
    auto* set = new FieldSet(form, std::move(prefix), holder);
    connect(set, &FieldSet::edited, this, &Page::edited);
    field_sets_.push_back(set);
    return *set;
}

ElementList& Page::elements(const QString& what, ElementActions actions)
{
    auto* list = new ElementList(what, std::move(actions), widget());
    column_->addWidget(list);
    connect(list, &ElementList::edited, this, &Page::edited);
    connect(list, &ElementList::chosenChanged, this, [this, list] {
        for (ElementList* other : lists_) {
            if (other != list) {
                other->show(state_); // a list of parts of the chosen element
            }
        }
        for (FieldSet* set : field_sets_) {
            set->show(state_);
        }
    });
    lists_.push_back(list);
    return *list;
}

std::string Page::box_pointer(plan::Plan& plan) const
{
    return element_pointer("/enclosures", &plan.enclosures, state_.enclosure);
}

void Page::show_state()
{
    for (ElementList* list : lists_) {
        list->show(state_);
    }
    for (FieldSet* set : field_sets_) {
        set->show(state_);
    }
}

bool Page::reveal(const std::string& where)
{
    for (ElementList* list : lists_) {
        if (list->choose(where)) {
            ensureWidgetVisible(list);
            return true;
        }
    }
    for (FieldSet* set : field_sets_) {
        if (set->reveal(where, state_)) {
            ensureWidgetVisible(focusWidget() != nullptr ? focusWidget() : widget());
            return true;
        }
    }
    return false;
}

} // namespace loam::desk
