#include "app/cli/inputs.hpp"
#include "app/cli/say.hpp"
#include "app/sheets/sheets.hpp"

namespace loam::cli {

std::optional<std::vector<sheets::Sheet>> chosen_sheets(const Arguments& arguments)
{
    const auto given = arguments.value("--only");
    if (!given) {
        return std::nullopt;
    }
    const QStringList only = given->split(QLatin1Char(','));
    std::vector<sheets::Sheet> wanted;
    for (const sheets::SheetName& one : sheets::sheet_names()) {
        if (only.contains(QString::fromLatin1(one.name))) {
            wanted.push_back(one.sheet);
        }
    }
    return wanted;
}

sheets::PrintedBy printed_by(const Arguments& arguments)
{
    return {arguments.value("--club").value_or(QString()), arguments.value("--contact").value_or(QString())};
}

Exit run_sheet(const Arguments& arguments)
{
    const auto out = arguments.value("--out");
    if (!out || out == QStringLiteral("-")) {
        tell(say("“sheet” needs --out with the name of a PDF file."));
        return Exit::wrong_usage;
    }
    const auto read = read_inputs(arguments);
    if (const Exit* refused = std::get_if<Exit>(&read)) {
        return *refused;
    }
    const Inputs& inputs = std::get<Inputs>(read);
    const plan::Plan& plan = inputs.plans.front();
    const assess::Assessment assessment = assessed(inputs);
    const bool letter = arguments.value("--paper") == QStringLiteral("letter");
    const sheets::Request request{plan,
                                  assessment,
                                  inputs.catalog,
                                  inputs.formatter,
                                  letter ? sheets::Paper::letter : sheets::Paper::a4,
                                  chosen_sheets(arguments).value_or(sheets::usual_sheets(assessment)),
                                  printed_by(arguments)};
    if (const auto error = sheets::write_pdf(request, *out)) {
        tell(*error);
        return Exit::file_trouble;
    }
    return Exit::done;
}

} // namespace loam::cli
