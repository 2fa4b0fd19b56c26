// How many fresh maps a second the window shows while a lamp is dragged: from the move of the mouse through edit, field
// and delivery to the painted sheet. Run: QT_QPA_PLATFORM=offscreen bench_drag, on an idle machine.
#include <QApplication>
#include <QMouseEvent>
#include <QTemporaryDir>
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <vector>

#include "app/desk/document/plan_document.hpp"
#include "app/desk/document/runner.hpp"
#include "app/desk/session/settings.hpp"
#include "app/desk/views/sheet.hpp"
#include "app/desk/window.hpp"
#include "app/drawing/shapes.hpp"
#include "app/files/guidance.hpp"
#include "app/files/identity.hpp"

using namespace loam;

namespace {

using Clock = std::chrono::steady_clock;

double milliseconds_since(Clock::time_point begin)
{
    return std::chrono::duration<double, std::milli>(Clock::now() - begin).count();
}

// Tells when the sheet has been painted with a field that it had not shown yet.
class Painted : public QObject {
public:
    explicit Painted(desk::Sheet& sheet) : sheet_(sheet) { sheet.installEventFilter(this); }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override
    {
        if (event->type() == QEvent::Paint && sheet_.picture.look != nullptr && sheet_.picture.look != shown_) {
            shown_ = sheet_.picture.look;
            fresh_ = true;
        }
        return QObject::eventFilter(watched, event);
    }

public:
    // The paint event of that map is over.
    bool take()
    {
        const bool had = fresh_;
        fresh_ = false;
        return had;
    }

private:
    desk::Sheet& sheet_;
    const void* shown_ = nullptr;
    bool fresh_ = false;
};

void send_mouse(desk::Sheet& sheet, QEvent::Type type, const QPointF& at)
{
    const Qt::MouseButton button = type == QEvent::MouseMove ? Qt::NoButton : Qt::LeftButton;
    QMouseEvent event(type, at, sheet.mapToGlobal(at), button, Qt::LeftButton, {});
    QApplication::sendEvent(&sheet, &event);
}

double median(std::vector<double> values)
{
    std::sort(values.begin(), values.end());
    return values[values.size() / 2];
}

void print(const char* what, const std::vector<double>& took_ms)
{
    std::printf("%-44s median %6.1f ms, longest %6.1f ms\n", what, median(took_ms),
                *std::max_element(took_ms.begin(), took_ms.end()));
}

void drag(desk::Window& window, const QSize& size)
{
    window.resize(size);
    auto& sheet = *window.findChild<desk::Sheet*>(QStringLiteral("sheet"));
    QApplication::processEvents();
    while (!window.up_to_date()) {
        QApplication::processEvents(QEventLoop::WaitForMoreEvents);
    }
    std::vector<double> paints_ms;
    for (int i = 0; i < 20; ++i) {
        sheet.redraw();
        const auto begin = Clock::now();
        sheet.repaint();
        paints_ms.push_back(milliseconds_since(begin));
    }
    const auto& equipment = window.document().plan().enclosures.front().equipment;
    const auto lamp = std::find_if(equipment.begin(), equipment.end(),
                                   [](const auto& one) { return one.kind == plan::DeviceKind::flood_lamp; });
    const drawing::Picture& picture = sheet.picture;
    const drawing::Frame frame = drawing::lay_out(picture.enclosure, sheet.rect(), picture.font);
    const QPointF from = drawing::on_plan(frame, lamp->x_m, lamp->y_m);
    const double step = 0.005 * frame.pixels_per_m;
    Painted painted(sheet);
    send_mouse(sheet, QEvent::MouseButtonPress, from);
    std::vector<double> maps_ms;
    std::vector<double> fields_ms;
    Clock::time_point looked;
    const auto* runner = window.findChild<desk::AssessmentRunner*>();
    const auto connection =
        QObject::connect(runner, &desk::AssessmentRunner::looked, &sheet, [&] { looked = Clock::now(); });
    std::vector<double> edits_ms;
    constexpr int steps = 120;
    for (int i = 1; i <= steps; ++i) {
        const int along = i <= steps / 2 ? i : steps - i;
        const auto begin = Clock::now();
        send_mouse(sheet, QEvent::MouseMove, from + QPointF(20.0 + step * along, 0.0));
        edits_ms.push_back(milliseconds_since(begin));
        while (!painted.take()) {
            QApplication::processEvents(QEventLoop::WaitForMoreEvents);
        }
        maps_ms.push_back(milliseconds_since(begin));
        fields_ms.push_back(std::chrono::duration<double, std::milli>(looked - begin).count());
    }
    send_mouse(sheet, QEvent::MouseButtonRelease, from);
    QObject::disconnect(connection);
    std::printf("window of %d x %d, drawing of %d x %d:\n", size.width(), size.height(), sheet.width(), sheet.height());
    print("  the drawing painted anew", paints_ms);
    print("  an edit in the window's own thread", edits_ms);
    print("  from the mouse to the field", fields_ms);
    print("  from the mouse to the painted map", maps_ms);
    std::printf("  fresh maps a second: %.0f\n", 1000.0 / median(maps_ms));
}

} // namespace

int main(int argc, char** argv)
{
    const QTemporaryDir home;
    qputenv("XDG_CONFIG_HOME", home.path().toUtf8());
    const QApplication app(argc, argv);
    files::set_identity(*QCoreApplication::instance());
    const auto catalog = std::make_shared<const catalog::Catalog>(files::load_guidance(QString()).catalog);
    desk::Settings settings;
    desk::Window window(catalog, settings, home.path());
    window.show();
    window.show_example();
    for (const QSize& size : {QSize(1280, 800), QSize(1920, 1080)}) {
        drag(window, size);
    }
    return 0;
}
