#include "core/assess/calibrate.hpp"

#include <cmath>

namespace loam::assess {

namespace {

constexpr std::int64_t enough_readings = 3; // basking spot, warm and cool side; common practice, no source
constexpr Judgement not_known{Verdict::not_known, Direction::none};
constexpr Judgement note{Verdict::fits, Direction::none};

std::string measure_name(climate::Measure measure)
{
    switch (measure) {
    case climate::Measure::surface:
        return "surface";
    case climate::Measure::operative:
        return "operative";
    case climate::Measure::ground:
        break;
    }
    return "ground";
}

void report_inconsistent(Notes& notes, const Housed& housed, const ReadingResult& row)
{
    const bool above = *row.residual_k > 0.0;
    report(notes, "reading.inconsistent", {Verdict::not_known, above ? Direction::above : Direction::below},
           housed.at(row.id),
           because("rule.readings",
                   {{"low", row.after_c->low, "degC"},
                    {"likely", row.after_c->likely, "degC"},
                    {"high", row.after_c->high, "degC"},
                    {"value", row.value_c, "degC"},
                    {"deviations", std::abs(*row.surprise), "1"}},
                   {{"reading", row.id}, {"measure", measure_name(row.measure)}}));
}

void report_reading(Notes& notes, const Housed& housed, const ReadingResult& row, std::size_t index)
{
    const auto why = [&] { return because("rule.readings", {}, {{"reading", row.id}}); };
    switch (row.use) {
    case ReadingUse::used:
        if (row.other_conditions) {
            report(notes, "reading.other-conditions", note, housed.at(row.id),
                   because("rule.readings",
                           {{"room", row.room_c, "degC"}, {"alike_within", climate::alike_within_k, "K"}},
                           {{"reading", row.id}}));
        }
        break;
    case ReadingUse::not_fitted: // told once for all of them
        break;
    case ReadingUse::inconsistent:
        report_inconsistent(notes, housed, row);
        break;
    case ReadingUse::outside_box:
        report(notes, "reading.outside-box", not_known, housed.at(row.id), why());
        break;
    case ReadingUse::lamps_not_stated:
        report(notes, "reading.lamps-not-stated", not_known, housed.at(row.id), why()).remedy =
            state(housed.pointer("/readings/" + std::to_string(index) + "/lamps"));
        break;
    case ReadingUse::dimmer_not_stated:
        report(notes, "reading.dimmer-not-stated", not_known, housed.at(row.id), why());
        break;
    }
}

} // namespace

void report_readings(Notes& notes, const Housed& housed, const CalibrationResult& result)
{
    bool any_not_fitted = false;
    for (std::size_t i = 0; i < result.readings.size(); ++i) {
        report_reading(notes, housed, result.readings[i], i);
        any_not_fitted = any_not_fitted || result.readings[i].use == ReadingUse::not_fitted;
    }
    const auto count = static_cast<double>(result.readings.size());
    if (any_not_fitted && result.chance) {
        report(
            notes, "readings.do-not-fit", not_known, housed.at(),
            because("rule.readings",
                    {{"count", count, "1"}, {"chi_square", *result.chi_square, "1"}, {"chance", *result.chance, "1"}},
                    {}));
    } else if (any_not_fitted) {
        report(notes, "readings.not-computable", not_known, housed.at(), because("rule.readings", {}, {}));
    }
    if (result.applied && result.used < enough_readings) {
        report(notes, "readings.too-few", note, housed.at(),
               because("rule.readings",
                       {{"count", static_cast<double>(result.used), "1"},
                        {"needed", static_cast<double>(enough_readings), "1"}},
                       {}));
    }
}

} // namespace loam::assess
