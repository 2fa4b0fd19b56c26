#include <QFileInfo>

#include "app/cli/inputs.hpp"
#include "app/cli/say.hpp"
#include "app/files/bytes.hpp"
#include "app/files/guidance.hpp"
#include "app/files/price_file.hpp"
#include "app/report/price_lists.hpp"

namespace loam::cli {

namespace {

// The list in the form that the new file's ending names. Nothing is written over.
Exit convert(const catalog::PriceList& prices, const QString& out)
{
    if (QFileInfo::exists(out) || QFileInfo(out).isSymLink()) {
        tell(say("“%1” is there already, and nothing is written over. Name another file.").arg(files::shown_path(out)));
        return Exit::file_trouble;
    }
    const QString error = files::write_prices(prices, out);
    if (!error.isEmpty()) {
        tell(error);
    }
    return error.isEmpty() ? Exit::done : Exit::file_trouble;
}

std::optional<QString> wrong_use(const Arguments& arguments)
{
    if (arguments.has("--csv") && arguments.has("--json")) {
        return say("--csv and --json can't both be given.");
    }
    if (arguments.has("--csv") && arguments.files.size() < 2) {
        return say("--csv is for the difference of two lists. To convert one, give --out FILE.csv.");
    }
    const auto out = arguments.value("--out");
    if (out && !out->endsWith(QStringLiteral(".csv"), Qt::CaseInsensitive) &&
        !out->endsWith(QStringLiteral(".json"), Qt::CaseInsensitive)) {
        return say("“%1”: the file's name must end in .csv or .json.").arg(*out);
    }
    return std::nullopt;
}

QByteArray difference_of(const PriceInputs& inputs, const Arguments& arguments)
{
    const catalog::PriceDifference difference = catalog::difference(inputs.lists[0], inputs.lists[1]);
    const report::TwoPriceLists lists{inputs.lists[0], inputs.lists[1], difference};
    if (arguments.has("--json")) {
        return QByteArray::fromStdString(report::price_difference_json(lists));
    }
    if (arguments.has("--csv")) {
        if (!difference.prices_compared) {
            tell(report::not_compared(lists)); // a table has no place for it
        }
        return QByteArray::fromStdString(report::price_difference_csv(lists));
    }
    return report::text_price_difference(lists, words::Formatter()).toUtf8();
}

QByteArray state_of(const PriceInputs& inputs, const Arguments& arguments)
{
    // The shipped guidance alone: its list serves every kind of need, also where the keeper's own list is laid over it.
    const files::Guidance shipped = files::load_guidance(QString());
    const catalog::PriceState state = catalog::price_state(inputs.lists[0], shipped.catalog.prices, inputs.date);
    const report::PriceListShown shown{inputs.lists[0], state, inputs.date};
    const plan::Plan none;
    return arguments.has("--json")
               ? QByteArray::fromStdString(report::price_list_json(shown))
               : report::text_price_list(shown, words::Speaker(words::Formatter(), none, shipped.catalog)).toUtf8();
}

} // namespace

Exit run_prices(const Arguments& arguments)
{
    if (const auto wrong = wrong_use(arguments)) {
        tell(*wrong);
        return Exit::wrong_usage;
    }
    const auto read = read_price_inputs(arguments);
    if (const Exit* refused = std::get_if<Exit>(&read)) {
        return *refused;
    }
    const PriceInputs& inputs = std::get<PriceInputs>(read);
    if (const auto out = arguments.value("--out")) {
        if (const Exit converted = convert(inputs.lists[0], *out); converted != Exit::done) {
            return converted;
        }
    }
    return put_out(inputs.lists.size() == 2 ? difference_of(inputs, arguments) : state_of(inputs, arguments));
}

} // namespace loam::cli
