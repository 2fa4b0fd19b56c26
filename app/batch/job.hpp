// All that a batch is made of, and what of it comes to pass.
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>
#include <chrono>
#include <functional>
#include <map>
#include <optional>
#include <stop_token>
#include <vector>

#include "app/batch/adopter.hpp"
#include "app/sheets/paper.hpp"
#include "app/sheets/printed_by.hpp"

namespace loam::batch {

// Which of n machines this one is; 1 of 1 does it all.
struct Slice {
    std::size_t index = 1;
    std::size_t of = 1;
    friend bool operator==(const Slice&, const Slice&) = default;
};

// "2/8". nullopt where it is no such slice; at most 1000.
std::optional<Slice> slice_of(const QString& text);

struct Job {
    plan::Plan plan; // the template
    AdopterList list;
    std::vector<plan::OwnedItem> lent;
    std::map<QString, catalog::Catalog> catalogs; // by language, prices included; each that a row may ask for
    std::chrono::year_month_day date{};
    std::optional<std::vector<sheets::Sheet>> sheets; // absent: the usual ones of each adopter
    sheets::Paper paper = sheets::Paper::a4;
    sheets::PrintedBy printed_by{};          // at the head of each sheet
    QString language = QStringLiteral("en"); // of the club's own papers, and of rows that don't say
    words::UnitSystem units = words::UnitSystem::metric;
    QByteArray guidance; // a fingerprint of the user's own files
    QString program;     // name and version

    Template shared() const { return {plan, catalogs.at(language), lent, language, units}; }
};

struct Asked {
    QString folder;
    Slice slice{};
    std::optional<std::size_t> row; // only this one, again
    std::function<void(std::size_t done, std::size_t of)> on_progress{};
    std::stop_token stop{};
};

enum class Trouble {
    none,
    folder, // it holds something else, is in use, or can't be written
    row     // the one row asked for is not there or fails
};

struct Outcome {
    Trouble trouble = Trouble::none;
    QString error; // a sentence, without names of adopters
    std::vector<RowProblem> failed;
    std::size_t made = 0;             // in this run
    std::size_t before = 0;           // already there
    std::vector<std::size_t> touched; // rows whose files were changed by someone since; left as they are
    bool stopped = false;
    bool complete = false; // every good row has its file, and the order, the summary and the failures are written
};

// Needs a QGuiApplication. Uses all cores. Speaks the languages of the rows one after another and `job.language` at the
// end (words::speak), so nothing else may be shown meanwhile. Never throws on bad rows.
Outcome run(const Job& job, const Asked& asked);

} // namespace loam::batch
