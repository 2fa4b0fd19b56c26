// What runs over hours, in words: the day, the warming up, and what follows a fault.
#pragma once

#include <QString>
#include <QStringList>
#include <string_view>
#include <vector>

#include "app/words/speaker.hpp"
#include "core/assess/assessment.hpp"

namespace loam::words {

enum class CourseKind { day, warm_up, drill };

CourseKind course_kind(std::string_view id);
QString course_name(std::string_view id);   // "winter day", "power cut"; an unknown id is returned as it is
QString course_advice(std::string_view id); // what to do then; empty for a day
QString course_method(std::string_view id); // how it was worked out

// What is lit, as hours from and to.
struct Hours {
    double from_h = 0.0;
    double to_h = 0.0;
    friend bool operator==(const Hours&, const Hours&) = default;
};
std::vector<Hours> lit_hours(const climate::Course& course);

// When the reading has come within 1 K of where it ends; nullopt where that is so late that it may not be the end.
std::optional<double> settled_h(const climate::Course& course, double climate::CoursePoint::*reading);

// Lowest and highest, energy, times to each limit: one sentence each, without the advice.
QStringList course_sentences(const assess::CourseResult& result, const Speaker& speaker);

// "Falls under 10 °C at the warmest place after 5 h at the earliest, likely after 8 h." with the species' name in
// front.
QString limit_sentence(const assess::TimeToLimit& limit, double hours_looked_at, const Speaker& speaker);

} // namespace loam::words
