#include "app/words/inches.hpp"

#include <cmath>
#include <numeric>

namespace loam::words {

std::optional<QString> inch_fraction(double inches)
{
    constexpr int finest = 32; // as panels and boards are sold
    constexpr double agreement_in = 0.005;
    constexpr double longest_in = 100.0;
    if (!(inches > agreement_in) || inches > longest_in) {
        return std::nullopt;
    }
    const int parts = static_cast<int>(std::lround(inches * finest));
    if (parts == 0 || std::abs(inches - static_cast<double>(parts) / finest) > agreement_in) {
        return std::nullopt;
    }
    const int whole = parts / finest;
    const int rest = parts % finest;
    if (rest == 0) {
        return QString::number(whole);
    }
    const int shared = std::gcd(rest, finest);
    const QString fraction = QStringLiteral("%1/%2").arg(rest / shared).arg(finest / shared);
    return whole == 0 ? fraction : QStringLiteral("%1 %2").arg(QString::number(whole), fraction);
}

QString decimal_inches(double inches, const Formatter& formatter)
{
    const double size = std::abs(inches);
    return formatter.number(inches, inches == 0.0 ? 0 : size < 0.1 ? 3 : 2);
}

QString inches_text(double inches, const Formatter& formatter)
{
    return inch_fraction(inches).value_or(decimal_inches(inches, formatter));
}

} // namespace loam::words
