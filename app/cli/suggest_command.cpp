#include <QDir>
#include <QFileInfo>

#include "app/cli/inputs.hpp"
#include "app/cli/say.hpp"
#include "app/files/bytes.hpp"
#include "app/files/plan_file.hpp"
#include "app/report/suggestions.hpp"

namespace loam::cli {

namespace {

// The sum as it was typed, in the plan's currency.
std::optional<Money> amount_of(const QString& typed, const plan::Plan& plan)
{
    const auto decimal = Decimal::parse(typed.toStdString());
    const auto currency = Currency::find(plan.currency);
    return decimal && currency && decimal->coefficient >= 0 ? Money::from(*decimal, *currency) : std::nullopt;
}

QString file_for(const suggest::Suggestion& one, const QString& plan_path, const QDir& folder)
{
    QString stem = QFileInfo(plan_path).fileName();
    for (const char* ending : {".json", ".loamstead"}) {
        stem = stem.endsWith(QLatin1String(ending)) ? stem.chopped(QLatin1String(ending).size()) : stem;
    }
    stem = plan_path == QStringLiteral("-") ? QStringLiteral("plan") : stem;
    return folder.filePath(
        QStringLiteral("%1-%2.loamstead.json").arg(stem, QString::fromLatin1(report::merit_id(one.merits.front()))));
}

// Nothing is written over: all names are looked at before the first plan is written. The files in the suggestions'
// order, or what went wrong.
std::variant<QStringList, QString> write_all(const suggest::Result& result, const QString& plan_path,
                                             const QString& out)
{
    const QDir folder(out);
    if (!folder.exists() && !QDir().mkpath(out)) {
        return say("The folder “%1” can't be made.").arg(files::shown_path(out));
    }
    QStringList names;
    for (const suggest::Suggestion& one : result.suggestions) {
        names << file_for(one, plan_path, folder);
        if (QFileInfo::exists(names.back())) {
            return say("“%1” is there already, and nothing is written over. Name another folder.")
                .arg(files::shown_path(names.back()));
        }
    }
    for (qsizetype i = 0; i < names.size(); ++i) {
        const QString error = files::write_plan(result.suggestions[static_cast<std::size_t>(i)].plan, names[i]);
        if (!error.isEmpty()) {
            return error;
        }
    }
    return names;
}

} // namespace

Exit run_suggest(const Arguments& arguments)
{
    const auto read = read_inputs(arguments);
    if (const Exit* refused = std::get_if<Exit>(&read)) {
        return *refused;
    }
    const Inputs& inputs = std::get<Inputs>(read);
    const plan::Plan& plan = inputs.plans.front();
    suggest::Asked asked{.keep_box = arguments.has("--keep-box"), .most_to_begin = {}};
    if (const auto typed = arguments.value("--budget")) {
        asked.most_to_begin = amount_of(*typed, plan);
        if (!asked.most_to_begin) {
            tell(say("“%1” is not an amount of %2, such as 450 or 450.50.")
                     .arg(*typed, QString::fromStdString(plan.currency)));
            return Exit::wrong_usage;
        }
    }
    const suggest::Result result = *suggest::suggest(plan, inputs.catalog, inputs.date, asked); // never stopped
    report::Suggestions suggestions{result, {}};
    if (const auto out = arguments.value("--out")) {
        const auto written = write_all(result, arguments.files.front(), *out);
        if (const auto* error = std::get_if<QString>(&written)) {
            tell(*error);
            return Exit::file_trouble;
        }
        suggestions.files = std::get<QStringList>(written);
    }
    return put_out(
        arguments.has("--json")
            ? QByteArray::fromStdString(report::suggestions_json(suggestions, inputs.catalog, inputs.formatter))
            : report::text_suggestions(suggestions, inputs.catalog, inputs.formatter).toUtf8());
}

} // namespace loam::cli
