// How long the window's thread is busy with one event while a user edits at random: the longest, and how many took more
// than 50 ms. Run: QT_QPA_PLATFORM=offscreen bench_stalls [edits], on an idle machine.
#include <QApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QThread>
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <map>
#include <random>

#include "app/desk/session/settings.hpp"
#include "app/desk/views/sheet.hpp"
#include "app/desk/window.hpp"
#include "app/files/guidance.hpp"
#include "app/files/identity.hpp"

using namespace loam;

namespace {

using Clock = std::chrono::steady_clock;

struct Taken {
    double ms = 0.0;
    QString what;
};

// Times every event that the loop hands out; what it sends on meanwhile is part of it.
class Timed : public QApplication {
public:
    using QApplication::QApplication;

    bool notify(QObject* receiver, QEvent* event) override
    {
        if (QThread::currentThread() != thread() || !counting || depth_ > 0) { // the worker has events of its own
            return QApplication::notify(receiver, event);
        }
        const QString what = QStringLiteral("%1 %2, event %3")
                                 .arg(QString::fromLatin1(receiver->metaObject()->className()), receiver->objectName())
                                 .arg(static_cast<int>(event->type()));
        ++depth_;
        const auto begin = Clock::now();
        const bool taken = QApplication::notify(receiver, event);
        const double ms = std::chrono::duration<double, std::milli>(Clock::now() - begin).count();
        --depth_;
        all.push_back({ms, what});
        return taken;
    }

    std::vector<Taken> all;
    bool counting = false;

private:
    int depth_ = 0;
};

void wait(int ms)
{
    const auto until = Clock::now() + std::chrono::milliseconds(ms);
    while (Clock::now() < until) {
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents | QEventLoop::AllEvents, 5);
    }
}

void press(QWidget& widget, int key, Qt::KeyboardModifiers with = Qt::NoModifier, const QString& text = {})
{
    QCoreApplication::postEvent(&widget, new QKeyEvent(QEvent::KeyPress, key, with, text));
    QCoreApplication::postEvent(&widget, new QKeyEvent(QEvent::KeyRelease, key, with, text));
    QCoreApplication::processEvents();
}

void edit_drawing(desk::Sheet& sheet, std::mt19937& random)
{
    constexpr Qt::Key keys[] = {Qt::Key_Left, Qt::Key_Right, Qt::Key_Up, Qt::Key_Down, Qt::Key_R, Qt::Key_Tab};
    const Qt::Key key = keys[random() % std::size(keys)];
    sheet.setFocus();
    press(sheet, key, key == Qt::Key_Tab || key == Qt::Key_R ? Qt::NoModifier : Qt::ControlModifier);
}

void edit_form(desk::Window& window, QListWidget& chapters, std::mt19937& random)
{
    chapters.setCurrentRow(static_cast<int>(random() % static_cast<unsigned>(chapters.count())));
    QList<QLineEdit*> fields;
    for (QLineEdit* field : window.findChild<QWidget*>(QStringLiteral("form"))->findChildren<QLineEdit*>()) {
        if (field->isVisible() && field->isEnabled() && !field->isReadOnly()) {
            fields << field;
        }
    }
    if (fields.isEmpty()) {
        return;
    }
    QLineEdit& field = *fields[static_cast<qsizetype>(random() % static_cast<unsigned>(fields.size()))];
    field.setFocus();
    field.selectAll();
    const QString figure = QString::number(random() % 90);
    for (const QChar digit : figure) {
        press(field, Qt::Key_0 + digit.digitValue(), Qt::NoModifier, digit);
    }
    press(field, Qt::Key_Return);
}

} // namespace

int main(int argc, char** argv)
{
    QTemporaryDir home;
    qputenv("XDG_CONFIG_HOME", home.path().toUtf8());
    qputenv("XDG_DATA_HOME", home.path().toUtf8());
    Timed application(argc, argv);
    files::set_identity(application);
    const int edits = argc > 1 ? std::atoi(argv[1]) : 1000;
    desk::Settings settings;
    const auto catalog = std::make_shared<const catalog::Catalog>(files::load_guidance(QString()).catalog);
    desk::Window window(catalog, settings, home.path());
    window.resize(1280, 800);
    window.show();
    window.show_example();
    while (!window.up_to_date()) {
        wait(50);
    }
    auto& chapters = *window.findChild<QListWidget*>(QStringLiteral("chapters"));
    auto& tabs = *window.findChild<QTabWidget*>(QStringLiteral("resultTabs"));
    auto& sheet = *window.findChild<desk::Sheet*>(QStringLiteral("sheet"));
    std::mt19937 random(2026);
    application.counting = true;
    for (int edit = 0; edit < edits; ++edit) {
        if (edit % 25 == 0) {
            tabs.setCurrentIndex(static_cast<int>(random() % static_cast<unsigned>(tabs.count())));
        }
        if (random() % 2 == 0) {
            edit_drawing(sheet, random);
        } else {
            edit_form(window, chapters, random);
        }
        wait(40); // a quick hand; the work of the one before is often still going on
    }
    application.counting = false;
    std::sort(application.all.begin(), application.all.end(),
              [](const Taken& a, const Taken& b) { return a.ms > b.ms; });
    const auto over =
        std::count_if(application.all.begin(), application.all.end(), [](const Taken& one) { return one.ms > 50.0; });
    std::printf("%d edits, %zu events, %td over 50 ms; the longest:\n", edits, application.all.size(), over);
    for (std::size_t i = 0; i < std::min<std::size_t>(12, application.all.size()); ++i) {
        std::printf("%8.1f ms  %s\n", application.all[i].ms, qPrintable(application.all[i].what));
    }
    return 0;
}
