#include "app/batch/lent.hpp"

#include <algorithm>

#include "app/batch/cell_words.hpp"
#include "app/batch/number_cell.hpp"
#include "app/batch/said.hpp"
#include "app/words/problems.hpp"
#include "core/catalog/csv.hpp"
#include "core/plan/file.hpp"

namespace loam::batch {

namespace {

class Reader {
public:
    Reader(const catalog::csv::Table& table, const catalog::PriceList& prices, LentRead& read)
        : table_(table), prices_(prices), read_(read)
    {
        const auto& header = table.rows.front().cells;
        item_ = static_cast<std::size_t>(std::find(header.begin(), header.end(), "item") - header.begin());
        quantity_ = static_cast<std::size_t>(std::find(header.begin(), header.end(), "quantity") - header.begin());
        if (item_ == header.size()) {
            read.errors << Said::tr("The column “%1” is missing.").arg(QStringLiteral("item"));
        }
    }

    void row(const catalog::csv::Row& row, const std::string& id)
    {
        const std::string item = item_ < row.cells.size() ? catalog::csv::plain(row.cells[item_]) : std::string();
        const std::string quantity = quantity_ < row.cells.size() ? row.cells[quantity_] : std::string();
        if (catalog::find_item(prices_, item) == nullptr) {
            refuse(row, "item", no_such_item(text(item), prices_));
            return;
        }
        const auto number = plain_number(quantity.empty() ? "1" : quantity, table_.separator);
        const auto* const digits = std::get_if<std::string>(&number);
        const double amount = digits != nullptr ? QString::fromStdString(*digits).toDouble() : 0.0;
        if (digits == nullptr) {
            refuse(row, "quantity", std::get<QString>(number));
        } else if (!(amount > 0.0)) {
            refuse(row, "quantity", Said::tr("A quantity must be above 0."));
        } else {
            read_.lent.push_back({.id = id, .item = item, .quantity = amount, .age_months = {}, .extras = {}});
        }
    }

private:
    void refuse(const catalog::csv::Row& row, const char* column, const QString& why)
    {
        read_.errors << Said::tr("row %1, column %2: %3").arg(row.number).arg(QLatin1String(column), why);
    }

    const catalog::csv::Table& table_;
    const catalog::PriceList& prices_;
    LentRead& read_;
    std::size_t item_ = 0;
    std::size_t quantity_ = 0;
};

} // namespace

LentRead read_lent(const QByteArray& text, const catalog::PriceList& prices, const plan::Plan& plan)
{
    LentRead read;
    const catalog::csv::Table table = catalog::csv::read({text.constData(), static_cast<std::size_t>(text.size())});
    read.errors = words::problems(table.problems);
    if (!read.errors.isEmpty() || table.rows.empty()) {
        return read;
    }
    Reader reader(table, prices, read);
    const std::string stem = plan::fresh_id(plan, "lent");
    const bool has_columns = read.errors.isEmpty();
    for (std::size_t i = 1; i < table.rows.size() && has_columns; ++i) {
        reader.row(table.rows[i], stem + "-" + std::to_string(i));
    }
    if (!read.errors.isEmpty()) {
        read.lent.clear();
    }
    return read;
}

} // namespace loam::batch
