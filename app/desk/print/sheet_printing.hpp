// Sheets from the window: a preview with printing, and a PDF file.
#pragma once

#include "app/desk/session/settings.hpp"
#include "app/words/units.hpp"
#include "core/assess/assessment.hpp"
#include "core/catalog/catalog.hpp"
#include "core/plan/plan.hpp"

class QWidget;

namespace loam::desk {

struct SheetJob {
    const plan::Plan& plan;
    const assess::Assessment& assessment;
    const catalog::Catalog& catalog;
    words::UnitSystem units;
    sheets::Paper paper;
    sheets::PrintedBy printed_by{};
};

// Both ask first which sheets are wanted.
void preview_sheets(const SheetJob& job, Settings& settings, QWidget* parent);
// The file that was written; empty where the user thought better of it, or where it failed and this was said.
QString save_sheets_as_pdf(const SheetJob& job, Settings& settings, QWidget* parent);

} // namespace loam::desk
