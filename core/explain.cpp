#include "core/explain.hpp"

namespace loam {

Judgement judge(const Range& figure, const Target& target)
{
    if (!target.min && !target.max) {
        return {Verdict::not_known, Direction::none};
    }
    if (target.max && figure.likely > *target.max) {
        return {Verdict::falls_short, Direction::above};
    }
    if (target.min && figure.likely < *target.min) {
        return {Verdict::falls_short, Direction::below};
    }
    const double over_k = target.max ? figure.high - *target.max : 0.0;
    const double under_k = target.min ? *target.min - figure.low : 0.0;
    if (over_k <= 0.0 && under_k <= 0.0) {
        return {Verdict::fits, Direction::none};
    }
    return {Verdict::tight, over_k >= under_k ? Direction::above : Direction::below};
}

} // namespace loam
