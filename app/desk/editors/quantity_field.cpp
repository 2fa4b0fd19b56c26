#include "app/desk/editors/quantity_field.hpp"

namespace loam::desk {

QuantityField::QuantityField(words::Quantity quantity, Limits limits, bool may_be_empty, QWidget* parent)
    : LineField(parent), quantity_(quantity), limits_(limits), may_be_empty_(may_be_empty)
{
    setAlignment(Qt::AlignRight);
    // Beside a long label a field would shrink until its figure is cut; so the row is broken instead.
    setMinimumWidth(fontMetrics().horizontalAdvance(QStringLiteral("1000.5 cm")) +
                    2 * fontMetrics().averageCharWidth());
    connect(this, &QLineEdit::editingFinished, this, &QuantityField::commit);
    connect(this, &QLineEdit::textEdited, this, [this] { set_problem({}); });
}

void QuantityField::show_value(std::optional<double> value, const words::Formatter& formatter)
{
    const bool being_typed = hasFocus() && isModified();
    value_ = value;
    formatter_ = formatter;
    if (being_typed || (in_error_ && isModified())) {
        return;
    }
    const QString shown = value ? formatter.value(*value, quantity_) : QString();
    if (shown != text()) {
        setText(shown);
    }
    set_problem({});
}

void QuantityField::show_assumed(const QString& text)
{
    setPlaceholderText(text);
    setToolTip(in_error_ || text.isEmpty() ? toolTip() : tr("Not stated. The program uses %1 meanwhile.").arg(text));
}

void QuantityField::commit()
{
    if (!isModified()) {
        return;
    }
    const QString typed = text().trimmed();
    if (typed.isEmpty() && may_be_empty_) {
        setModified(false);
        set_problem({});
        if (value_) {
            emit committed(std::nullopt);
        }
        return;
    }
    const std::optional<double> read =
        value_ ? formatter_.parse(typed, quantity_, *value_) : formatter_.parse(typed, quantity_);
    const Range limits{limits_.min, limits_.min, limits_.max};
    if (!read) {
        const QString unit = formatter_.unit(quantity_);
        const QString why_not = formatter_.why_not(typed, quantity_);
        set_problem(!why_not.isEmpty() ? why_not
                    : unit.isEmpty()   ? tr("“%1” is not a number.").arg(typed)
                                       : tr("“%1” is not a figure in %2.").arg(typed, unit));
        return;
    }
    if (*read < limits_.min || *read > limits_.max) {
        set_problem(tr("This must lie within %1.").arg(formatter_.span(limits, quantity_)));
        return;
    }
    setModified(false);
    set_problem({});
    if (value_ != read) {
        emit committed(read);
    } else {
        setText(formatter_.value(*read, quantity_));
    }
}

void QuantityField::set_problem(const QString& problem)
{
    const bool had = in_error_;
    in_error_ = !problem.isEmpty();
    if (had || in_error_) {
        setToolTip(problem);
        emit problemChanged(problem);
    }
}

} // namespace loam::desk
