#include "app/sheets/column_widths.hpp"

#include <QRegularExpression>
#include <QStringList>
#include <algorithm>
#include <numeric>

namespace loam::sheets {

double unbreakable_width(const QString& text, const QFontMetricsF& metrics)
{
    static const QRegularExpression may_break(QStringLiteral("[ \\n]|(?<=-)"));
    double widest = 0.0;
    for (const QString& part : text.split(may_break, Qt::SkipEmptyParts)) {
        widest = std::max(widest, metrics.horizontalAdvance(part));
    }
    return widest;
}

std::vector<double> column_widths(const std::vector<double>& shares, const std::vector<double>& least, double room)
{
    std::vector<double> widths(shares.size(), 0.0);
    const bool fits = std::accumulate(least.begin(), least.end(), 0.0) <= room;
    std::vector<bool> at_least(shares.size(), false);
    bool settled = false;
    while (!settled) {
        settled = true;
        double left = room;
        double open_shares = 0.0;
        for (std::size_t i = 0; i < shares.size(); ++i) {
            left -= at_least[i] ? least[i] : 0.0;
            open_shares += at_least[i] ? 0.0 : shares[i];
        }
        for (std::size_t i = 0; i < shares.size(); ++i) {
            widths[i] = at_least[i] ? least[i] : left * shares[i] / open_shares;
            if (fits && !at_least[i] && least[i] > widths[i]) {
                at_least[i] = true;
                settled = false;
            }
        }
    }
    return widths;
}

} // namespace loam::sheets
