#include "core/assess/cautions.hpp"

namespace loam::assess {

namespace {

constexpr Judgement note{Verdict::fits, Direction::none};

void tell_lifespan(Notes& notes, const Housed& housed, const catalog::Species& species)
{
    std::vector<Input> inputs;
    if (species.lifespan_years.min) {
        inputs.push_back({"years_min", *species.lifespan_years.min, "a"});
    }
    if (species.lifespan_years.max) {
        inputs.push_back({"years_max", *species.lifespan_years.max, "a"});
    }
    if (!inputs.empty()) {
        report(notes, "caution.lifespan", note, housed.at(),
               because("rule.species-sheet", inputs, {{"species", species.id}}, species.lifespan_years.source));
    }
}

} // namespace

Notes enclosure_cautions(const Context& context, const Housed& housed)
{
    Notes notes;
    for (const catalog::Species* species : species_in(housed.enclosure, context.catalog)) {
        tell_lifespan(notes, housed, *species);
        report(notes, "caution.law", note, housed.at(),
               because("rule.law", {}, {{"species", species->id}, {"jurisdiction", context.plan.jurisdiction}}));
        if (species->brumates) {
            report(notes, "caution.brumation", note, housed.at(),
                   because("rule.care", {}, {{"species", species->id}}, species->brumation_source));
        }
        for (const std::string& code : species->notes) {
            report(notes, "caution.species", note, housed.at(),
                   because("rule.care", {}, {{"note", code}, {"species", species->id}}));
        }
    }
    return notes;
}

Notes site_cautions(const Context& context)
{
    Notes notes;
    std::int64_t animals = 0;
    bool equipment = false;
    for (const plan::Enclosure& enclosure : context.plan.enclosures) {
        animals += animal_count(enclosure);
        equipment = equipment || !enclosure.equipment.empty();
    }
    const Place site{"/site", ""};
    if (animals > 0) {
        report(notes, "caution.salmonella", note, site,
               because("rule.hygiene", {}, {}, {"CDC handout on reptiles and amphibians", Confidence::confirmed}));
        report(notes, "caution.vet", note, site, because("rule.care", {}, {}));
        report(notes, "caution.quarantine", note, site,
               because("rule.quarantine", {{"days_min", 30.0, "d"}}, {{"resident", animals > 1 ? "yes" : "no"}},
                       {"AZA accreditation standards 2007: at least 30 days; keepers advise 3 to 6 months",
                        Confidence::secondary}));
    }
    if (equipment) {
        report(notes, "caution.electrician", note, site, because("rule.care", {}, {}));
        report(notes, "caution.test-run", note, site,
               because("rule.test-run", {{"days_min", 7.0, "d"}}, {},
                       {"Common practice, no source", Confidence::practice}));
    }
    if (!context.plan.enclosures.empty()) {
        report(notes, "caution.structure", note, site, because("rule.rated-load", {}, {}));
    }
    return notes;
}

Notes judge_sun(const Context& context)
{
    Notes notes;
    if (context.plan.enclosures.empty()) {
        return notes;
    }
    const auto sun = context.plan.site.room.sun_reaches;
    const std::string pointer = "/site/room/sun_reaches";
    const Source source{"Common practice, no source: direct sun on glass overheats and kills", Confidence::secondary};
    if (sun == plan::SunReaches::yes) {
        report(notes, "danger.sun-through-glass", {Verdict::danger, Direction::above}, {pointer, ""},
               because("rule.sun-through-glass", {}, {{"answer", "yes"}}, source))
            .remedy = remedy("remedy.shade-from-sun");
    } else if (sun != plan::SunReaches::no) {
        if (!sun) {
            assume(notes, {pointer, "1", std::nullopt, {}});
        }
        report(notes, "danger.sun-through-glass", {Verdict::not_known, Direction::none}, {pointer, ""},
               because("rule.sun-through-glass", {}, {{"answer", sun ? "unknown" : "absent"}}, source))
            .remedy = state(pointer);
    }
    return notes;
}

} // namespace loam::assess
