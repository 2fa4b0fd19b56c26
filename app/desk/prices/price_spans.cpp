#include "app/desk/prices/price_spans.hpp"

#include <QRegularExpression>

namespace loam::desk {

namespace {

const QString between = QStringLiteral(" – ");

std::optional<double> read_number(const QString& text, const words::Formatter& format)
{
    const auto number = format.parse(text, words::Quantity::number);
    return number && *number >= 0.0 ? number : std::nullopt;
}

} // namespace

QStringList split_at_dashes(const QString& text)
{
    static const QRegularExpression dash(QStringLiteral("\\s*[-–—]\\s*"));
    return text.trimmed().split(dash);
}

QString written(double value, const words::Formatter& format)
{
    // As many digits as it takes to read back the same.
    QLocale plain = format.locale();
    plain.setNumberOptions(QLocale::OmitGroupSeparator);
    return plain.toString(value, 'g', QLocale::FloatingPointShortest);
}

QString written(const Range& range, const words::Formatter& format)
{
    if (range.low == range.likely && range.likely == range.high) {
        return written(range.likely, format);
    }
    return written(range.low, format) + between + written(range.likely, format) + between + written(range.high, format);
}

std::optional<Range> read_range(const QString& text, const words::Formatter& format)
{
    const QStringList parts = split_at_dashes(text);
    if (parts.size() != 1 && parts.size() != 3) {
        return std::nullopt;
    }
    const auto low = read_number(parts.front(), format);
    const auto likely = read_number(parts[parts.size() / 2], format);
    const auto high = read_number(parts.back(), format);
    if (!low || !likely || !high || *low > *likely || *likely > *high) {
        return std::nullopt;
    }
    return Range{*low, *likely, *high};
}

QString written(const OpenSpan& span, const words::Formatter& format)
{
    if (!span.from && !span.to) {
        return {};
    }
    const QString from = span.from ? written(*span.from, format) : QString();
    const QString to = span.to ? written(*span.to, format) : QString();
    return (from + between + to).trimmed();
}

std::optional<OpenSpan> read_open_span(const QString& text, const words::Formatter& format)
{
    const QStringList parts = split_at_dashes(text);
    if (parts.size() == 1 && parts.front().isEmpty()) {
        return OpenSpan{};
    }
    if (parts.size() > 2) {
        return std::nullopt;
    }
    OpenSpan span;
    for (const auto& [part, slot] : {std::pair{parts.front(), &span.from}, std::pair{parts.back(), &span.to}}) {
        if (part.isEmpty()) {
            continue; // open to this side
        }
        *slot = read_number(part, format);
        if (!*slot) {
            return std::nullopt;
        }
    }
    return span.from && span.to && *span.from > *span.to ? std::nullopt : std::optional(span);
}

} // namespace loam::desk
