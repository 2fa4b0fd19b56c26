#include "app/words/courses.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "app/words/capitals.hpp"
#include "app/words/sentences.hpp"
#include "app/words/verdicts.hpp"

namespace loam::words {

namespace {

using climate::Course;
using climate::CoursePoint;

// The translator finds these texts under "courses".
struct Said {
    Q_DECLARE_TR_FUNCTIONS(courses)
};

using Reading = double CoursePoint::*;

Range spread_about(double likely, const Range& spread_k)
{
    return {likely + spread_k.low, likely, likely + spread_k.high};
}

// The lowest or highest of a reading among the points that count; nullptr where none does.
template <class Counts>
const CoursePoint* extreme(const Course& course, Reading reading, bool highest, const Counts& counts)
{
    const CoursePoint* found = nullptr;
    for (const CoursePoint& point : course.points) {
        if (counts(point) &&
            (found == nullptr || (highest ? point.*reading > found->*reading : point.*reading < found->*reading))) {
            found = &point;
        }
    }
    return found;
}

QString degrees(const CoursePoint& point, Reading reading, const Range& spread_k, const Speaker& speaker)
{
    return speaker.formatter().range(spread_about(point.*reading, spread_k), Quantity::temperature);
}

QString hours(double value, const Speaker& speaker)
{
    return speaker.formatter().value(value, Quantity::hours);
}

QString energy_sentence(const assess::CourseResult& result, const Speaker& speaker)
{
    const QString energy = speaker.formatter().value(result.course.energy_kwh, Quantity::energy);
    return course_kind(result.id) == CourseKind::day
               ? Said::tr("All devices together draw %1 on such a day.").arg(energy)
               : Said::tr("All devices together draw %1 in these %2.")
                     .arg(energy, hours(result.course.points.back().hour, speaker));
}

// Minutes while it is quick, hours where it is slow.
QString lapse(double value_h, const Speaker& speaker)
{
    return value_h < 1.5 ? Said::tr("%1 min").arg(speaker.formatter().number(60.0 * value_h, 0))
                         : hours(value_h, speaker);
}

QString switching_sentence(const assess::SwitchingResult& switching, const Speaker& speaker)
{
    const words::Formatter& format = speaker.formatter();
    const climate::Switching& cycle = switching.cycle;
    const auto swing = [&](const climate::Swing& both) {
        return Said::tr("%1 to %2")
            .arg(format.value(both.low, Quantity::temperature), format.value(both.high, Quantity::temperature));
    };
    QString text = switching.lamps_on
                       ? Said::tr("While the lamps are on, %1 switches on every %2, for %3 each time: its "
                                  "probe swings from %4, the warm side from %5.")
                       : Said::tr("While the lamps are off, %1 switches on every %2, for %3 each time: its "
                                  "probe swings from %4, the warm side from %5.");
    text = text.arg(speaker.name_of(switching.device), lapse(cycle.period_h, speaker),
                    lapse(cycle.on_share * cycle.period_h, speaker), swing(cycle.probe_c), swing(cycle.warm_c));
    if (switching.assumed) {
        text += QLatin1Char(' ') + Said::tr("That is if it switches, and %1 apart, which the plan does not say.")
                                       .arg(format.value(switching.hysteresis_k, Quantity::temperature_difference));
    }
    constexpr double often_h = 0.25;
    if (cycle.period_h < often_h) {
        text += QLatin1Char(' ') +
                Said::tr("So often wears a switch out, and a lamp: one that dims or pulses suits better.");
    }
    return text;
}

void add_day(const assess::CourseResult& result, const Speaker& speaker, QStringList& sentences)
{
    const Course& course = result.course;
    const auto dark = [](const CoursePoint& point) { return !point.lamps_on; };
    const auto any = [](const CoursePoint&) { return true; };
    const CoursePoint* cool_low = extreme(course, &CoursePoint::cool_c, false, dark);
    const CoursePoint* warm_low = extreme(course, &CoursePoint::warm_c, false, dark);
    if (cool_low != nullptr && warm_low != nullptr) {
        sentences << Said::tr("Lowest while the lamps are off: cool side %1, warm side %2.")
                         .arg(degrees(*cool_low, &CoursePoint::cool_c, result.cool_spread_k, speaker),
                              degrees(*warm_low, &CoursePoint::warm_c, result.warm_spread_k, speaker));
    }
    sentences << Said::tr("Highest: basking spot %1, warm side %2, cool side %3.")
                     .arg(degrees(*extreme(course, &CoursePoint::basking_c, true, any), &CoursePoint::basking_c,
                                  result.basking_spread_k, speaker),
                          degrees(*extreme(course, &CoursePoint::warm_c, true, any), &CoursePoint::warm_c,
                                  result.warm_spread_k, speaker),
                          degrees(*extreme(course, &CoursePoint::cool_c, true, any), &CoursePoint::cool_c,
                                  result.cool_spread_k, speaker));
    for (const assess::SwitchingResult& switching : result.switching) {
        sentences << switching_sentence(switching, speaker);
    }
    constexpr double restless_k = 0.1; // less does not show in a figure with one decimal
    if (course.unrest_k > restless_k) {
        sentences << Said::tr("The day does not come to repeat itself: it ends up to %1 from where it began.")
                         .arg(speaker.formatter().value(course.unrest_k, Quantity::temperature_difference));
    }
}

void add_warm_up(const assess::CourseResult& result, const Speaker& speaker, QStringList& sentences)
{
    constexpr std::array<std::pair<assess::Zone, Reading>, 3> zones{
        std::pair{assess::Zone::basking, &CoursePoint::basking_c}, std::pair{assess::Zone::warm, &CoursePoint::warm_c},
        std::pair{assess::Zone::cool, &CoursePoint::cool_c}};
    const QString whole = hours(result.course.points.back().hour, speaker);
    for (const auto& [zone, reading] : zones) {
        const QString end = speaker.formatter().value(result.course.points.back().*reading, Quantity::temperature);
        const auto settled = settled_h(result.course, reading);
        const QString name = capitalised(words::zone(zone));
        if (settled) {
            sentences << Said::tr("%1: within %2 of its final %3 %4.")
                             .arg(name, speaker.formatter().value(1.0, Quantity::temperature_difference), end,
                                  *settled > 0.0 ? Said::tr("after %1").arg(hours(*settled, speaker))
                                                 : Said::tr("from the beginning"));
        } else {
            sentences << Said::tr("%1: has not settled after %2, when it is at %3.").arg(name, whole, end);
        }
    }
}

// Likely values, and when it was misted.
void add_humidity(const assess::CourseResult& result, const Speaker& speaker, QStringList& sentences)
{
    const auto any = [](const CoursePoint&) { return true; };
    const CoursePoint& driest = *extreme(result.course, &CoursePoint::humidity, false, any);
    const CoursePoint& dampest = *extreme(result.course, &CoursePoint::humidity, true, any);
    const auto at = [&speaker](const CoursePoint& point) {
        const QString humidity = speaker.formatter().value(point.humidity, Quantity::fraction);
        return point.hour > 0.0 ? Said::tr("%1 after %2").arg(humidity, hours(point.hour, speaker))
                                : Said::tr("%1 at the beginning").arg(humidity);
    };
    sentences << Said::tr("Humidity at ground level on the cool side, likely: lowest %1, highest %2.")
                     .arg(at(driest), at(dampest));
    QStringList mistings;
    for (const double hour : result.course.misted_h) {
        mistings << hours(hour, speaker);
    }
    if (!mistings.isEmpty()) {
        sentences << Said::tr("Misted at: %1.").arg(mistings.join(Said::tr(", ")));
    }
}

const assess::TimeToLimit* find_limit(const std::vector<assess::TimeToLimit>& limits, const std::string& species,
                                      Direction direction)
{
    const auto found = std::find_if(limits.begin(), limits.end(), [&](const assess::TimeToLimit& limit) {
        return limit.species == species && limit.direction == direction;
    });
    return found == limits.end() ? nullptr : &*found;
}

// Where neither limit of a species is reached, both are told at once.
void add_limits(const assess::CourseResult& result, const Speaker& speaker, QStringList& sentences)
{
    const double whole_h = result.course.points.back().hour;
    for (const assess::TimeToLimit& limit : result.limits) {
        const assess::TimeToLimit* low = find_limit(result.limits, limit.species, Direction::below);
        const assess::TimeToLimit* high = find_limit(result.limits, limit.species, Direction::above);
        if (low == nullptr || high == nullptr || low->earliest_h || high->earliest_h) {
            sentences << limit_sentence(limit, whole_h, speaker);
        } else if (&limit == low) {
            sentences
                << Said::tr("%1: some place stays between %2 and %3, outside which it comes to harm, through these %4.")
                       .arg(capitalised(speaker.name_of(limit.species)),
                            speaker.formatter().value(low->limit_c, Quantity::temperature),
                            speaker.formatter().value(high->limit_c, Quantity::temperature), hours(whole_h, speaker));
        }
    }
}

void add_drill(const assess::CourseResult& result, const Speaker& speaker, QStringList& sentences)
{
    const auto any = [](const CoursePoint&) { return true; };
    const CoursePoint& hottest = *extreme(result.course, &CoursePoint::hottest_c, true, any);
    const CoursePoint& digging = *extreme(result.course, &CoursePoint::digging_c, true, any);
    const CoursePoint& coldest = *extreme(result.course, &CoursePoint::coldest_c, false, any);
    const auto at = [&speaker](const CoursePoint& point, Reading reading) {
        const QString degrees = speaker.formatter().value(point.*reading, Quantity::temperature);
        return point.hour > 0.0 ? Said::tr("%1 after %2").arg(degrees, hours(point.hour, speaker))
                                : Said::tr("%1 at the beginning").arg(degrees);
    };
    sentences << Said::tr("Hottest surface, likely: %1. Hottest when digging: %2.")
                     .arg(at(hottest, &CoursePoint::hottest_c), at(digging, &CoursePoint::digging_c));
    sentences << Said::tr("Coldest floor, likely: %1.").arg(at(coldest, &CoursePoint::coldest_c));
    add_limits(result, speaker, sentences);
}

} // namespace

CourseKind course_kind(std::string_view id)
{
    if (id == "winter" || id == "summer") {
        return CourseKind::day;
    }
    return id == "warm-up" ? CourseKind::warm_up : CourseKind::drill;
}

QString course_name(std::string_view id)
{
    static constexpr std::array<std::pair<std::string_view, const char*>, 4> words{{
        {"winter", QT_TRANSLATE_NOOP("courses", "winter day")},
        {"summer", QT_TRANSLATE_NOOP("courses", "summer day")},
        {"warm-up", QT_TRANSLATE_NOOP("courses", "warming up")},
        {"covers-off", QT_TRANSLATE_NOOP("courses", "covers forgotten")},
    }};
    for (const auto& [known, word] : words) {
        if (known == id) {
            return Said::tr(word);
        }
    }
    return case_name(id);
}

QString course_advice(std::string_view id)
{
    const Sentence* row = find_sentence(drill_sentences(), id);
    return row != nullptr ? translated(row->text) : QString();
}

QString course_method(std::string_view id)
{
    switch (course_kind(id)) {
    case CourseKind::day:
        return Said::tr(
            "The heat balance followed in time steps through days until one ends as it began; the room takes "
            "two hours to get from its night's temperature to its day's and back. The band is the range of the "
            "steady balance, laid about the likely course.");
    case CourseKind::warm_up:
        return Said::tr(
            "The heat balance followed in time steps, with everything switched on in a box that is as warm as "
            "the room.");
    case CourseKind::drill:
        break;
    }
    return Said::tr(
        "The heat balance followed in time steps from the steady state before the fault. The earliest time is "
        "that of the unfavourable end of the range.");
}

std::vector<Hours> lit_hours(const Course& course)
{
    std::vector<Hours> lit;
    for (std::size_t i = 1; i < course.points.size(); ++i) {
        if (!course.points[i].lamps_on) { // how it was through the step that ends here
            continue;
        }
        const double from_h = course.points[i - 1].hour;
        if (lit.empty() || lit.back().to_h < from_h) {
            lit.push_back({from_h, from_h});
        }
        lit.back().to_h = course.points[i].hour;
    }
    return lit;
}

std::optional<double> settled_h(const Course& course, Reading reading)
{
    constexpr double near_k = 1.0;
    constexpr double latest_share = 0.75; // what still moves in the last quarter may go on moving
    if (course.points.empty()) {
        return std::nullopt;
    }
    const double end = course.points.back().*reading;
    for (std::size_t i = course.points.size() - 1; i > 0; --i) {
        const CoursePoint& before = course.points[i - 1];
        const double off = before.*reading - end;
        if (std::abs(off) <= near_k) {
            continue;
        }
        const CoursePoint& after = course.points[i];
        const double border = end + std::copysign(near_k, off);
        const double part = (border - before.*reading) / (after.*reading - before.*reading);
        const double when = std::lerp(before.hour, after.hour, part);
        return when <= latest_share * course.points.back().hour ? std::optional(when) : std::nullopt;
    }
    return 0.0;
}

QString limit_sentence(const assess::TimeToLimit& limit, double hours_looked_at, const Speaker& speaker)
{
    const bool hot = limit.direction == Direction::above;
    const QString name = capitalised(speaker.name_of(limit.species));
    const QString degrees = speaker.formatter().value(limit.limit_c, Quantity::temperature);
    const QString whole = hours(hours_looked_at, speaker);
    if (!limit.earliest_h) {
        return (hot ? Said::tr("%1: some place stays below %2, above which it comes to harm, through these %3.")
                    : Said::tr("%1: some place stays above %2, below which it comes to harm, through these %3."))
            .arg(name, degrees, whole);
    }
    const QString begin =
        (hot ? Said::tr("%1: even the coolest place may be over %2, where it comes to harm, %3")
             : Said::tr("%1: even the warmest place may be under %2, where it comes to harm, %3"))
            .arg(name, degrees,
                 *limit.earliest_h > 0.0 ? Said::tr("after %1 at the earliest").arg(hours(*limit.earliest_h, speaker))
                                         : Said::tr("from the beginning"));
    if (!limit.likely_h) {
        return begin + Said::tr("; likely not within these %1.").arg(whole);
    }
    return begin + (*limit.likely_h > 0.0 ? Said::tr("; likely after %1.").arg(hours(*limit.likely_h, speaker))
                                          : Said::tr("; likely so from the beginning."));
}

QStringList course_sentences(const assess::CourseResult& result, const Speaker& speaker)
{
    if (result.course.points.size() < 2) {
        return {Said::tr("Not known: the balance of heat found no solution over these hours.")};
    }
    QStringList sentences;
    switch (course_kind(result.id)) {
    case CourseKind::day:
        add_day(result, speaker, sentences);
        break;
    case CourseKind::warm_up:
        add_warm_up(result, speaker, sentences);
        break;
    case CourseKind::drill:
        add_drill(result, speaker, sentences);
        break;
    }
    add_humidity(result, speaker, sentences);
    if (result.course.energy_kwh > 0.0) {
        sentences << energy_sentence(result, speaker);
    }
    if (!result.course.complete) {
        sentences << Said::tr("It breaks off after %1: what follows is not known.")
                         .arg(hours(result.course.points.back().hour, speaker));
    }
    return sentences;
}

} // namespace loam::words
