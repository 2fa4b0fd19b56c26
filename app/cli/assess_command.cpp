#include <algorithm>

#include "app/cli/inputs.hpp"
#include "app/cli/say.hpp"
#include "app/files/bytes.hpp"
#include "app/report/assessment_json.hpp"
#include "app/report/field_csv.hpp"
#include "app/report/text_report.hpp"

namespace loam::cli {

namespace {

bool falls_short(const assess::Assessment& assessment)
{
    return std::any_of(assessment.findings.begin(), assessment.findings.end(), [](const Finding& finding) {
        return finding.verdict == Verdict::falls_short || finding.verdict == Verdict::danger;
    });
}

bool is_standard_output(const std::optional<QString>& path)
{
    return path == QStringLiteral("-");
}

// What goes to standard output.
QByteArray result_of(const Arguments& arguments, const Inputs& inputs, const assess::Assessment& assessment)
{
    const plan::Plan& plan = inputs.plans.front();
    if (is_standard_output(arguments.value("--field"))) {
        return QByteArray::fromStdString(report::field_csv(assessment));
    }
    if (arguments.has("--json")) {
        return QByteArray::fromStdString(report::assessment_json(assessment, plan, inputs.catalog));
    }
    return report::text_report(assessment, words::Speaker(inputs.formatter, plan, inputs.catalog)).toUtf8();
}

Exit write_field(const QString& path, const assess::Assessment& assessment)
{
    const QString error = files::write_bytes(QByteArray::fromStdString(report::field_csv(assessment)), path);
    if (error.isEmpty()) {
        return Exit::done;
    }
    tell(error);
    return Exit::file_trouble;
}

} // namespace

Exit run_assess(const Arguments& arguments)
{
    const auto field = arguments.value("--field");
    if (is_standard_output(field) && arguments.has("--json")) {
        tell(say("With --json the field can't go to standard output too: give --field the name of a file."));
        return Exit::wrong_usage;
    }
    const auto read = read_inputs(arguments);
    if (const Exit* refused = std::get_if<Exit>(&read)) {
        return *refused;
    }
    const Inputs& inputs = std::get<Inputs>(read);
    const assess::Assessment assessment = assessed(inputs);
    if (field && !is_standard_output(field)) {
        const Exit kept = write_field(*field, assessment);
        if (kept != Exit::done) {
            return kept;
        }
    }
    const Exit written = put_out(result_of(arguments, inputs, assessment));
    return written == Exit::done && arguments.has("--strict") && falls_short(assessment) ? Exit::falls_short : written;
}

} // namespace loam::cli
