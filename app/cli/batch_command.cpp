#include <QCoreApplication>
#include <QFileInfo>

#include <unistd.h>

#include <cstdio>
#include <mutex>
#include <set>

#include "app/batch/fingerprint.hpp"
#include "app/batch/job.hpp"
#include "app/batch/lent.hpp"
#include "app/batch/list.hpp"
#include "app/cli/inputs.hpp"
#include "app/cli/say.hpp"
#include "app/files/bytes.hpp"
#include "app/files/guidance.hpp"
#include "app/words/language.hpp"
#include "core/catalog/csv.hpp"

namespace loam::cli {

namespace {

std::optional<batch::Asked> asked_of(const Arguments& arguments)
{
    const auto out = arguments.value("--out");
    if (!out || out == QStringLiteral("-")) {
        tell(say("“batch” needs --out with the name of a folder."));
        return std::nullopt;
    }
    batch::Asked asked;
    asked.folder = *out;
    if (const auto given = arguments.value("--slice")) {
        const auto slice = batch::slice_of(*given);
        if (!slice) {
            tell(say("“%1” is no slice such as 2/8: the second of eight.").arg(*given));
            return std::nullopt;
        }
        asked.slice = *slice;
    }
    if (const auto given = arguments.value("--row")) {
        bool good = false;
        asked.row = given->toUInt(&good);
        if (!good || *asked.row < 2 || arguments.has("--slice")) {
            tell(say("--row takes the number of a row as a spreadsheet counts, from 2, and no --slice beside it."));
            return std::nullopt;
        }
    }
    return asked;
}

// The bytes of a list; nullopt and a message where they can't be read.
std::optional<QByteArray> bytes_of(const QString& path)
{
    files::Bytes file = files::read_bytes(path, static_cast<qint64>(catalog::csv::largest_text_bytes));
    if (!file.error.isEmpty()) {
        tell(file.error);
        return std::nullopt;
    }
    return std::move(file.bytes);
}

Exit refuse(const QString& path, const QStringList& errors)
{
    for (const QString& error : errors) {
        tell(files::shown_path(path) + QStringLiteral(": ") + error);
    }
    return Exit::bad_input;
}

// Named in each language that a row may ask for; the price lists that the user gave are in the words they came in.
std::map<QString, catalog::Catalog> catalogs_for(const Inputs& inputs, const batch::AdopterList& list,
                                                 const QString& usual, bool own_prices)
{
    std::map<QString, catalog::Catalog> catalogs{{usual, inputs.catalog}};
    for (const catalog::csv::Row& row : list.rows) {
        const QString language = text(batch::cell(list, row, "language"));
        if (!words::is_language(language) || catalogs.count(language) > 0) {
            continue;
        }
        words::speak(language, QLocale(language));
        catalog::Catalog named = files::load_guidance().catalog;
        if (own_prices) {
            named.prices = inputs.catalog.prices;
        }
        catalogs.emplace(language, std::move(named));
    }
    words::speak(usual, QLocale(usual));
    return catalogs;
}

std::variant<batch::Job, Exit> job_of(const Arguments& arguments)
{
    Arguments for_template = arguments;
    for_template.files = {arguments.files.front()};
    auto read = read_inputs(for_template);
    if (const Exit* refused = std::get_if<Exit>(&read)) {
        return *refused;
    }
    Inputs& inputs = std::get<Inputs>(read);
    const auto bytes = bytes_of(arguments.files.back());
    if (!bytes) {
        return Exit::file_trouble;
    }
    batch::ListRead list = batch::read_list(*bytes);
    for (const QString& warning : list.warnings) {
        tell(files::shown_path(arguments.files.back()) + QStringLiteral(": ") + warning);
    }
    if (!list.errors.isEmpty()) {
        return refuse(arguments.files.back(), list.errors);
    }
    batch::Job job;
    job.plan = std::move(inputs.plans.front());
    job.list = std::move(list.list);
    job.date = inputs.date;
    if (const auto path = arguments.value("--lent")) {
        const auto text = bytes_of(*path);
        if (!text) {
            return Exit::file_trouble;
        }
        batch::LentRead lent = batch::read_lent(*text, inputs.catalog.prices, job.plan);
        if (!lent.errors.isEmpty()) {
            return refuse(*path, lent.errors);
        }
        job.lent = std::move(lent.lent);
    }
    job.language = arguments.value("--language").value_or(QStringLiteral("en"));
    job.units = inputs.formatter.system();
    job.sheets = chosen_sheets(arguments);
    job.paper = arguments.value("--paper") == QStringLiteral("letter") ? sheets::Paper::letter : sheets::Paper::a4;
    job.printed_by = printed_by(arguments);
    job.catalogs = catalogs_for(inputs, job.list, job.language, arguments.has("--prices"));
    job.guidance = batch::guidance_fingerprint(files::user_guidance_folder());
    job.program = QStringLiteral("loamstead %1, Qt %2").arg(QCoreApplication::applicationVersion(), qVersion());
    return job;
}

// On a terminal one line that is written over; else, where it is asked for, a line for each step that a program reads.
std::function<void(std::size_t, std::size_t)> progress_of(const Arguments& arguments)
{
    const bool terminal = isatty(STDERR_FILENO) == 1;
    if (!terminal && !arguments.has("--progress")) {
        return {};
    }
    return [terminal](std::size_t done, std::size_t of) {
        std::fprintf(stderr, terminal ? "\r%zu of %zu%s" : "%zu of %zu%s\n", done, of,
                     terminal && done == of ? "\n" : "");
        std::fflush(stderr);
    };
}

// Rows and columns only: what a cell holds may be somebody's name, and stands in failed.csv.
void tell_failures(const std::vector<batch::RowProblem>& failed)
{
    constexpr std::size_t most_told = 20;
    std::set<std::size_t> rows;
    for (const batch::RowProblem& one : failed) {
        if (rows.insert(one.row).second && rows.size() <= most_told) {
            tell(one.column.isEmpty() ? say("row %1 fails.").arg(one.row)
                                      : say("row %1 fails, column %2.").arg(one.row).arg(one.column));
        }
    }
    if (!rows.empty()) {
        tell(say("Rows that fail: %1. failed.csv in the folder tells why, as soon as all others are done.")
                 .arg(rows.size()));
    }
}

Exit told(const batch::Outcome& outcome, const batch::Asked& asked)
{
    if (outcome.trouble == batch::Trouble::folder) {
        tell(outcome.error);
        return Exit::file_trouble;
    }
    tell_failures(outcome.failed);
    if (outcome.trouble == batch::Trouble::row) {
        tell(outcome.error);
        return Exit::bad_input;
    }
    for (const std::size_t row : outcome.touched) {
        tell(say("The sheets of row %1 were changed since they were made, and are left as they are.").arg(row));
    }
    QString done = say("%1 made, %2 were there before.").arg(outcome.made).arg(outcome.before);
    if (!outcome.complete) {
        done = asked.slice.of > 1
                   ? say("%1 When all slices are in one folder, the same without --slice puts them together.").arg(done)
                   : say("%1 The rest is still to be made.").arg(done);
    }
    const Exit written = put_out((done + QLatin1Char('\n')).toUtf8());
    return written != Exit::done || outcome.failed.empty() ? written : Exit::bad_input;
}

} // namespace

Exit run_batch(const Arguments& arguments)
{
    auto asked = asked_of(arguments);
    if (!asked) {
        return Exit::wrong_usage;
    }
    const auto job = job_of(arguments);
    if (const Exit* refused = std::get_if<Exit>(&job)) {
        return *refused;
    }
    asked->on_progress = progress_of(arguments);
    return told(batch::run(std::get<batch::Job>(job), *asked), *asked);
}

} // namespace loam::cli
