#include "app/desk/batch/adopter_preview.hpp"

#include <algorithm>

#include "app/files/bytes.hpp"
#include "core/catalog/csv.hpp"

namespace loam::desk {

namespace {

QString changes_of(const batch::AdopterList& list, const catalog::csv::Row& row)
{
    QStringList said;
    for (const batch::Column* column : list.columns) {
        if (column == nullptr || column->name == "name" || column->name == "number") {
            continue;
        }
        const std::string value = batch::cell(list, row, column->name);
        if (!value.empty()) {
            said << QObject::tr("%1: %2").arg(QString::fromUtf8(column->name), QString::fromStdString(value));
        }
    }
    return said.join(QStringLiteral(" · "));
}

SharedPreview preview_of(const QString& path, const batch::Template& shared, const std::stop_token& stop)
{
    auto preview = std::make_shared<Preview>();
    const files::Bytes file = files::read_bytes(path, static_cast<qint64>(catalog::csv::largest_text_bytes));
    if (!file.error.isEmpty()) {
        preview->errors << file.error;
        return preview;
    }
    const batch::ListRead read = batch::read_list(file.bytes);
    preview->errors = read.errors;
    preview->warnings = read.warnings;
    for (const catalog::csv::Row& row : read.list.rows) {
        if (stop.stop_requested()) {
            break;
        }
        const batch::Adopter adopter = batch::adopter_of(read.list, row, shared);
        Preview::Row shown{adopter.row, adopter.name, {}, changes_of(read.list, row)};
        for (const batch::RowProblem& problem : adopter.problems) {
            shown.problems << (problem.column.isEmpty() ? problem.reason
                                                        : QObject::tr("%1: %2").arg(problem.column, problem.reason));
        }
        preview->rows.push_back(std::move(shown));
    }
    return preview;
}

} // namespace

std::size_t Preview::failing() const
{
    return static_cast<std::size_t>(
        std::count_if(rows.begin(), rows.end(), [](const Row& row) { return !row.problems.isEmpty(); }));
}

AdopterPreview::AdopterPreview(plan::Plan plan, SharedCatalog catalog, QObject* parent)
    : QObject(parent), plan_(std::move(plan)), catalog_(std::move(catalog))
{
}

AdopterPreview::~AdopterPreview() = default;

void AdopterPreview::read(const QString& path)
{
    const int asked = ++asked_;
    reader_ = std::jthread([this, path, asked](const std::stop_token& stop) { // ends the one before first
        SharedPreview preview = preview_of(path, {plan_, *catalog_}, stop);
        QMetaObject::invokeMethod(
            this,
            [this, asked, preview = std::move(preview)] {
                if (asked == asked_) {
                    emit ready(preview);
                }
            },
            Qt::QueuedConnection);
    });
}

} // namespace loam::desk
