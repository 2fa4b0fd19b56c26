// Printed sheets: what leaves the house with the keeper. Black on white, large type, legible after a photocopy.
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>
#include <optional>
#include <span>
#include <vector>

#include "app/sheets/paper.hpp"
#include "app/sheets/printed_by.hpp"
#include "app/words/numbers.hpp"
#include "core/assess/assessment.hpp"
#include "core/catalog/catalog.hpp"
#include "core/plan/plan.hpp"

class QPagedPaintDevice;

namespace loam::sheets {

struct Request {
    const plan::Plan& plan;
    const assess::Assessment& assessment;
    const catalog::Catalog& catalog;
    words::Formatter formatter;
    Paper paper = Paper::a4;
    std::vector<Sheet> sheets{Sheet::shopping, Sheet::budget};
    PrintedBy printed_by{}; // at the head of each sheet
    QStringList lent{};     // what the reader gets on loan: in the plan it is owned
};

// By what a sheet is asked for, on the command line and in settings ("winter-rest").
struct SheetName {
    Sheet sheet;
    const char* name;
};
std::span<const SheetName> sheet_names(); // every sheet, in the order of printing
QString title_of(Sheet sheet);            // "Shopping sheet"

// Whether the keeper asks for a rest anywhere; then its sheet belongs to the set, even where it is refused.
bool has_winter_rest(const assess::Assessment& assessment);

// All of them, but the winter rest only where one is asked for.
std::vector<Sheet> usual_sheets(const assess::Assessment& assessment);

// Paints all sheets asked for onto a printer or PDF writer; each begins a new page and counts its own pages.
void print(const Request& request, QPagedPaintDevice& device);

// The same as a PDF file's bytes: of the same request always the same ones. Needs a QGuiApplication (fonts); several
// threads may call it at once.
QByteArray pdf_of(const Request& request);

// Atomic. Returns why it was not written, or nullopt. Needs a QGuiApplication (fonts).
std::optional<QString> write_pdf(const Request& request, const QString& path);

} // namespace loam::sheets
