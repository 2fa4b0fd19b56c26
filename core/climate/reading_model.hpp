// Thermometer readings as functions of the uncertain inputs.
#pragma once

#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "core/climate/calibration.hpp"

namespace loam::climate {

struct UncertainInput {
    std::string name;
    Range prior;
    bool of_room = false; // of the room on the day of the reading, not of the box
};

// Inputs are given in standard deviations from their likely values (scale.hpp), in the order of `inputs`. The room's
// thermometer and hygrometer are the same for all readings, so their errors are two inputs, whatever rooms there are.
class ReadingModel {
public:
    ReadingModel(const Box& prior, const std::vector<TakenReading>& readings, Workspace& workspace,
                 std::stop_token stop, const Resolution& resolution);

    const std::vector<UncertainInput>& inputs() const { return inputs_; }

    // In degC, by reading. nullopt where a case has no balance, or `stop` was requested.
    std::optional<std::vector<double>> predict(const std::vector<double>& deviations);
    // In K per standard deviation, reading by reading.
    std::optional<std::vector<double>> slopes(const std::vector<double>& deviations);

private:
    // Readings taken in one state of the room and the lamps.
    struct Group {
        Case now;
        std::vector<std::size_t> readings;
        std::vector<Spot> spots;
    };
    struct State {
        Box box;
        Case now;
        std::vector<std::size_t> varied; // places of the inputs whose range is open
    };
    void add_to_group(const TakenReading& reading, std::size_t place);
    State state_of(const Group& group, const std::vector<double>& deviations, double half) const;

    const Box& prior_;
    Workspace& workspace_;
    std::stop_token stop_;
    Resolution resolution_;
    std::size_t count_;
    std::vector<Group> groups_;
    std::vector<UncertainInput> inputs_;
};

} // namespace loam::climate
