#include "app/words/problems.hpp"

#include <QCoreApplication>
#include <QLocale>

#include "app/words/label_words.hpp"
#include "app/words/sentences.hpp"
#include "core/json/archive.hpp"

namespace loam::words {

namespace {

// The translator finds these texts under "problems".
struct Said {
    Q_DECLARE_TR_FUNCTIONS(problems)
};

QString pattern_words(const QString& pattern)
{
    const std::string text = pattern.toStdString();
    if (text == json::kebab_id) {
        return Said::tr("lower-case letters and digits, in words joined by single hyphens");
    }
    if (text == json::element_id) {
        return Said::tr("letters, digits, hyphens and underscores, beginning with a letter or digit");
    }
    if (text == json::clock_time) {
        return Said::tr("a time of day such as 07:30");
    }
    if (text == json::iso_date) {
        return Said::tr("a date such as 2026-11-25");
    }
    return Said::tr("of the form %1").arg(pattern);
}

QString type_words(const QString& type)
{
    struct Word {
        const char* type;
        const char* text;
    };
    static constexpr Word words[] = {
        {"object", QT_TRANSLATE_NOOP("problems", "an object in braces")},
        {"array", QT_TRANSLATE_NOOP("problems", "a list in square brackets")},
        {"string", QT_TRANSLATE_NOOP("problems", "text in quotation marks")},
        {"number", QT_TRANSLATE_NOOP("problems", "a number")},
        {"integer", QT_TRANSLATE_NOOP("problems", "a whole number")},
        {"boolean", QT_TRANSLATE_NOOP("problems", "true or false")},
        {"null", QT_TRANSLATE_NOOP("problems", "null")},
    };
    for (const Word& word : words) {
        if (type == QLatin1String(word.type)) {
            return Said::tr(word.text);
        }
    }
    return type;
}

QString measure_words(const QString& measure)
{
    if (measure == QStringLiteral("snout-vent")) {
        return Said::tr("the length from snout to vent");
    }
    return measure == QStringLiteral("carapace") ? Said::tr("the length of the shell") : Said::tr("the total length");
}

QString in_form(const QString& value, const QString& form)
{
    if (form == QStringLiteral("pattern")) {
        return pattern_words(value);
    }
    if (form == QStringLiteral("type")) {
        return type_words(value);
    }
    if (form == QStringLiteral("measure")) {
        return measure_words(value);
    }
    if (form == QStringLiteral("bytes")) {
        return QLocale(QLocale::English).formattedDataSize(value.toLongLong(), 1, QLocale::DataSizeTraditionalFormat);
    }
    // A file may hold anything; a message stays readable.
    constexpr qsizetype longest = 120;
    return value.size() > longest ? value.left(longest) + QStringLiteral("…") : value;
}

} // namespace

QString problem_sentence(const json::Problem& problem)
{
    const Sentence* row = find_sentence(file_problem_sentences(), problem.code);
    if (row == nullptr) {
        row = find_sentence(catalog_problem_sentences(), problem.code);
    }
    if (row == nullptr) {
        return Said::tr("This is not right (%1).").arg(QString::fromStdString(problem.code));
    }
    const auto lookup = [&problem](const QString& name, const QString& form) -> std::optional<QString> {
        const std::size_t index = name.toUInt();
        if (index >= problem.args.size()) {
            return std::nullopt;
        }
        return in_form(QString::fromStdString(problem.args[index]), form);
    };
    return fill(translated(row->text), lookup).text;
}

QString problem(const json::Problem& problem)
{
    const QString sentence = problem_sentence(problem);
    return problem.where.empty() ? sentence : QString::fromStdString(problem.where) + QStringLiteral(": ") + sentence;
}

QStringList problems(const json::Problems& problems)
{
    QStringList sentences;
    for (const json::Problem& each : problems) {
        sentences << problem(each);
    }
    return sentences;
}

} // namespace loam::words
