// A line for one figure in the reader's unit. What can't be read stays in the line, marked, and changes nothing.
#pragma once

#include <optional>

#include "app/desk/editors/line_field.hpp"
#include "app/words/numbers.hpp"

namespace loam::desk {

struct Limits {
    double min = 0.0;
    double max = 1e9;
};

class QuantityField : public LineField {
    Q_OBJECT

public:
    QuantityField(words::Quantity quantity, Limits limits, bool may_be_empty, QWidget* parent = nullptr);

    // The stored value (SI), shown by the formatter; an unfinished entry of the user is left alone.
    void show_value(std::optional<double> value, const words::Formatter& formatter);
    // What is assumed while the field is empty.
    void show_assumed(const QString& text);
    bool in_error() const { return in_error_; }

signals:
    void committed(std::optional<double> value);
    void problemChanged(const QString& problem); // empty: none

protected:
    bool unfinished() const override { return isModified(); }

private:
    void commit();
    void set_problem(const QString& problem);

    words::Quantity quantity_;
    Limits limits_;
    bool may_be_empty_;
    std::optional<double> value_;
    words::Formatter formatter_;
    bool in_error_ = false;
};

} // namespace loam::desk
