#include "app/desk/look/theme.hpp"

#include <QPalette>
#include <QStyle>
#include <QStyleFactory>

#include "app/desk/look/outlined_boxes.hpp"

namespace loam::desk {

namespace {

struct Tones {
    QColor window, base, alternate, text, muted, button, accent, accent_text, line;
};

const Tones light_tones{QColor(0xf4, 0xf1, 0xea), QColor(0xfd, 0xfc, 0xf9), QColor(0xf1, 0xed, 0xe4),
                        QColor(0x24, 0x22, 0x1e), QColor(0x6b, 0x66, 0x5c), QColor(0xec, 0xe7, 0xdc),
                        QColor(0x1f, 0x5f, 0x8b), QColor(0xff, 0xff, 0xff), QColor(0xc9, 0xc2, 0xb4)};
const Tones dark_tones{QColor(0x23, 0x24, 0x26), QColor(0x2b, 0x2c, 0x2f), QColor(0x31, 0x33, 0x36),
                       QColor(0xe9, 0xe6, 0xdf), QColor(0xa4, 0x9f, 0x95), QColor(0x38, 0x3a, 0x3e),
                       QColor(0x6f, 0xb1, 0xdd), QColor(0x14, 0x1a, 0x1f), QColor(0x4b, 0x4e, 0x53)};

QPalette palette_of(const Tones& tones)
{
    QPalette palette;
    palette.setColor(QPalette::Window, tones.window);
    palette.setColor(QPalette::WindowText, tones.text);
    palette.setColor(QPalette::Base, tones.base);
    palette.setColor(QPalette::AlternateBase, tones.alternate);
    palette.setColor(QPalette::Text, tones.text);
    palette.setColor(QPalette::PlaceholderText, tones.muted);
    palette.setColor(QPalette::Button, tones.button);
    palette.setColor(QPalette::ButtonText, tones.text);
    palette.setColor(QPalette::Highlight, tones.accent);
    palette.setColor(QPalette::HighlightedText, tones.accent_text);
    palette.setColor(QPalette::Link, tones.accent);
    palette.setColor(QPalette::LinkVisited, tones.accent);
    palette.setColor(QPalette::ToolTipBase, tones.base);
    palette.setColor(QPalette::ToolTipText, tones.text);
    palette.setColor(QPalette::Mid, tones.line);
    palette.setColor(QPalette::Midlight, tones.alternate);
    palette.setColor(QPalette::Light, tones.base);
    palette.setColor(QPalette::Dark, tones.line.darker(130));
    palette.setColor(QPalette::Shadow, tones.line.darker(200));
    for (const QPalette::ColorRole role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
        palette.setColor(QPalette::Disabled, role, tones.muted);
    }
    return palette;
}

} // namespace

bool is_dark(const QPalette& palette)
{
    return palette.color(QPalette::Window).lightness() < palette.color(QPalette::WindowText).lightness();
}

void apply_theme(QApplication& application, Theme theme)
{
    // Fusion honours a palette everywhere; native styles honour it in part and would give half-dark windows.
    static const QPalette desktop_palette = QApplication::palette();
    application.setStyle(new OutlinedBoxes(QStyleFactory::create(QStringLiteral("Fusion"))));
    const bool dark = theme == Theme::dark || (theme == Theme::system && is_dark(desktop_palette));
    application.setPalette(palette_of(dark ? dark_tones : light_tones));
}

} // namespace loam::desk
