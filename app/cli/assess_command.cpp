#include <algorithm>

#include "app/cli/inputs.hpp"
#include "app/cli/say.hpp"
#include "app/report/assessment_json.hpp"
#include "app/report/text_report.hpp"

namespace loam::cli {

namespace {

bool falls_short(const assess::Assessment& assessment)
{
    return std::any_of(assessment.findings.begin(), assessment.findings.end(), [](const Finding& finding) {
        return finding.verdict == Verdict::falls_short || finding.verdict == Verdict::danger;
    });
}

} // namespace

Exit run_assess(const Arguments& arguments)
{
    const auto read = read_inputs(arguments);
    if (const Exit* refused = std::get_if<Exit>(&read)) {
        return *refused;
    }
    const Inputs& inputs = std::get<Inputs>(read);
    const plan::Plan& plan = inputs.plans.front();
    const assess::Assessment assessment = assessed(inputs);
    const QByteArray result =
        arguments.has("--json")
            ? QByteArray::fromStdString(report::assessment_json(assessment, plan, inputs.catalog))
            : report::text_report(assessment, words::Speaker(inputs.formatter, plan, inputs.catalog)).toUtf8();
    const Exit written = put_out(result);
    return written == Exit::done && arguments.has("--strict") && falls_short(assessment) ? Exit::falls_short : written;
}

} // namespace loam::cli
