#include "app/cli/inputs.hpp"

#include <QDate>

#include <algorithm>
#include <utility>

#include "app/cli/say.hpp"
#include "app/files/bytes.hpp"
#include "app/files/guidance.hpp"
#include "app/files/plan_file.hpp"
#include "app/files/price_file.hpp"
#include "app/words/language.hpp"
#include "core/assess/assess.hpp"

namespace loam::cli {

namespace {

std::chrono::year_month_day calendar_day(const QDate& date)
{
    return {std::chrono::year(date.year()), std::chrono::month(static_cast<unsigned>(date.month())),
            std::chrono::day(static_cast<unsigned>(date.day()))};
}

std::optional<std::chrono::year_month_day> date_of(const Arguments& arguments)
{
    const auto given = arguments.value("--date");
    const QDate date = given ? QDate::fromString(*given, QStringLiteral("yyyy-MM-dd")) : QDate::currentDate();
    if (!date.isValid()) {
        tell(say("“%1” is not a date of the form YYYY-MM-DD.").arg(*given));
        return std::nullopt;
    }
    return calendar_day(date);
}

// English as always, or a translation with the marks of its own numbers.
words::Formatter formatter_of(const Arguments& arguments)
{
    const QString asked = arguments.value("--units").value_or(QStringLiteral("metric"));
    const words::UnitSystem units = asked == QStringLiteral("us")     ? words::UnitSystem::us
                                    : asked == QStringLiteral("both") ? words::UnitSystem::both
                                                                      : words::UnitSystem::metric;
    const QString language = arguments.value("--language").value_or(QStringLiteral("en"));
    if (language != QStringLiteral("en")) {
        words::speak(language, QLocale(language));
    }
    return words::formatter_in(language, units);
}

// Each message behind the name of its file; one that names the file itself stands alone.
Exit refuse(files::Failure failure, const QString& path, const QStringList& errors)
{
    if (failure == files::Failure::unreadable) {
        tell(errors);
        return Exit::file_trouble;
    }
    for (const QString& error : errors) {
        tell(files::shown_path(path) + QStringLiteral(": ") + error);
    }
    return Exit::bad_input;
}

// Several are put together, so that each thing is bought where it is best.
Exit read_price_lists(const QStringList& paths, catalog::Catalog& catalog)
{
    Exit worst = Exit::done;
    std::vector<catalog::PriceList> lists;
    for (const QString& path : paths) {
        files::PriceFile file = files::read_prices(path);
        if (file.failure != files::Failure::none) {
            worst = std::max(worst, refuse(file.failure, path, file.errors));
        } else if (!lists.empty() && file.prices.currency != lists.front().currency) {
            tell(say("%1: the list is in %2 and the first one in %3. Lists of one currency can be put together.")
                     .arg(files::shown_path(path), text(file.prices.currency), text(lists.front().currency)));
            worst = std::max(worst, Exit::bad_input);
        } else {
            lists.push_back(std::move(file.prices));
        }
    }
    if (!lists.empty()) {
        catalog.prices = catalog::put_together(lists);
    }
    return worst;
}

} // namespace

std::variant<Inputs, Exit> read_inputs(const Arguments& arguments)
{
    const auto date = date_of(arguments);
    if (!date) {
        return Exit::wrong_usage;
    }
    Inputs inputs{{}, {}, *date, formatter_of(arguments)};
    // All files are looked at before giving up, so that every problem is told at once.
    Exit worst = Exit::done;
    for (const QString& path : arguments.files) {
        files::PlanFile file = files::read_plan(path);
        if (file.failure != files::Failure::none) {
            worst = std::max(worst, refuse(file.failure, path, file.errors));
        }
        inputs.plans.push_back(std::move(file.plan));
    }
    files::Guidance guidance = files::load_guidance();
    tell(guidance.problems);
    inputs.catalog = std::move(guidance.catalog);
    worst = std::max(worst, read_price_lists(arguments.all("--prices"), inputs.catalog));
    if (worst != Exit::done) {
        return worst;
    }
    return inputs;
}

std::variant<PriceInputs, Exit> read_price_inputs(const Arguments& arguments)
{
    const auto date = date_of(arguments);
    if (!date) {
        return Exit::wrong_usage;
    }
    PriceInputs inputs{{}, *date};
    Exit worst = Exit::done;
    for (const QString& path : arguments.files) {
        files::PriceFile file = files::read_prices(path);
        if (file.failure != files::Failure::none) {
            worst = std::max(worst, refuse(file.failure, path, file.errors));
        }
        inputs.lists.push_back(std::move(file.prices));
    }
    if (worst != Exit::done) {
        return worst;
    }
    return inputs;
}

assess::Assessment assessed(const Inputs& inputs, std::size_t plan)
{
    assess::Workspace workspace;
    return *assess::assess(inputs.plans[plan], inputs.catalog, inputs.date, workspace); // never stopped
}

} // namespace loam::cli
