#include "app/words/language.hpp"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QTranslator>

#include <algorithm>

namespace loam::words {

namespace {

constexpr const char* translator_name = "loam-translator";

QString language_of(const QString& tag)
{
    return tag.left(tag.indexOf(QLatin1Char('-'))).section(QLatin1Char('_'), 0, 0).toLower();
}

void take_off_translators(QCoreApplication& application)
{
    for (QTranslator* each : application.findChildren<QTranslator*>(QLatin1String(translator_name))) {
        QCoreApplication::removeTranslator(each);
        delete each;
    }
}

void put_on_translator(QCoreApplication& application, const QString& file, const QString& folder)
{
    auto* translator = new QTranslator(&application);
    translator->setObjectName(QLatin1String(translator_name));
    if (translator->load(file, folder)) {
        QCoreApplication::installTranslator(translator);
    } else {
        delete translator; // Qt's own may not be installed: its few words stay English
    }
}

} // namespace

const std::vector<Language>& languages()
{
    static const std::vector<Language> all{{QStringLiteral("en"), QStringLiteral("English")},
                                           {QStringLiteral("de"), QStringLiteral("Deutsch")},
                                           {QStringLiteral("es"), QStringLiteral("Español")}};
    return all;
}

bool is_language(const QString& code)
{
    const std::vector<Language>& all = languages();
    return std::any_of(all.begin(), all.end(), [&code](const Language& each) { return each.code == code; });
}

QString best_language(const QStringList& wanted)
{
    for (const QString& tag : wanted) {
        if (QString code = language_of(tag); is_language(code)) {
            return code;
        }
    }
    return languages().front().code;
}

QLocale locale_for(const QString& code, const QLocale& region)
{
    const QLocale plain(code);
    return plain.language() == region.language() ? region : plain;
}

void speak(const QString& code, const QLocale& region)
{
    QCoreApplication* application = QCoreApplication::instance();
    const QString language = is_language(code) ? code : languages().front().code;
    take_off_translators(*application);
    if (language != languages().front().code) {
        put_on_translator(*application, QStringLiteral("qtbase_") + language,
                          QLibraryInfo::path(QLibraryInfo::TranslationsPath));
        put_on_translator(*application, QStringLiteral("loamstead_") + language,
                          QStringLiteral(":/loamstead/translations"));
    }
    QLocale::setDefault(locale_for(language, region));
}

Formatter formatter_in(const QString& code, UnitSystem units)
{
    return code == languages().front().code ? Formatter(units) : Formatter(units, QLocale(code));
}

} // namespace loam::words
