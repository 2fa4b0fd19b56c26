// The stages of an assessment, and what of them a workspace keeps.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/assess/assess.hpp"
#include "core/assess/climate_stage.hpp"
#include "core/assess/context.hpp"
#include "core/assess/courses.hpp"
#include "core/assess/light.hpp"
#include "core/assess/load.hpp"
#include "core/assess/photoperiod.hpp"
#include "core/assess/power.hpp"
#include "core/assess/record.hpp"
#include "core/assess/space.hpp"
#include "core/assess/substrate.hpp"
#include "core/assess/water.hpp"
#include "core/assess/year.hpp"

namespace loam::assess {

// What is known of one enclosure without its climate.
struct InstantStage {
    SpaceStage space;
    SubstrateStage substrate;
    MassStage mass;
    UvStage uv;
    PhotoperiodStage photoperiod;
    Notes other; // company, reach, clearances, controls, cautions
    friend bool operator==(const InstantStage&, const InstantStage&) = default;
};

InstantStage assess_instant(const Context& context, const Housed& housed);

// Everything that a climate depends on; an edit to anything else leaves the solution as it is.
struct ClimateKey {
    plan::Enclosure enclosure; // without name, dates of readings, photoperiod, strips
    std::size_t index = 0;     // stands in the pointers of its notes
    plan::Room room;
    // By how much all boxes together warm the room, K, where the plan lets them.
    std::optional<Range> rise_lamps_on, rise_lamps_off;
    friend bool operator==(const ClimateKey&, const ClimateKey&) = default;
};
ClimateKey climate_key(const Context& context, const Housed& housed);

// What a course depends on beside the climate.
struct CourseKey {
    ClimateKey climate;
    std::optional<plan::Photoperiod> photoperiod;
    std::optional<plan::PowerCut> power_cut;
    friend bool operator==(const CourseKey&, const CourseKey&) = default;
};
CourseKey course_key(const Context& context, const Housed& housed);

struct InstantKey {
    plan::Enclosure enclosure;
    std::size_t index = 0;
    std::string jurisdiction;
    std::optional<double> latitude_deg;
    std::chrono::year_month_day today; // a measurement counts from its day on
    friend bool operator==(const InstantKey&, const InstantKey&) = default;
};
InstantKey instant_key(const Context& context, const Housed& housed);

struct Workspace::Store {
    // Of the guidance that the kept results were computed with; prices apart, which no kept result uses.
    catalog::Catalog guidance;
    struct Kept {
        std::string enclosure; // id
        climate::Workspace starts;
        std::optional<InstantKey> instant_key;
        InstantStage instant;
        std::optional<ClimateKey> climate_key;
        ClimateStage climate;
        bool has_remedies = false;
        std::optional<CourseKey> course_key;
        CourseStage courses;
    };
    std::vector<Kept> kept;

    // Forgets everything where the guidance has changed; where only its names have, what names them.
    void use(const catalog::Catalog& catalog);
    Kept& of(const std::string& enclosure);
    void forget_others(const plan::Plan& plan);
};

// Where the enclosure stands in the plan. nullopt: not there.
std::optional<std::size_t> place_of(const plan::Plan& plan, const std::string& enclosure);

// The climate of one enclosure anew, where anything that it depends on has changed. False only where `stop` was
// requested.
bool keep_climate(const Context& context, const Housed& housed, Workspace::Store::Kept& kept, std::stop_token stop);

} // namespace loam::assess
