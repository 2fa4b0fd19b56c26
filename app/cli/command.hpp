// The commands as data: what they take, what they say of themselves, and what runs them.
#pragma once

#include <QString>
#include <QStringList>
#include <map>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "app/cli/exit_status.hpp"

namespace loam::cli {

struct Option {
    std::string_view name;  // "--date"
    std::string_view value; // "YYYY-MM-DD"; empty: a switch
    std::string_view help;
    std::string_view choices; // separated by blanks; empty: any value
    bool list = false;        // several of the choices, separated by commas
    bool repeats = false;     // may be given several times
};

// What the user gave for a command, checked against its options.
struct Arguments {
    QStringList files; // or other words that are no options
    std::map<QString, QStringList> values;

    bool has(std::string_view option) const;
    std::optional<QString> value(std::string_view option) const; // the first
    QStringList all(std::string_view option) const;
};

struct Command {
    std::string_view name;
    std::string_view takes; // "PLAN"
    std::string_view summary;
    std::vector<Option> options;
    std::size_t least_files = 1;
    std::size_t most_files = 1;
    Exit (*run)(const Arguments&) = nullptr;
    bool draws = false; // needs fonts
    std::string_view note{};
};

std::span<const Command> commands();
const Command* find_command(const QString& name); // nullptr where there is none

Exit run_assess(const Arguments& arguments);
Exit run_shop(const Arguments& arguments);
Exit run_compare(const Arguments& arguments);
Exit run_suggest(const Arguments& arguments);
Exit run_prices(const Arguments& arguments);
Exit run_sheet(const Arguments& arguments);
Exit run_calendar(const Arguments& arguments);
Exit run_batch(const Arguments& arguments);
Exit run_schema(const Arguments& arguments);

} // namespace loam::cli
