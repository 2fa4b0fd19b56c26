// Printed sheets: what leaves the house with the keeper. Black on white, large type, legible after a photocopy.
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>
#include <optional>
#include <vector>

#include "app/sheets/paper.hpp"
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
    QStringList lent{}; // what the reader gets on loan: in the plan it is owned
};

// Whether the keeper asks for a rest anywhere; then its sheet belongs to the set, even where it is refused.
bool has_winter_rest(const assess::Assessment& assessment);

// Shopping, budget, running card and year, and the winter rest where one is asked for.
std::vector<Sheet> usual_sheets(const assess::Assessment& assessment);

// Paints all sheets asked for onto a printer or PDF writer; each begins a new page and counts its own pages.
void print(const Request& request, QPagedPaintDevice& device);

// The same as a PDF file's bytes: of the same request always the same ones. Needs a QGuiApplication (fonts); several
// threads may call it at once.
QByteArray pdf_of(const Request& request);

// Atomic. Returns why it was not written, or nullopt. Needs a QGuiApplication (fonts).
std::optional<QString> write_pdf(const Request& request, const QString& path);

} // namespace loam::sheets
