#include "app/sheets/sheets.hpp"

#include <QBuffer>
#include <QObject>
#include <QPageLayout>
#include <QPagedPaintDevice>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>
#include <array>
#include <memory>
#include <utility>

#include "app/sheets/contents.hpp"
#include "app/sheets/page_layout.hpp"
#include "app/sheets/pdf_date.hpp"
#include "app/sheets/typography.hpp"

namespace loam::sheets {

namespace {

constexpr double margin_mm = 12.5;

constexpr std::array names{SheetName{Sheet::decision, "decision"},
                           SheetName{Sheet::shopping, "shopping"},
                           SheetName{Sheet::budget, "budget"},
                           SheetName{Sheet::build, "build"},
                           SheetName{Sheet::proving, "proving"},
                           SheetName{Sheet::running, "running"},
                           SheetName{Sheet::year, "year"},
                           SheetName{Sheet::holiday, "holiday"},
                           SheetName{Sheet::winter_rest, "winter-rest"}};

QPageSize page_size(Paper paper)
{
    return QPageSize(paper == Paper::a4 ? QPageSize::A4 : QPageSize::Letter);
}

QPageLayout page_layout(Paper paper)
{
    return {page_size(paper), QPageLayout::Portrait, QMarginsF(margin_mm, margin_mm, margin_mm, margin_mm),
            QPageLayout::Millimeter};
}

// What of a page's height a drawing may take, the more the better; the less, the more room have the lists under it.
constexpr std::array drawing_shares{0.55, 0.42, 0.3};

Content content_of(Sheet sheet, const Request& request, const words::Speaker& speaker, double drawing_share)
{
    switch (sheet) {
    case Sheet::decision:
        return decision_content(request, speaker);
    case Sheet::shopping:
        return shopping_content(request, speaker);
    case Sheet::budget:
        return budget_content(request, speaker);
    case Sheet::build:
        return build_content(request, speaker, drawing_share);
    case Sheet::proving:
        return proving_content(request, speaker);
    case Sheet::running:
        return running_content(request, speaker);
    case Sheet::year:
        return year_content(request, speaker);
    case Sheet::holiday:
        return holiday_content(request, speaker);
    case Sheet::winter_rest:
        return winter_rest_content(request, speaker);
    }
    return {};
}

// A sheet laid out on its pages. The layout refers to the content.
struct LaidOut {
    std::unique_ptr<Content> content;
    PageLayout layout;
};

LaidOut laid_out(Sheet sheet, const Request& request, const words::Speaker& speaker, const QRectF& page, double share)
{
    auto content = std::make_unique<Content>(content_of(sheet, request, speaker, share));
    keep_figures_whole(*content);
    PageLayout layout = fitted(*content, page, Fonts::standard());
    return {std::move(content), std::move(layout)};
}

// With the largest drawing that leaves room enough, where the sheet has one.
LaidOut laid_out(Sheet sheet, const Request& request, const words::Speaker& speaker, const QRectF& page)
{
    LaidOut best = laid_out(sheet, request, speaker, page, drawing_shares.front());
    for (std::size_t i = 1; i < drawing_shares.size() && sheet == Sheet::build; ++i) {
        if (best.layout.page_count() <= best.content->pages) {
            break;
        }
        LaidOut smaller = laid_out(sheet, request, speaker, page, drawing_shares[i]);
        if (smaller.layout.page_count() < best.layout.page_count()) {
            best = std::move(smaller);
        }
    }
    return best;
}

} // namespace

std::span<const SheetName> sheet_names()
{
    return names;
}

QString title_of(Sheet sheet)
{
    switch (sheet) {
    case Sheet::decision:
        return QObject::tr("Decision sheet");
    case Sheet::shopping:
        return QObject::tr("Shopping sheet");
    case Sheet::budget:
        return QObject::tr("Budget sheet");
    case Sheet::build:
        return QObject::tr("Build sheet");
    case Sheet::proving:
        return QObject::tr("Proving sheet");
    case Sheet::running:
        return QObject::tr("Running card");
    case Sheet::year:
        return QObject::tr("The year");
    case Sheet::holiday:
        return QObject::tr("Holiday card");
    case Sheet::winter_rest:
        return QObject::tr("Winter rest");
    }
    return {};
}

QSizeF printable_pt(Paper paper)
{
    return page_layout(paper).paintRect(QPageLayout::Point).size();
}

std::vector<Sheet> usual_sheets(const assess::Assessment& assessment)
{
    std::vector<Sheet> sheets;
    for (const SheetName& one : names) {
        if (one.sheet != Sheet::winter_rest || has_winter_rest(assessment)) {
            sheets.push_back(one.sheet);
        }
    }
    return sheets;
}

void print(const Request& request, QPagedPaintDevice& device)
{
    device.setPageLayout(page_layout(request.paper));
    const words::Speaker speaker(request.formatter, request.plan, request.catalog);
    const QRectF printable(QPointF(0, 0), device.pageLayout().paintRect(QPageLayout::Point).size());
    QPainter painter(&device);
    const double dots_per_point = device.logicalDpiX() / 72.0;
    bool first = true;
    for (const Sheet sheet : request.sheets) {
        const LaidOut sheet_laid_out = laid_out(sheet, request, speaker, printable);
        const PageLayout& layout = sheet_laid_out.layout;
        for (int page = 0; page < layout.page_count(); ++page) {
            if (!first) {
                device.newPage();
            }
            first = false;
            painter.save();
            painter.scale(dots_per_point, dots_per_point);
            layout.paint(painter, page);
            painter.restore();
        }
    }
}

QByteArray pdf_of(const Request& request)
{
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        writer.setTitle(QString::fromStdString(request.plan.title));
        writer.setCreator(QStringLiteral("Loamstead"));
        print(request, writer);
    }
    return dated_pdf(buffer.data(), request.assessment.date);
}

std::optional<QString> write_pdf(const Request& request, const QString& path)
{
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly)) {
        return QObject::tr("“%1” can't be written: %2.").arg(path, file.errorString());
    }
    const QByteArray pdf = pdf_of(request);
    if (file.write(pdf) != pdf.size() || !file.commit()) {
        return QObject::tr("“%1” can't be written: %2.").arg(path, file.errorString());
    }
    return std::nullopt;
}

} // namespace loam::sheets
