// What a keeper's thermometer readings say of the uncertain inputs of a box.
#pragma once

#include <cstddef>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "core/climate/spot.hpp"
#include "core/climate/steady.hpp"

namespace loam::climate {

struct TakenReading {
    std::string id;
    Spot at;
    bool lamps_on = true;
    RoomState room;
    double value_c = 0.0;
    double accuracy_k = 0.0; // of the thermometer, plus or minus
};

struct FittedReading {
    std::string id;
    Range before_c;                      // predicted before any reading was used, with the model's own error
    Range after_c;                       // and with those that were
    double residual_k = 0.0;             // value less what is predicted after
    double residual_in_deviations = 0.0; // of the thermometer and the model together
    double surprise = 0.0;  // how far it lies from what the other readings and the box make expected, in deviations
    bool consistent = true; // else it was left out
};

struct UpdatedInput {
    std::string name; // as in inputs.hpp
    Range before;
    Range after;
    double shift_in_deviations = 0.0; // of its prior
    bool moved = false;               // or narrowed, by enough to tell
    friend bool operator==(const UpdatedInput&, const UpdatedInput&) = default;
};

// Under what a reading was taken that was used.
struct Condition {
    bool lamps_on = true;
    double room_c = 0.0;
};

struct Calibration {
    bool solved = false; // the estimate converged; else nothing was learned
    bool fits = false;   // the readings that were kept agree with the model, all together
    int iterations = 0;
    std::vector<FittedReading> readings; // in the order given
    std::vector<UpdatedInput> inputs;    // of the box; the room's are those of the day of the reading
    double chi_square = 0.0;             // of the readings that were kept, before they were used
    std::size_t degrees = 0;             // how many those are
    double chance = 1.0;                 // of a worse fit if all is as assumed
    std::vector<Condition> conditions;
    Box alike;  // for conditions like those of the readings
    Box unlike; // for all others: likely values as estimated, as wide as before
};

inline constexpr double least_surprise = 3.0; // of a reading that is named: chance of one in 370
inline constexpr double least_chance = 0.01;  // below it the readings do not fit together with the model
inline constexpr double alike_within_k = 5.0; // of the room; own estimate: films and plumes go with differences
inline constexpr double least_shift = 0.25;   // of an input that is told
inline constexpr double most_of_spread = 0.9; // or that is narrowed at least to this

// Method: maximum a posteriori estimate by Gauss-Newton with step halving: readings predicted by the field on its
// fine cells, slopes on the wide cells as ranges have them; every input has its range as prior (scale.hpp), readings
// have correlated errors (reading_noise.hpp). The reading with the greatest surprise is left out while it is above
// `least_surprise`, and the rest fitted anew (data snooping, Baarda 1968, from memory). The covariance that remains is
// kept whole: `alike` has its deviations as ranges and its correlations as ties. Where the rest does not fit by its
// chi-square, both boxes are the prior.
// Range: steady readings inside the box; the box as it stood when they were taken.
// Source: Tarantola 2005, Inverse Problem Theory, section 3.4 (from memory).
// nullopt only where `stop` was requested. Without readings both boxes are `prior`.
std::optional<Calibration> calibrate(const Box& prior, const std::vector<TakenReading>& readings, Workspace& workspace,
                                     std::stop_token stop = {}, const Resolution& resolution = {});

// Whether a case is like a reading that was used: no fault, the lamps as then, and the room near to the room then.
bool is_alike(const Calibration& calibration, const Case& now);
const Box& box_for(const Calibration& calibration, const Case& now);

// A box like the calibrated one: its inputs as far from where they were thought to be, in standard deviations, as those
// of the same name; as wide as before.
Box as_estimated(Box box, const std::vector<UpdatedInput>& inputs);

} // namespace loam::climate
