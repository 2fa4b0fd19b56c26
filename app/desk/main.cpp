// loamstead [PLAN]: the window.
#include <QApplication>
#include <QCommandLineParser>
#include <QMessageBox>
#include <QProcess>
#include <QStandardPaths>
#include <optional>

#include "app/desk/look/theme.hpp"
#include "app/desk/session/plan_files.hpp"
#include "app/desk/session/settings.hpp"
#include "app/desk/window.hpp"
#include "app/files/guidance.hpp"
#include "app/files/identity.hpp"
#include "app/words/language.hpp"

namespace {

// A broken file of the user's guidance must not keep the window from opening: it is left out, and this is said.
void tell_guidance_problems(const QStringList& problems, QWidget* parent)
{
    if (problems.isEmpty()) {
        return;
    }
    QMessageBox box(QMessageBox::Warning, QObject::tr("Some of your guidance files were left out"),
                    QObject::tr("Your own guidance files have problems (%1). The files named under “Details” are not "
                                "used; everything else is.")
                        .arg(problems.size()),
                    QMessageBox::Ok, parent);
    box.setDetailedText(problems.join(QLatin1Char('\n')));
    box.exec();
}

struct Ended {
    int status = 0;
    std::optional<QString> again; // starts again at once with this plan, empty for none
};

Ended run(QApplication& application)
{
    loam::desk::Settings settings;
    loam::words::speak(settings.language());

    QCommandLineParser parser;
    parser.setApplicationDescription(QObject::tr("Plans indoor enclosures for reptiles and amphibians."));
    parser.addHelpOption();
    parser.addVersionOption();
    parser.addPositionalArgument(QStringLiteral("plan"), QObject::tr("The plan to open."), QStringLiteral("[plan]"));
    parser.process(application);

    loam::desk::apply_theme(application, settings.theme());
    QObject::connect(&settings, &loam::desk::Settings::themeChanged, &application,
                     [&application](loam::desk::Theme theme) { loam::desk::apply_theme(application, theme); });

    loam::files::Guidance guidance = loam::files::load_guidance();
    const auto catalog = std::make_shared<const loam::catalog::Catalog>(std::move(guidance.catalog));
    loam::desk::Window window(catalog, settings, QStandardPaths::writableLocation(QStandardPaths::AppDataLocation));
    window.show();

    const QStringList arguments = parser.positionalArguments();
    const bool recovered = window.offer_recovery();
    if (!recovered) {
        const bool opened = !arguments.isEmpty() && window.files().open(arguments.front());
        if (!opened) {
            window.show_example();
        }
    }
    tell_guidance_problems(guidance.problems, &window);
    settings.note_started();
    const int status = QApplication::exec();
    return {status, window.starts_again_with()};
}

} // namespace

int main(int argc, char** argv)
{
    QApplication application(argc, argv);
    loam::files::set_identity(application);
    QGuiApplication::setDesktopFileName(QStringLiteral("invalid.loamstead.Loamstead"));
    QApplication::setWindowIcon(QIcon(QStringLiteral(":/loamstead/icons/loamstead.svg")));

    const Ended ended = run(application); // settings are on disk once it is left
    if (ended.again) {
        QProcess::startDetached(QCoreApplication::applicationFilePath(),
                                ended.again->isEmpty() ? QStringList() : QStringList{*ended.again});
    }
    return ended.status;
}
