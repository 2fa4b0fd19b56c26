#include "app/cli/inputs.hpp"
#include "app/cli/say.hpp"
#include "app/report/comparison.hpp"

namespace loam::cli {

Exit run_compare(const Arguments& arguments)
{
    const auto read = read_inputs(arguments);
    if (const Exit* refused = std::get_if<Exit>(&read)) {
        return *refused;
    }
    const Inputs& inputs = std::get<Inputs>(read);
    const assess::Assessment first = assessed(inputs, 0);
    const assess::Assessment second = assessed(inputs, 1);
    const assess::Comparison comparison = assess::compare(first, second);
    const report::TwoPlans plans{{&first, &second}, comparison};
    const words::Speaker speaker(inputs.formatter, inputs.plans.front(), inputs.catalog);
    return put_out(arguments.has("--json") ? QByteArray::fromStdString(report::comparison_json(plans))
                                           : report::text_comparison(plans, speaker).toUtf8());
}

} // namespace loam::cli
