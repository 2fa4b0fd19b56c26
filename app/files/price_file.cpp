#include "app/files/price_file.hpp"

#include <string_view>
#include <utility>

#include "app/files/bytes.hpp"
#include "app/words/problems.hpp"
#include "core/catalog/catalog.hpp"

namespace loam::files {

namespace {

// A club's list has a few hundred rows; this is thousands.
constexpr qint64 largest_price_file_bytes = 4 * 1024 * 1024;

bool is_csv(const QString& path, const QByteArray& bytes)
{
    if (path == QStringLiteral("-")) {
        return !bytes.trimmed().startsWith('{');
    }
    return path.endsWith(QStringLiteral(".csv"), Qt::CaseInsensitive);
}

} // namespace

PriceFile read_prices(const QString& path)
{
    PriceFile result;
    const Bytes file = read_bytes(path, largest_price_file_bytes);
    if (!file.error.isEmpty()) {
        result.failure = Failure::unreadable;
        result.errors << file.error;
        return result;
    }
    const std::string_view text(file.bytes.constData(), static_cast<std::size_t>(file.bytes.size()));
    catalog::PriceListRead read =
        is_csv(path, file.bytes) ? catalog::read_prices_csv(text) : catalog::read_prices(text);
    if (!read.problems.empty()) {
        result.failure = Failure::invalid;
        result.errors = words::problems(read.problems);
        return result;
    }
    result.prices = std::move(read.prices);
    return result;
}

QString write_prices(const catalog::PriceList& prices, const QString& path)
{
    const std::string text = is_csv(path, {}) ? catalog::write_csv(prices) : catalog::write(prices);
    return write_bytes(QByteArray::fromStdString(text), path);
}

} // namespace loam::files
