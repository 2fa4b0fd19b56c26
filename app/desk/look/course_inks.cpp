#include "app/desk/look/course_inks.hpp"

namespace loam::desk {

QPen zone_pen(assess::Zone zone, bool on_dark)
{
    switch (zone) {
    case assess::Zone::basking:
        return {on_dark ? QColor(0xf0, 0xa3, 0x5e) : QColor(0xa8, 0x48, 0x06), 2.4, Qt::SolidLine};
    case assess::Zone::warm:
        return {on_dark ? QColor(0xd8, 0xc8, 0x72) : QColor(0x76, 0x62, 0x00), 2.2, Qt::DashLine};
    case assess::Zone::cool:
        break;
    }
    return {on_dark ? QColor(0x6f, 0xb1, 0xdd) : QColor(0x1f, 0x5f, 0x8b), 2.2, Qt::DashDotLine};
}

QPen room_pen(bool on_dark)
{
    return {on_dark ? QColor(0xb5, 0xb1, 0xa8) : QColor(0x6b, 0x66, 0x5c), 1.8, Qt::DotLine};
}

QPen humidity_pen(bool on_dark)
{
    return {on_dark ? QColor(0x5f, 0xc2, 0xa8) : QColor(0x0b, 0x6b, 0x57), 2.2, Qt::SolidLine};
}

Qt::BrushStyle zone_hatch(assess::Zone zone)
{
    switch (zone) {
    case assess::Zone::basking:
        return Qt::BDiagPattern;
    case assess::Zone::warm:
        return Qt::FDiagPattern;
    case assess::Zone::cool:
        break;
    }
    return Qt::HorPattern;
}

} // namespace loam::desk
