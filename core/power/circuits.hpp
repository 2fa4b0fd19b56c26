// What strips and circuits have to bear, and whether there are outlets enough.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/explain.hpp"
#include "core/power/energy.hpp"

namespace loam::power {

struct Circuit {
    std::string id;
    double voltage_v = 230.0;
    double rating_a = 16.0;
    std::optional<Range> other_load_w; // everything else on it, taken as lasting; absent: not known
    friend bool operator==(const Circuit&, const Circuit&) = default;
};

struct Strip {
    std::string id;
    std::string circuit;
    std::optional<double> rating_a; // absent: not known, only what feeds it limits it
    std::optional<int> timed_outlets;
    std::optional<int> always_on_outlets;
    std::optional<std::string> fed_from; // another strip: a daisy chain
    friend bool operator==(const Strip&, const Strip&) = default;
};

// Why a continuous load is held to 80 %.
enum class LimitBasis {
    nec_continuous, // a rule: NFPA 70, 210.20(A)
    prudence        // elsewhere: common practice, no source
};

// A load that lasts three hours or longer is continuous (NFPA 70, article 100).
inline constexpr double continuous_from_h = 3.0;
inline constexpr double continuous_share = 0.8;

// North American (and Japanese) mains, 100 to 127 V, is judged by the NEC; everything else by prudence.
LimitBasis limit_basis(double voltage_v);

// What: power (W) that may hang on a rating continuously. Method: 0.8 * V * A.
// Range: V, A > 0. Source: NFPA 70 (NEC) 210.20(A): rating >= other load + 125 % of continuous load.
double continuous_limit_w(double voltage_v, double rating_a);

struct StripLoad {
    std::string id;
    Range load_w; // of its own devices and of strips fed from it
    int timed_used = 0;
    int always_on_used = 0;                   // with one for each strip fed from it
    std::optional<double> continuous_limit_w; // by the lowest rating from the circuit to here
    std::optional<Range> load_fraction;       // (short loads + 1.25 * continuous loads) / rated watts
    std::optional<int> timed_missing;         // outlets short; absent: the strip's number is not known
    std::optional<int> always_on_missing;
    bool daisy_chained = false;  // fed from another strip
    bool feed_is_broken = false; // unknown circuit or strip, or strips that feed each other in a ring
    friend bool operator==(const StripLoad&, const StripLoad&) = default;
};

struct CircuitLoad {
    std::string id;
    Range load_w; // with what else is known to hang on it
    bool other_load_known = false;
    double continuous_limit_w = 0.0;
    Range load_fraction; // as of a strip; without the other load where that is not known: a lower bound
    LimitBasis basis = LimitBasis::prudence;
    friend bool operator==(const CircuitLoad&, const CircuitLoad&) = default;
};

struct Loads {
    std::vector<StripLoad> strips; // in the order given
    std::vector<CircuitLoad> circuits;
    std::vector<std::string> unplugged; // devices whose strip is absent or unknown
    friend bool operator==(const Loads&, const Loads&) = default;
};

// What: load of each strip and circuit with all its devices at full power, over all enclosures.
// Method: loads add along the feeds; short loads count once, continuous ones 1.25 times. The rating that counts is the
//   lowest of strip, strips before it, and circuit. Spreads independent.
// Range: ratings and voltages > 0. Source: NFPA 70 (NEC) 210.20(A) and article 100; elsewhere 80 % is prudence.
Loads loads(const std::vector<Device>& devices, const std::vector<Strip>& strips, const std::vector<Circuit>& circuits);

} // namespace loam::power
