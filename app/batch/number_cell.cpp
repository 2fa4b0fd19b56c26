#include "app/batch/number_cell.hpp"

#include <QRegularExpression>

#include "app/batch/said.hpp"

namespace loam::batch {

namespace {

QString shown(const QString& typed)
{
    constexpr qsizetype longest = 40;
    return typed.size() > longest ? typed.left(longest) + QStringLiteral("…") : typed;
}

} // namespace

std::variant<std::string, QString> plain_number(std::string_view cell, char separator)
{
    static const QRegularExpression form(QStringLiteral("^([-+]?)([0-9]*)(?:([.,])([0-9]+))?$"));
    QString typed = QString::fromUtf8(cell).trimmed();
    const QString as_typed = typed;
    typed.replace(QChar(0x2212), QLatin1Char('-')); // the typographic minus
    const QRegularExpressionMatch match = form.match(typed);
    const QString whole = match.captured(2);
    const QString mark = match.captured(3);
    const QString after = match.captured(4);
    if (!match.hasMatch() || (whole.isEmpty() && after.isEmpty())) {
        return Said::tr("“%1” is not a number. Digits alone count, without a unit.").arg(shown(as_typed));
    }
    constexpr qsizetype most_digits = 9;
    if (whole.size() > most_digits || after.size() > most_digits) {
        return Said::tr("“%1” has too many digits.").arg(shown(as_typed));
    }
    const bool thousands_mark = mark == QStringLiteral(",") ? separator != ';' : separator == ';';
    const bool group_of_three =
        after.size() == 3 && !whole.isEmpty() && whole.size() <= 3 && whole != QStringLiteral("0");
    if (!mark.isEmpty() && thousands_mark && group_of_three) {
        return Said::tr(
                   "“%1” can be read in two ways. Write it without a mark for thousands, or with another number of "
                   "digits behind the decimal mark.")
            .arg(shown(as_typed));
    }
    QString plain = match.captured(1) == QStringLiteral("-") ? QStringLiteral("-") : QString();
    qsizetype zeros = 0;
    while (zeros + 1 < whole.size() && whole[zeros] == QLatin1Char('0')) {
        ++zeros;
    }
    plain += whole.isEmpty() ? QStringLiteral("0") : whole.mid(zeros);
    if (!after.isEmpty()) {
        plain += QLatin1Char('.') + after;
    }
    return plain.toStdString();
}

} // namespace loam::batch
