// The chapters of the text report. Internal to app/report.
#pragma once

#include <QString>

#include "app/words/speaker.hpp"
#include "core/assess/assessment.hpp"

namespace loam::report {

// A finding with its verdict, its place and its remedy.
QString text_finding(const Finding& finding, const words::Speaker& speaker);
QString text_enclosure(const assess::EnclosureResult& enclosure, const words::Speaker& speaker);
QString text_uv(const assess::UvResult& uv, const words::Speaker& speaker);
QString text_calibration(const assess::CalibrationResult& calibration, const words::Speaker& speaker);
QString text_courses(const assess::EnclosureResult& enclosure, const words::Speaker& speaker);
QString text_water(const assess::EnclosureResult& enclosure, const words::Speaker& speaker);
// Hours of light and kilowatt-hours by month.
QString text_year(const assess::EnclosureResult& enclosure, const words::Speaker& speaker);
// What the keeper has asked for; empty where nothing.
QString text_cool_seasons(const assess::EnclosureResult& enclosure, const words::Speaker& speaker);
QString text_electricity(const assess::Assessment& assessment, const words::Speaker& speaker);
// What each place brings; empty where all is fetched without tax on top.
QString text_deliveries(const std::vector<assess::DeliveryCost>& deliveries, const words::Formatter& format);
QString text_costs(const assess::Costs& costs, const words::Speaker& speaker);

} // namespace loam::report
