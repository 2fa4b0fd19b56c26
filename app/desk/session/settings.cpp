#include "app/desk/session/settings.hpp"

#include <QFileInfo>
#include <QLocale>

#include "app/words/language.hpp"

namespace loam::desk {

namespace {

constexpr int most_recent_files = 10;

// Countries that measure in inches and print on Letter; everyone else is metric and prints on A4.
bool customary_country()
{
    return QLocale::system().measurementSystem() == QLocale::ImperialUSSystem;
}

} // namespace

Settings::Settings(QObject* parent) : QObject(parent) {}

words::UnitSystem Settings::units() const
{
    const QString kept = store_.value(QStringLiteral("units")).toString();
    if (kept.isEmpty()) {
        return customary_country() ? words::UnitSystem::us : words::UnitSystem::metric;
    }
    return kept == QStringLiteral("us") ? words::UnitSystem::us : words::UnitSystem::metric;
}

void Settings::set_units(words::UnitSystem units)
{
    if (units == this->units()) {
        return;
    }
    store_.setValue(QStringLiteral("units"),
                    units == words::UnitSystem::us ? QStringLiteral("us") : QStringLiteral("metric"));
    emit unitsChanged(units);
}

QString Settings::chosen_language() const
{
    const QString kept = store_.value(QStringLiteral("language")).toString();
    return words::is_language(kept) ? kept : QString();
}

QString Settings::language() const
{
    const QString chosen = chosen_language();
    return chosen.isEmpty() ? words::best_language(QLocale::system().uiLanguages()) : chosen;
}

void Settings::set_language(const QString& code)
{
    store_.setValue(QStringLiteral("language"), code);
}

Theme Settings::theme() const
{
    const QString kept = store_.value(QStringLiteral("theme")).toString();
    if (kept == QStringLiteral("light")) {
        return Theme::light;
    }
    return kept == QStringLiteral("dark") ? Theme::dark : Theme::system;
}

void Settings::set_theme(Theme theme)
{
    const QStringList names{QStringLiteral("system"), QStringLiteral("light"), QStringLiteral("dark")};
    store_.setValue(QStringLiteral("theme"), names.at(static_cast<int>(theme)));
    emit themeChanged(theme);
}

sheets::Paper Settings::paper() const
{
    const QString kept = store_.value(QStringLiteral("paper")).toString();
    if (kept.isEmpty()) {
        return customary_country() ? sheets::Paper::letter : sheets::Paper::a4;
    }
    return kept == QStringLiteral("letter") ? sheets::Paper::letter : sheets::Paper::a4;
}

void Settings::set_paper(sheets::Paper paper)
{
    store_.setValue(QStringLiteral("paper"),
                    paper == sheets::Paper::letter ? QStringLiteral("letter") : QStringLiteral("a4"));
}

sheets::PrintedBy Settings::printed_by() const
{
    return {store_.value(QStringLiteral("printed/name")).toString(),
            store_.value(QStringLiteral("printed/contact")).toString()};
}

void Settings::set_printed_by(const sheets::PrintedBy& by)
{
    store_.setValue(QStringLiteral("printed/name"), by.name);
    store_.setValue(QStringLiteral("printed/contact"), by.contact);
}

QStringList Settings::left_out_sheets() const
{
    return store_.value(QStringLiteral("sheets/leftOut")).toStringList();
}

void Settings::set_left_out_sheets(const QStringList& names)
{
    store_.setValue(QStringLiteral("sheets/leftOut"), names);
}

QStringList Settings::price_lists() const
{
    QStringList paths = store_.value(QStringLiteral("prices")).toStringList();
    paths.removeAll(QString());
    return paths;
}

void Settings::set_price_lists(const QStringList& paths)
{
    store_.setValue(QStringLiteral("prices"), paths);
}

QStringList Settings::recent_files() const
{
    return store_.value(QStringLiteral("recent")).toStringList();
}

void Settings::add_recent_file(const QString& path)
{
    QStringList files = recent_files();
    const QString absolute = QFileInfo(path).absoluteFilePath();
    files.removeAll(absolute);
    files.prepend(absolute);
    store_.setValue(QStringLiteral("recent"), QStringList(files.mid(0, most_recent_files)));
    emit recentFilesChanged();
}

void Settings::forget_recent_file(const QString& path)
{
    QStringList files = recent_files();
    files.removeAll(QFileInfo(path).absoluteFilePath());
    store_.setValue(QStringLiteral("recent"), files);
    emit recentFilesChanged();
}

void Settings::clear_recent_files()
{
    store_.remove(QStringLiteral("recent"));
    emit recentFilesChanged();
}

bool Settings::first_start() const
{
    return !store_.value(QStringLiteral("started")).toBool();
}

void Settings::note_started()
{
    store_.setValue(QStringLiteral("started"), true);
}

QByteArray Settings::window_geometry() const
{
    return store_.value(QStringLiteral("window/geometry")).toByteArray();
}

QByteArray Settings::window_layout(const QString& part) const
{
    return store_.value(QStringLiteral("window/") + part).toByteArray();
}

void Settings::keep_window(const QByteArray& geometry)
{
    store_.setValue(QStringLiteral("window/geometry"), geometry);
}

void Settings::keep_layout(const QString& part, const QByteArray& state)
{
    store_.setValue(QStringLiteral("window/") + part, state);
}

} // namespace loam::desk
