// Labelled fields bound to places in the plan. A binding is one function that finds the place in any plan, so that
// the same few lines serve showing and editing.
#pragma once

#include <QFormLayout>
#include <QObject>
#include <functional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "app/desk/editors/form_state.hpp"
#include "app/desk/editors/quantity_field.hpp"

class QComboBox;
class QLabel;

namespace loam::desk {

// Where a figure lies; monostate where the element is not there.
using NumberSlot =
    std::variant<std::monostate, double*, std::optional<double>*, std::int64_t*, std::optional<std::int64_t>*>;
using TextSlot = std::variant<std::monostate, std::string*, std::optional<std::string>*>;

struct Option {
    QString value; // what the plan holds; empty: not stated
    QString text;
};

// Whole dates are chosen and not typed: today and so many days before it, the newest first. A field adds the date that
// the plan has where it is an older one.
std::vector<Option> days_back(const FormState& state, int days);

struct ChoiceBinding {
    std::function<QString(plan::Plan&)> get;
    std::function<void(plan::Plan&, const QString&)> set;
    std::function<std::vector<Option>(const FormState&)> options;
};

// A choice among texts that the plan holds as they are (ids of materials, species, strips).
ChoiceBinding text_choice(const std::function<std::string*(plan::Plan&)>& place,
                          std::function<std::vector<Option>(const FormState&)> options);
// The same where the plan may leave it open; `open` is the word for that, "not stated" where it is empty.
ChoiceBinding optional_text_choice(const std::function<std::optional<std::string>*(plan::Plan&)>& place,
                                   std::function<std::vector<Option>(const FormState&)> options,
                                   const QString& open = {});

// The place of one member of an element that `find` finds; for example slot_of<plan::Stand>(find,
// &Stand::rated_load_kg).
template <class T, class Member>
std::function<NumberSlot(plan::Plan&)> slot_of(std::function<T*(plan::Plan&)> find, Member T::*member)
{
    return [find = std::move(find), member](plan::Plan& plan) {
        T* element = find(plan);
        return element != nullptr ? NumberSlot(&(element->*member)) : NumberSlot();
    };
}

// The member itself, or nullptr where the element is not there.
template <class T, class Member>
std::function<Member*(plan::Plan&)> member_of(std::function<T*(plan::Plan&)> find, Member T::*member)
{
    return [find = std::move(find), member](plan::Plan& plan) {
        T* element = find(plan);
        return element != nullptr ? &(element->*member) : nullptr;
    };
}

// A choice among all values of an enumeration, in their order.
template <class E> ChoiceBinding enum_choice(std::function<E*(plan::Plan&)> place, std::vector<QString> names)
{
    ChoiceBinding binding;
    binding.get = [place](plan::Plan& plan) {
        const E* slot = place(plan);
        return slot != nullptr ? QString::number(static_cast<int>(*slot)) : QString();
    };
    binding.set = [place](plan::Plan& plan, const QString& value) {
        if (E* slot = place(plan)) {
            *slot = static_cast<E>(value.toInt());
        }
    };
    binding.options = [names = std::move(names)](const FormState&) {
        std::vector<Option> options;
        for (std::size_t i = 0; i < names.size(); ++i) {
            options.push_back({QString::number(i), names[i]});
        }
        return options;
    };
    return binding;
}

class FieldSet : public QObject {
    Q_OBJECT

public:
    // `prefix` gives the JSON Pointer under which the fields lie, "/" for the plan itself, or an empty text where there
    // is no element.
    FieldSet(QFormLayout* layout, std::function<std::string(plan::Plan&)> prefix, QWidget* parent);

    void quantity(const QString& label, const char* key, words::Quantity quantity, Limits limits,
                  std::function<NumberSlot(plan::Plan&)> place);
    void text(const QString& label, const char* key, std::function<TextSlot(plan::Plan&)> place, int max_length = 200);
    void choice(const QString& label, const char* key, const ChoiceBinding& binding);
    // A choice among the values of an enumeration whose names stand in the order of the values; `open` is the word for
    // a plan that leaves it open, "not stated" where it is empty.
    template <class E> void enumeration(const QString& label, const char* key, std::vector<QString> names,
                                        std::function<std::optional<E>*(plan::Plan&)> place, QString open = {});
    // Yes, no or not stated.
    void flag(const QString& label, const char* key, const std::function<std::optional<bool>*(plan::Plan&)>& place);
    // An amount of money per something, kept exactly as it is written.
    void price(const QString& label, const char* key, std::function<std::optional<Decimal>*(plan::Plan&)> place);
    // Shows a row only while `when` holds.
    void only_when(std::function<bool(plan::Plan&)> when);

    void show(FormState& state);
    bool reveal(const std::string& pointer, FormState& state);

signals:
    void edited(const QString& text, const QString& field, const loam::plan::Plan& changed);

private:
    struct Row {
        QString label;
        std::string key;
        QWidget* field = nullptr;
        std::function<void(FormState&)> show;
        std::function<bool(plan::Plan&)> when;
    };
    Row& add_row(const QString& label, const char* key, QWidget* field);
    std::string pointer_of(const Row& row, plan::Plan& plan) const;
    void change(const Row& row, const std::function<void(plan::Plan&)>& change);
    QString assumed_text(const std::string& pointer, words::Quantity quantity) const;

    QFormLayout* layout_;
    std::function<std::string(plan::Plan&)> prefix_;
    std::vector<std::unique_ptr<Row>> rows_;
    FormState* state_ = nullptr;
    bool showing_ = false;
};

template <class E> void FieldSet::enumeration(const QString& label, const char* key, std::vector<QString> names,
                                              std::function<std::optional<E>*(plan::Plan&)> place, QString open)
{
    ChoiceBinding binding;
    binding.get = [place](plan::Plan& plan) {
        const std::optional<E>* slot = place(plan);
        return slot != nullptr && *slot ? QString::number(static_cast<int>(**slot)) : QString();
    };
    binding.set = [place](plan::Plan& plan, const QString& value) {
        if (std::optional<E>* slot = place(plan)) {
            *slot = value.isEmpty() ? std::nullopt : std::optional<E>(static_cast<E>(value.toInt()));
        }
    };
    open = open.isEmpty() ? QObject::tr("not stated") : open;
    binding.options = [names = std::move(names), open = std::move(open)](const FormState&) {
        std::vector<Option> options{{QString(), open}};
        for (std::size_t i = 0; i < names.size(); ++i) {
            options.push_back({QString::number(i), names[i]});
        }
        return options;
    };
    choice(label, key, binding);
}

} // namespace loam::desk
