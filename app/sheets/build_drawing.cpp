#include <QObject>
#include <array>

#include "app/drawing/dimensions.hpp"
#include "app/drawing/enclosure_drawing.hpp"
#include "app/sheets/build_parts.hpp"

namespace loam::sheets {

namespace {

constexpr double points_per_m = 72.0 / 0.0254;

QFont drawing_font()
{
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPixelSize(10); // one pixel is one point here
    return font;
}

} // namespace

double scale_of(const ToScale& drawn)
{
    // ISO 5455 (from memory) has 1, 2, 5, 10, 20, 50; 15, 25 and 40 stand between them so that a drawing fills its
    // page.
    static constexpr std::array metric{1.0, 2.0, 5.0, 10.0, 15.0, 20.0, 25.0, 40.0, 50.0, 100.0};
    static constexpr std::array us{1.0, 2.0, 4.0, 6.0, 8.0, 12.0, 16.0, 24.0, 48.0, 96.0};
    const auto& [enclosure, request, share] = drawn;
    const bool inches = request.formatter.system() == words::UnitSystem::us;
    const QSizeF page = printable_pt(request.paper);
    for (const double scale : inches ? us : metric) {
        const QSizeF size = drawing::size_at(enclosure, points_per_m / scale, drawing_font(), page.width());
        if (size.width() <= page.width() && size.height() <= page.height() * share) {
            return scale;
        }
    }
    return metric.back();
}

Figure scale_drawing(const ToScale& drawn)
{
    const auto& [enclosure, request, share] = drawn;
    drawing::Picture picture;
    picture.enclosure = enclosure;
    picture.formatter = request.formatter;
    picture.colours = false;
    picture.inks = drawing::Inks::print();
    picture.font = drawing_font();
    picture.pixels_per_m = points_per_m / scale_of(drawn);
    picture.marks = marks_of(enclosure);
    const double height_pt =
        drawing::size_at(enclosure, *picture.pixels_per_m, picture.font, printable_pt(request.paper).width()).height();
    return {height_pt, [picture](QPainter& painter, const QRectF& area) { drawing::paint(painter, area, picture); }};
}

QString scale_sentence(const ToScale& drawn)
{
    const auto& [enclosure, request, share] = drawn;
    const words::Formatter& formatter = request.formatter;
    const double scale = scale_of(drawn);
    const double pixels_per_m = points_per_m / scale;
    const double width = printable_pt(request.paper).width();
    const QRectF area(QPointF(),
                      QSizeF(width, drawing::size_at(enclosure, pixels_per_m, drawing_font(), width).height()));
    drawing::Picture picture;
    picture.enclosure = enclosure;
    picture.font = drawing_font();
    picture.pixels_per_m = pixels_per_m;
    const double bar_m = drawing::scale_bar_m(drawing::lay_out(picture, area).legend.width(), pixels_per_m, formatter);
    return QObject::tr(
               "Scale 1:%1 when printed at 100% (not “fit to page”): the bar of %2 is then %3 long on the paper. "
               "Covers are hatched falling, mats crossed; lamps seen from above have a cross.")
        .arg(formatter.number(scale, 0), formatter.value(bar_m, words::Quantity::length),
             formatter.value(bar_m / scale, words::Quantity::length));
}

} // namespace loam::sheets
