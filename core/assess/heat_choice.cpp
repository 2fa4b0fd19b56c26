#include "core/assess/heat_choice.hpp"

#include <algorithm>

namespace loam::assess {

namespace {

// Rooms that people live in. Common practice, no source.
constexpr double coldest_room_c = 15.0;
constexpr double hottest_room_c = 28.0;

std::string device_of(const Remedy& remedy)
{
    for (const Label& label : remedy.labels) {
        if (label.name == "device") {
            return label.text;
        }
    }
    return {};
}

double* target_of(Remedy& remedy)
{
    for (Input& amount : remedy.amounts) {
        if (amount.name == "to") {
            return &amount.value;
        }
    }
    return nullptr;
}

void take_farthest(Choice& one, Choice& other)
{
    double* left = target_of(*one.remedy);
    double* right = target_of(*other.remedy);
    if (left != nullptr && right != nullptr) {
        const double farthest = one.direction == Direction::below ? std::max(*left, *right) : std::min(*left, *right);
        *left = farthest;
        *right = farthest;
    }
}

void tell_case(Choice& choice)
{
    std::vector<Label>& labels = choice.remedy->labels;
    const bool told = std::any_of(labels.begin(), labels.end(), [](const Label& one) { return one.name == "case"; });
    if (!told) {
        labels.push_back({"case", choice.case_id});
    }
}

// By a thermostat, if one suits the device: on what shines only one that dims.
Remedy regulated(const Choice& choice)
{
    const std::string device = device_of(*choice.remedy);
    const auto source = std::find_if(choice.heaters.begin(), choice.heaters.end(),
                                     [&](const HeatSource& one) { return one.id == device; });
    if (source == choice.heaters.end() || !source->takes_thermostat) {
        return remedy("remedy.several-changes");
    }
    if (source->shines) {
        return remedy("remedy.dimming-thermostat", {}, {{"device", device}});
    }
    return remedy("remedy.add-thermostat", {}, {{"device", device}});
}

// The device is too weak in one case and too strong in the other.
void part(Choice& one, Choice& other)
{
    for (Choice* choice : {&one, &other}) {
        if (one.burns || other.burns) { // what burns is made colder; what is too cold then needs something else
            choice->remedy = choice->burns ? choice->remedy : remedy("remedy.several-changes");
        } else if (choice->remedy->code == "remedy.weaker-device") {
            choice->remedy = regulated(*choice);
        } else if (choice->remedy->code == "remedy.set-thermostat" || choice->remedy->code == "remedy.dim-device") {
            tell_case(*choice);
        }
    }
}

} // namespace

void agree(std::vector<Choice>& choices)
{
    const auto pairs = [&](auto work) {
        for (std::size_t i = 0; i < choices.size(); ++i) {
            for (std::size_t k = i + 1; k < choices.size(); ++k) {
                if (choices[i].remedy && choices[k].remedy && !device_of(*choices[i].remedy).empty() &&
                    device_of(*choices[i].remedy) == device_of(*choices[k].remedy)) {
                    work(choices[i], choices[k]);
                }
            }
        }
    };
    pairs([](Choice& one, Choice& other) {
        if (one.direction == other.direction && one.remedy->code == other.remedy->code) {
            take_farthest(one, other);
        }
    });
    pairs([](Choice& one, Choice& other) {
        if (one.direction != other.direction) {
            part(one, other);
        }
    });
}

Remedy without_devices(const Search& search, const Finding& finding)
{
    const Miss& miss = search.miss;
    const bool warmer = miss.direction == Direction::below;
    const double by_k = warmer ? miss.by_k : -miss.by_k;
    const double to_c = miss.solved->room.room.temperature_c.likely + by_k;
    const bool liveable = warmer ? to_c <= hottest_room_c : to_c >= coldest_room_c;
    const bool heat_wave = miss.solved->room.id == "heat-wave"; // there the cool side alone counts
    if (!miss.touch && liveable && (heat_wave || !search.spoils_when_all_move(by_k))) {
        const std::vector<Input> amounts{{"to", to_c, "degC"}, {"by", miss.by_k, "K"}};
        const std::vector<Label> labels{{"case", miss.solved->room.id}};
        return warmer ? remedy("remedy.warmer-room", amounts, labels) : remedy("remedy.cooler-room", amounts, labels);
    }
    return finding.verdict == Verdict::tight ? remedy("remedy.measure-first") : remedy("remedy.several-changes");
}

} // namespace loam::assess
