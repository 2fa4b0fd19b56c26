// How a result explains itself: where a figure comes from, how sure it is, and what follows from it.
// Core modules return codes and figures; app/words makes sentences of them.
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace loam {

// How well a figure is confirmed, from best to worst.
enum class Confidence {
    confirmed, // read in the named source
    derived,   // computed by us from a stated equation or from confirmed figures
    secondary, // seen in a page that reports the source
    memory,    // from memory of the named source, not checked
    practice   // common practice, no source
};

struct Source {
    std::string citation;
    Confidence confidence = Confidence::memory;
    friend bool operator==(const Source&, const Source&) = default;
};

// The 5th, 50th and 95th percentile of a figure under the stated uncertainty of its inputs. low <= likely <= high.
struct Range {
    double low = 0.0;
    double likely = 0.0;
    double high = 0.0;
    friend bool operator==(const Range&, const Range&) = default;
};

constexpr Range exactly(double value)
{
    return {value, value, value};
}

// What a figure should lie between; an absent end is unbounded.
struct Target {
    std::optional<double> min;
    std::optional<double> max;
    Source source;
    friend bool operator==(const Target&, const Target&) = default;
};

enum class Verdict { fits, tight, falls_short, danger, not_known };
enum class Direction { none, above, below };

struct Judgement {
    Verdict verdict = Verdict::not_known;
    Direction direction = Direction::none;
    friend bool operator==(const Judgement&, const Judgement&) = default;
};

// The verdict of a range against a target: `falls_short` where the likely value misses it, `tight` where only an
// end does, `fits` where the whole range lies inside. A target without any bound is `not_known`.
Judgement judge(const Range& figure, const Target& target);

// One number that went into a result. `unit` is a UCUM-like short form ("m", "degC", "W", "1" for a pure number).
struct Input {
    std::string name;
    double value = 0.0;
    std::string unit;
    friend bool operator==(const Input&, const Input&) = default;
};

// A choice of words that went into a result, for example a material's id.
struct Label {
    std::string name;
    std::string text;
    friend bool operator==(const Label&, const Label&) = default;
};

// Why a figure is what it is: the rule or equation, the numbers that went in, the source.
struct Because {
    std::string rule; // a code that app/words knows
    std::vector<Input> inputs;
    std::vector<Label> labels;
    Source source;
    friend bool operator==(const Because&, const Because&) = default;
};

// A figure with its unit, its range and its reason.
struct Figure {
    Range range;
    std::string unit;
    Because because;
    friend bool operator==(const Figure&, const Figure&) = default;
};

// The smallest change that would cure a finding; `amounts` fill the sentence that app/words keeps for `code`.
struct Remedy {
    std::string code;
    std::vector<Input> amounts;
    std::vector<Label> labels;
    friend bool operator==(const Remedy&, const Remedy&) = default;
};

// Something the keeper must know. `where` is the id of a plan element or a JSON Pointer into the plan.
struct Finding {
    std::string code;
    Verdict verdict = Verdict::not_known;
    Direction direction = Direction::none;
    std::string where;
    std::string enclosure; // id of the enclosure it belongs to, empty for the site
    Because because;       // its inputs and labels also fill the finding's sentence
    std::optional<Remedy> remedy;
    friend bool operator==(const Finding&, const Finding&) = default;
};

} // namespace loam
