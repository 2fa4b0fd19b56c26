#include "app/desk/print/sheet_printing.hpp"

#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QPrintPreviewDialog>
#include <QPrinter>
#include <QStandardPaths>
#include <utility>

#include "app/desk/print/sheet_choice.hpp"
#include "app/sheets/sheets.hpp"

namespace loam::desk {

namespace {

sheets::Request request_of(const SheetJob& job, std::vector<sheets::Sheet> wanted)
{
    return {.plan = job.plan,
            .assessment = job.assessment,
            .catalog = job.catalog,
            .formatter = words::Formatter(job.units, QLocale()),
            .paper = job.paper,
            .sheets = std::move(wanted),
            .printed_by = job.printed_by};
}

} // namespace

void preview_sheets(const SheetJob& job, Settings& settings, QWidget* parent)
{
    const auto wanted = ask_for_sheets(sheets::usual_sheets(job.assessment), settings, parent);
    if (!wanted) {
        return;
    }
    QPrinter printer(QPrinter::HighResolution);
    printer.setDocName(QString::fromStdString(job.plan.title));
    printer.setPageSize(QPageSize(job.paper == sheets::Paper::a4 ? QPageSize::A4 : QPageSize::Letter));
    QPrintPreviewDialog dialog(&printer, parent);
    dialog.setObjectName(QStringLiteral("printPreview"));
    dialog.setWindowTitle(QObject::tr("Print sheets"));
    dialog.resize(900, 700);
    QObject::connect(&dialog, &QPrintPreviewDialog::paintRequested, &dialog,
                     [&job, &settings, &wanted](QPrinter* target) {
                         sheets::Request request = request_of(job, *wanted);
                         // The dialog's own paper choice wins, and is kept for the next time.
                         const bool letter = target->pageLayout().pageSize().id() == QPageSize::Letter;
                         request.paper = letter ? sheets::Paper::letter : sheets::Paper::a4;
                         settings.set_paper(request.paper);
                         sheets::print(request, *target);
                     });
    dialog.exec();
}

QString save_sheets_as_pdf(const SheetJob& job, Settings& settings, QWidget* parent)
{
    const auto wanted = ask_for_sheets(sheets::usual_sheets(job.assessment), settings, parent);
    if (!wanted) {
        return {};
    }
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    QString path = QFileDialog::getSaveFileName(
        parent, QObject::tr("Save sheets as PDF"),
        folder + QLatin1Char('/') + QObject::tr("sheets") + QStringLiteral(".pdf"), QObject::tr("PDF files (*.pdf)"));
    if (path.isEmpty()) {
        return {};
    }
    if (const std::optional<QString> error = sheets::write_pdf(request_of(job, *wanted), path)) {
        QMessageBox::warning(parent, QObject::tr("The sheets were not saved"), *error);
        return {};
    }
    return path;
}

} // namespace loam::desk
