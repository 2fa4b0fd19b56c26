#include "app/cli/command.hpp"

namespace loam::cli {

namespace {

const Option date{"--date", "YYYY-MM-DD", "assess as of this day; today where it is left out", "", false};
const Option units{"--units", "SYSTEM", "metric (as without it) or us", "metric us", false};
// Only paper has room for two units.
const Option sheet_units{"--units", "SYSTEM", "metric (as without it), us, or both: metric [US]", "metric us both",
                         false};
const Option language{"--language", "CODE", "names and sentences in en (as without it), de or es", "en de es", false};
const Option prices{"--prices", "FILE", "use this price list; several: buy where it is best", "", false, true};

// Of “sheet” and “batch”.
const Option only{"--only", "SHEETS", "only some of the sheets, separated by commas",
                  "decision shopping budget build proving running year holiday winter-rest", true};
const Option paper{"--paper", "SIZE", "a4 (as without it) or letter", "a4 letter", false};

const Option club{"--club", "NAME", "who hands the sheets out, at their head", "", false};
const Option contact{"--contact", "TEXT", "how the reader reaches the club", "", false};

} // namespace

std::span<const Command> commands()
{
    static const std::vector<Command> all{
        {"assess",
         "PLAN",
         "all that is computed: verdicts, climate, loads, costs",
         {{"--json", "", "for programs, as JSON", "", false},
          {"--strict", "", "end with status 1 where something falls short", "", false},
          {"--field", "FILE.csv", "also write the temperatures over the floor, as CSV", "", false},
          date,
          units,
          language,
          prices},
         1,
         1,
         run_assess,
         false,
         "With --field - the CSV takes the report's place; not with --json."},
        {"shop",
         "PLAN...",
         "one shopping list over all the plans named",
         {prices,
          {"--csv", "", "for spreadsheets, as CSV", "", false},
          {"--json", "", "for programs, as JSON", "", false},
          {"--aim", "AIM", "cheapest, fewest-packs or least-left-over", "cheapest fewest-packs least-left-over", false},
          date,
          units,
          language},
         1,
         1000,
         run_shop,
         false,
         "Packs are chosen over all plans together; what they own is set off."},
        {"compare",
         "PLAN PLAN",
         "two plans side by side: space, climate, costs, orders",
         {{"--json", "", "for programs, as JSON", "", false}, date, units, language, prices},
         2,
         2,
         run_compare,
         false,
         "Enclosures go together by their id; what is owned is set off on either side."},
        {"suggest",
         "PLAN",
         "equipment that meets every target, as plans",
         {{"--json", "", "for programs, as JSON", "", false},
          {"--out", "DIR", "write each suggestion there, as a plan", "", false},
          {"--budget", "AMOUNT", "at most this to begin with, typical prices", "", false},
          {"--keep-box", "", "keep the box even where it is too small", "", false},
          date,
          units,
          language,
          prices},
         1,
         1,
         run_suggest,
         false,
         "What heats in the plan is replaced; animals, bed, fittings and UV lamps stay."},
        {"prices",
         "PRICES [PRICES]",
         "a price list in short, or how two differ",
         {{"--json", "", "for programs, as JSON", "", false},
          {"--csv", "", "the difference for spreadsheets, as CSV", "", false},
          {"--out", "FILE", "also write the first list there, as .csv or .json", "", false},
          {"--date", "YYYY-MM-DD", "the day of which the age is; today where it is left out", "", false}},
         1,
         2,
         run_prices,
         false,
         "Packs go together by their ids; in two currencies prices are not compared."},
        {"sheet",
         "PLAN",
         "the printed sheets as a PDF file",
         {{"--out", "FILE.pdf", "where the sheets go; must be given", "", false},
          paper,
          only,
          club,
          contact,
          date,
          sheet_units,
          language,
          prices},
         1,
         1,
         run_sheet,
         true,
         "SHEETS are decision, shopping, budget, build, proving, running (the card beside\n"
         "the enclosure), year (twelve months to tick off), holiday and winter-rest\n"
         "(where one is asked for)."},
        {"calendar",
         "PLAN",
         "what to do on which day, for your calendar program",
         {{"--out", "FILE.ics", "where the calendar goes; must be given, - prints it", "", false},
          {"--start", "YYYY-MM-DD", "the first day of care; must be given", "", false},
          date,
          units,
          language,
          prices},
         1,
         1,
         run_calendar,
         false,
         "Reading it in again replaces what it said before, as long as the plan's title\n"
         "stays the same. Give it a calendar of its own, which can be deleted whole."},
        {"batch",
         "PLAN LIST.csv",
         "the sheets of each row of a list, and one order over all",
         {{"--out", "DIR", "the folder for all of it; must be given", "", false},
          {"--slice", "I/N", "only this machine's part of the list, as in 2/8", "", false},
          {"--row", "N", "only this row, again; the header is row 1", "", false},
          only,
          paper,
          club,
          contact,
          {"--lent", "FILE.csv", "what the club lends to each: columns item, quantity", "", false},
          {"--progress", "", "tell the progress where there is no terminal, too", "", false},
          date,
          sheet_units,
          language,
          prices},
         2,
         2,
         run_batch,
         true,
         "SHEETS are those of “sheet”. Started again, it goes on where it ended. Language\n"
         "and units are of rows that don't say, and of the order. The manual page names\n"
         "the columns of the list."},
        {"schema",
         "KIND",
         "the JSON Schema of a kind of file",
         {},
         1,
         1,
         run_schema,
         false,
         "KIND is plan, prices, species, rules, materials, devices or assumptions."},
    };
    return all;
}

const Command* find_command(const QString& name)
{
    for (const Command& command : commands()) {
        if (name == QString::fromUtf8(command.name)) {
            return &command;
        }
    }
    return nullptr;
}

} // namespace loam::cli
