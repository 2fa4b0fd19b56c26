// Figures of a price list as they are written in one cell: "12", "10 – 12 – 15" (least, likely, most), "75 – 100".
#pragma once

#include <QString>
#include <QStringList>
#include <optional>

#include "app/words/numbers.hpp"
#include "core/explain.hpp"

namespace loam::desk {

QStringList split_at_dashes(const QString& text); // of any length: a minus has no meaning here

QString written(double value, const words::Formatter& format);
QString written(const Range& range, const words::Formatter& format); // one number where all three are the same

// One number, or three in order; nullopt for anything else.
std::optional<Range> read_range(const QString& text, const words::Formatter& format);

// A span that may be open to either side: "75 – 100", "75 –", "– 100", "".
struct OpenSpan {
    std::optional<double> from;
    std::optional<double> to;
};
QString written(const OpenSpan& span, const words::Formatter& format);
std::optional<OpenSpan> read_open_span(const QString& text, const words::Formatter& format);

} // namespace loam::desk
