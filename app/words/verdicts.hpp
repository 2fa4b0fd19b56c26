// The words for verdicts, cases, zones and the other closed lists of core.
#pragma once

#include <QString>
#include <string_view>

#include "core/assess/assessment.hpp"
#include "core/catalog/prices.hpp"
#include "core/catalog/rule.hpp"
#include "core/catalog/species.hpp"
#include "core/climate/steady.hpp"
#include "core/explain.hpp"
#include "core/plan/plan.hpp"

namespace loam::words {

// What a verdict is about: gives "too hot", "too dry", "too small", … after "falls short".
enum class Subject { temperature, humidity, space, uv, light, load, company, plain };

QString verdict(Verdict verdict); // "fits", "tight", "falls short", "danger", "not known"
// "falls short (too cold)"; a direction of none adds nothing.
QString verdict(const Judgement& judgement, Subject subject);
QString direction(Direction direction, Subject subject); // "too cold"; empty for none
Subject subject_of(std::string_view finding_code);       // by the code's first part

QString zone(assess::Zone zone);           // "basking spot"
QString measure(climate::Measure measure); // "ground level"
QString instrument(climate::Measure measure);
QString reading_use(assess::ReadingUse use); // "used", "left out: doesn't fit"
QString case_name(std::string_view id);      // "winter day"; an unknown id is returned as it is
QString category(catalog::Category category);
QString rule_kind(catalog::RuleKind kind);
QString confidence(Confidence confidence);
QString source(const Source& source); // "citation (from memory, unconfirmed)"
QString cost_kind(assess::CostKind kind);
QString group(catalog::Group group);

QString device_kind(plan::DeviceKind kind); // "flood lamp"
QString fitting_kind(plan::FittingKind kind);
QString top_kind(plan::TopKind kind);
QString wall(plan::Wall wall);
QString panel(climate::Plane plane); // "front wall", "top"
QString side(plan::Side side);
QString lining_of(plan::Wall wall, plan::Side side);
QString place(plan::Place place);
QString sex(plan::Sex sex);

} // namespace loam::words
