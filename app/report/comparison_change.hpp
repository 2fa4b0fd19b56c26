// How far a figure of the second plan is from the first's, by sign and word. Internal to app/report.
#pragma once

#include <QString>

#include "app/words/numbers.hpp"
#include "core/explain.hpp"

namespace loam::report {

// The words for a greater and for a smaller figure: "warmer", "colder".
struct ChangeWords {
    QString more;
    QString less;
};

// "+1.4 °C warmer", by the likely values. What reads as nothing is told by its ends, "wider range"; empty where they
// read alike too.
QString change_of(const Range& from, const Range& to, words::Quantity quantity, const ChangeWords& words,
                  const words::Formatter& format);
QString change_of(const Money& from, const Money& to, const words::Formatter& format);
QString change_of(std::int64_t from, std::int64_t to, const words::Formatter& format);
// "better", "worse"; "other verdict" where one is not known; empty where both are the same.
QString change_of(const Judgement& from, const Judgement& to);

} // namespace loam::report
