#include "core/assess/animals.hpp"

#include <algorithm>

namespace loam::assess {

namespace {

constexpr Judgement short_of_target{Verdict::falls_short, Direction::none};
constexpr Judgement unknown{Verdict::not_known, Direction::none};

std::int64_t count_of(const plan::Enclosure& enclosure, std::string_view species, std::optional<plan::Sex> sex)
{
    std::int64_t count = 0;
    for (const plan::Animal& animal : enclosure.animals) {
        const bool counts = !sex || animal.sex.value_or(plan::Sex::unknown) == *sex;
        count += animal.species == species && counts ? animal.count : 0;
    }
    return count;
}

double number(std::int64_t count)
{
    return static_cast<double>(count);
}

void judge_males(Notes& notes, const Housed& housed, const catalog::Species& species)
{
    if (!species.males_fight) {
        return;
    }
    const std::int64_t males = count_of(housed.enclosure, species.id, plan::Sex::male);
    const std::int64_t unsexed = count_of(housed.enclosure, species.id, plan::Sex::unknown);
    if (males > 1) {
        Finding& finding = report(
            notes, "animals.rival-males", short_of_target, housed.at(),
            because("rule.social", {{"males", number(males), "1"}}, {{"species", species.id}}, species.social_source));
        finding.remedy = remedy("remedy.separate-enclosures", {{"count", number(males), "1"}});
    } else if (unsexed > 0 && males + unsexed > 1) {
        Finding& finding = report(notes, "animals.sex-not-known", unknown, housed.at(),
                                  because("rule.social", {{"animals", number(unsexed), "1"}}, {{"species", species.id}},
                                          species.social_source));
        finding.remedy = state(housed.pointer("/animals"));
    }
}

void judge_company_of_kind(Notes& notes, const Housed& housed, const catalog::Species& species)
{
    if (!species.solitary) {
        return;
    }
    const std::int64_t count = count_of(housed.enclosure, species.id, std::nullopt);
    if (count == 1) {
        report(notes, "animals.one-is-valid", {Verdict::fits, Direction::none}, housed.at(),
               because("rule.social", {}, {{"species", species.id}}, species.social_source));
        return;
    }
    Finding& finding = report(
        notes, "animals.second-of-solitary", {Verdict::falls_short, Direction::above}, housed.at(),
        because("rule.social", {{"animals", number(count), "1"}}, {{"species", species.id}}, species.social_source));
    finding.remedy = remedy("remedy.fewer-animals", {{"to", 1.0, "1"}});
}

void judge_mixture(Notes& notes, const Housed& housed)
{
    std::vector<std::string> ids;
    for (const plan::Animal& animal : housed.enclosure.animals) {
        if (std::find(ids.begin(), ids.end(), animal.species) == ids.end()) {
            ids.push_back(animal.species);
        }
    }
    if (ids.size() < 2) {
        return;
    }
    const auto kinds = static_cast<double>(ids.size());
    Finding& finding = report(notes, "animals.mixed-species", short_of_target, housed.at(),
                              because("rule.one-species", {{"species_count", kinds, "1"}},
                                      {{"species", ids[0]}, {"other_species", ids[1]}},
                                      {"Divers, Management and Husbandry of Reptiles, MSD Veterinary Manual, "
                                       "June 2020: one species per enclosure",
                                       Confidence::confirmed}));
    finding.remedy = remedy("remedy.separate-enclosures", {{"count", kinds, "1"}});
}

} // namespace

Notes judge_company(const Context& context, const Housed& housed)
{
    Notes notes;
    if (housed.enclosure.animals.empty()) {
        report(notes, "animals.none", unknown, housed.at(), because("rule.stated-by-keeper", {}, {})).remedy =
            state(housed.pointer("/animals"));
    }
    for (std::size_t i = 0; i < housed.enclosure.animals.size(); ++i) {
        const plan::Animal& animal = housed.enclosure.animals[i];
        if (context.catalog.find_species(animal.species) == nullptr) {
            report(notes, "animals.species-not-known", unknown, housed.at(animal.id),
                   because("rule.species-sheet", {}, {{"species", animal.species}}))
                .remedy = state(housed.pointer("/animals/" + std::to_string(i) + "/species"));
        }
    }
    judge_mixture(notes, housed);
    for (const catalog::Species* species : species_in(housed.enclosure, context.catalog)) {
        judge_company_of_kind(notes, housed, *species);
        judge_males(notes, housed, *species);
    }
    return notes;
}

} // namespace loam::assess
