#include "app/desk/editors/field_set.hpp"

#include <QComboBox>
#include <QDate>
#include <QLabel>
#include <QVBoxLayout>
#include <QWheelEvent>
#include <cmath>

namespace loam::desk {

namespace {

std::optional<double> read_number(const NumberSlot& slot)
{
    if (const auto* plain = std::get_if<double*>(&slot)) {
        return **plain;
    }
    if (const auto* optional = std::get_if<std::optional<double>*>(&slot)) {
        return **optional;
    }
    if (const auto* whole = std::get_if<std::int64_t*>(&slot)) {
        return static_cast<double>(**whole);
    }
    if (const auto* optional = std::get_if<std::optional<std::int64_t>*>(&slot)) {
        return **optional ? std::optional<double>(static_cast<double>(***optional)) : std::nullopt;
    }
    return std::nullopt;
}

void write_number(const NumberSlot& slot, std::optional<double> value)
{
    if (const auto* plain = std::get_if<double*>(&slot)) {
        **plain = value.value_or(**plain);
    } else if (const auto* optional = std::get_if<std::optional<double>*>(&slot)) {
        **optional = value;
    } else if (const auto* whole = std::get_if<std::int64_t*>(&slot)) {
        **whole = value ? std::llround(*value) : **whole;
    } else if (const auto* optional_whole = std::get_if<std::optional<std::int64_t>*>(&slot)) {
        **optional_whole = value ? std::optional<std::int64_t>(std::llround(*value)) : std::nullopt;
    }
}

bool may_be_empty(const NumberSlot& slot)
{
    return std::holds_alternative<std::optional<double>*>(slot) ||
           std::holds_alternative<std::optional<std::int64_t>*>(slot);
}

std::string read_text(const TextSlot& slot)
{
    if (const auto* plain = std::get_if<std::string*>(&slot)) {
        return **plain;
    }
    const auto* optional = std::get_if<std::optional<std::string>*>(&slot);
    return optional != nullptr && **optional ? ***optional : std::string();
}

void write_text(const TextSlot& slot, const std::string& value)
{
    if (const auto* plain = std::get_if<std::string*>(&slot)) {
        **plain = value;
    } else if (const auto* optional = std::get_if<std::optional<std::string>*>(&slot)) {
        **optional = value.empty() ? std::nullopt : std::optional<std::string>(value);
    }
}

// Scrolling the form must not change a choice that the pointer happens to cross.
class CalmComboBox : public QComboBox {
public:
    explicit CalmComboBox(QWidget* parent) : QComboBox(parent)
    {
        setFocusPolicy(Qt::StrongFocus);
        setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        setMinimumContentsLength(8);
        setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    }

protected:
    void wheelEvent(QWheelEvent* event) override { event->ignore(); }
};

// The space before the field is part of the label: the layout forgets its own when it asks whether a row is too long.
void keep_apart(QWidget& label)
{
    constexpr int apart = 10;
    label.setContentsMargins(label.isRightToLeft() ? apart : 0, 0, label.isRightToLeft() ? 0 : apart, 0);
}

// Room enough for what is chosen, where the form has it: its label then goes above it.
void make_room(CalmComboBox& field)
{
    constexpr int least_letters = 8;
    constexpr int most_letters = 24;
    field.setMinimumContentsLength(std::clamp(static_cast<int>(0.85 * static_cast<double>(field.currentText().size())),
                                              least_letters, most_letters));
    field.setMinimumWidth(field.sizeHint().width()); // Qt's own least width stays that of the first choice shown
    field.setToolTip(field.currentText());
}

} // namespace

ChoiceBinding text_choice(const std::function<std::string*(plan::Plan&)>& place,
                          std::function<std::vector<Option>(const FormState&)> options)
{
    ChoiceBinding binding;
    binding.get = [place](plan::Plan& plan) {
        const std::string* slot = place(plan);
        return slot != nullptr ? QString::fromStdString(*slot) : QString();
    };
    binding.set = [place](plan::Plan& plan, const QString& value) {
        if (std::string* slot = place(plan)) {
            *slot = value.toStdString();
        }
    };
    binding.options = std::move(options);
    return binding;
}

ChoiceBinding optional_text_choice(const std::function<std::optional<std::string>*(plan::Plan&)>& place,
                                   std::function<std::vector<Option>(const FormState&)> options, const QString& open)
{
    const QString none = open.isEmpty() ? QObject::tr("not stated") : open;
    ChoiceBinding binding;
    binding.get = [place](plan::Plan& plan) {
        const std::optional<std::string>* slot = place(plan);
        return slot != nullptr ? QString::fromStdString(slot->value_or(std::string())) : QString();
    };
    binding.set = [place](plan::Plan& plan, const QString& value) {
        if (std::optional<std::string>* slot = place(plan)) {
            *slot = value.isEmpty() ? std::nullopt : std::optional<std::string>(value.toStdString());
        }
    };
    binding.options = [options = std::move(options), none](const FormState& state) {
        std::vector<Option> all{{QString(), none}};
        const std::vector<Option> named = options(state);
        all.insert(all.end(), named.begin(), named.end());
        return all;
    };
    return binding;
}

std::vector<Option> days_back(const FormState& state, int days)
{
    const QDate today = QDate::currentDate();
    std::vector<Option> options;
    for (int back = 0; back <= days; ++back) {
        const QString date = today.addDays(-back).toString(Qt::ISODate);
        options.push_back({date, state.formatter.iso_date(date.toStdString())});
    }
    return options;
}

FieldSet::FieldSet(QFormLayout* layout, std::function<std::string(plan::Plan&)> prefix, QWidget* parent)
    : QObject(parent), layout_(layout), prefix_(std::move(prefix))
{
    layout_->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    layout_->setRowWrapPolicy(QFormLayout::WrapLongRows);
    layout_->setLabelAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    layout_->setHorizontalSpacing(0); // see keep_apart
}

FieldSet::Row& FieldSet::add_row(const QString& label, const char* key, QWidget* field)
{
    auto row = std::make_unique<Row>();
    row->label = label;
    row->key = key;
    row->field = field;
    layout_->addRow(label, field);
    keep_apart(*layout_->labelForField(field));
    field->setAccessibleName(label);
    rows_.push_back(std::move(row));
    return *rows_.back();
}

std::string FieldSet::pointer_of(const Row& row, plan::Plan& plan) const
{
    const std::string prefix = prefix_(plan);
    return prefix == "/" ? prefix + row.key : prefix + '/' + row.key;
}

void FieldSet::change(const Row& row, const std::function<void(plan::Plan&)>& change)
{
    if (showing_ || state_ == nullptr) {
        return;
    }
    plan::Plan changed = state_->plan;
    const std::string field = pointer_of(row, changed);
    change(changed);
    emit edited(tr("Change “%1”").arg(row.label), QString::fromStdString(field), changed);
}

void FieldSet::quantity(const QString& label, const char* key, words::Quantity quantity, Limits limits,
                        std::function<NumberSlot(plan::Plan&)> place)
{
    auto* holder = new QWidget(layout_->parentWidget());
    auto* column = new QVBoxLayout(holder);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(1);
    // Whether the field may be empty is a property of the place; where no element is chosen yet, assume it may.
    auto* field = new QuantityField(quantity, limits, true, holder);
    auto* problem = new QLabel(holder);
    problem->setWordWrap(true);
    problem->hide();
    column->addWidget(field);
    column->addWidget(problem);
    holder->setFocusProxy(field);
    Row& row = add_row(label, key, holder);
    field->setObjectName(QString::fromLatin1(key));
    field->setAccessibleName(label);
    connect(field, &QuantityField::problemChanged, problem, [problem](const QString& text) {
        problem->setText(QStringLiteral("▲ ") + text);
        problem->setVisible(!text.isEmpty());
    });
    connect(field, &QuantityField::committed, this, [this, &row, place, field](std::optional<double> value) {
        if (state_ != nullptr && !value && !may_be_empty(place(state_->plan))) {
            field->show_value(read_number(place(state_->plan)), state_->formatter);
            return;
        }
        change(row, [&](plan::Plan& plan) { write_number(place(plan), value); });
    });
    row.show = [this, &row, place, field, quantity](FormState& state) {
        field->show_value(read_number(place(state.plan)), state.formatter);
        field->show_assumed(assumed_text(pointer_of(row, state.plan), quantity));
    };
}

void FieldSet::text(const QString& label, const char* key, std::function<TextSlot(plan::Plan&)> place, int max_length)
{
    auto* field = new LineField(layout_->parentWidget());
    field->setMaxLength(max_length);
    field->setObjectName(QString::fromLatin1(key));
    Row& row = add_row(label, key, field);
    connect(field, &QLineEdit::textEdited, this, [this, &row, place](const QString& typed) {
        change(row, [&](plan::Plan& plan) { write_text(place(plan), typed.toStdString()); });
    });
    row.show = [place, field](FormState& state) {
        const QString shown = QString::fromStdString(read_text(place(state.plan)));
        if (shown != field->text()) {
            field->setText(shown);
            field->setCursorPosition(0); // a long title shows its beginning
        }
    };
}

void FieldSet::choice(const QString& label, const char* key, const ChoiceBinding& binding)
{
    auto* field = new CalmComboBox(layout_->parentWidget());
    field->setObjectName(QString::fromLatin1(key));
    Row& row = add_row(label, key, field);
    connect(field, &QComboBox::activated, this, [this, &row, field, set = binding.set] {
        change(row, [&](plan::Plan& plan) { set(plan, field->currentData().toString()); });
    });
    row.show = [field, binding](FormState& state) {
        const QSignalBlocker quiet(field);
        const QString value = binding.get(state.plan);
        field->clear();
        for (const Option& option : binding.options(state)) {
            field->addItem(option.text, option.value);
        }
        if (field->findData(value) < 0) {
            field->addItem(value, value); // unknown here, kept as it is
        }
        field->setCurrentIndex(field->findData(value));
        make_room(*field);
    };
}

void FieldSet::flag(const QString& label, const char* key,
                    const std::function<std::optional<bool>*(plan::Plan&)>& place)
{
    ChoiceBinding binding;
    binding.get = [place](plan::Plan& plan) {
        const std::optional<bool>* slot = place(plan);
        return slot != nullptr && *slot ? (**slot ? QStringLiteral("yes") : QStringLiteral("no")) : QString();
    };
    binding.set = [place](plan::Plan& plan, const QString& value) {
        if (std::optional<bool>* slot = place(plan)) {
            *slot = value.isEmpty() ? std::nullopt : std::optional<bool>(value == QStringLiteral("yes"));
        }
    };
    binding.options = [](const FormState&) {
        return std::vector<Option>{
            {QString(), tr("not stated")}, {QStringLiteral("yes"), tr("yes")}, {QStringLiteral("no"), tr("no")}};
    };
    choice(label, key, binding);
}

void FieldSet::price(const QString& label, const char* key, std::function<std::optional<Decimal>*(plan::Plan&)> place)
{
    auto* field = new QLineEdit(layout_->parentWidget());
    field->setObjectName(QString::fromLatin1(key));
    field->setAlignment(Qt::AlignRight);
    Row& row = add_row(label, key, field);
    connect(field, &QLineEdit::editingFinished, this, [this, &row, place, field] {
        // An empty line means that the price is not known.
        const QString typed = field->text().trimmed();
        const std::optional<Decimal> read = state_->formatter.parse_price(typed);
        if (typed.isEmpty() || read) {
            change(row, [&](plan::Plan& plan) {
                if (std::optional<Decimal>* slot = place(plan)) {
                    *slot = read;
                }
            });
        } else {
            field->setToolTip(tr("“%1” is not an amount of money.").arg(field->text()));
            field->selectAll();
        }
    });
    row.show = [place, field](FormState& state) {
        const std::optional<Decimal>* slot = place(state.plan);
        field->setText(slot != nullptr && *slot ? state.formatter.price(**slot) : QString());
        field->setPlaceholderText(tr("not known"));
        field->setToolTip(QString::fromStdString(state.plan.currency));
    };
}

void FieldSet::only_when(std::function<bool(plan::Plan&)> when)
{
    rows_.back()->when = std::move(when);
}

void FieldSet::show(FormState& state)
{
    state_ = &state;
    showing_ = true;
    for (const auto& row : rows_) {
        const bool there = !prefix_(state.plan).empty() && (!row->when || row->when(state.plan));
        row->field->setVisible(there);
        layout_->labelForField(row->field)->setVisible(there);
        if (there) {
            row->show(state);
        }
    }
    showing_ = false;
}

bool FieldSet::reveal(const std::string& pointer, FormState& state)
{
    const std::string prefix = prefix_(state.plan);
    for (const auto& row : rows_) {
        if (!prefix.empty() && pointer == pointer_of(*row, state.plan)) {
            row->field->setFocus(Qt::OtherFocusReason);
            return true;
        }
    }
    return false;
}

QString FieldSet::assumed_text(const std::string& pointer, words::Quantity quantity) const
{
    if (state_ == nullptr || !state_->assessment) {
        return {};
    }
    for (const assess::Assumed& assumed : state_->assessment->assumed) {
        if (assumed.where == pointer) {
            return assumed.bracket ? state_->formatter.span(*assumed.bracket, quantity) : tr("not known");
        }
    }
    return {};
}

} // namespace loam::desk
