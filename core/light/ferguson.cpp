#include "core/light/ferguson.hpp"

namespace loam::light {

std::optional<FergusonZone> ferguson_zone(int number)
{
    const Source source = {"Ferguson et al. 2010, Zoo Biology 29:317-334, as used in Baines et al. 2016, "
                           "J Zoo Aquar Res 4(1):42-63",
                           Confidence::secondary};
    const auto zone = [&](double average_min, double average_max, double maximum_min, double maximum_max) {
        return FergusonZone{number, {average_min, average_max, source}, {maximum_min, maximum_max, source}};
    };
    switch (number) {
    case 1:
        return zone(0.0, 0.7, 0.6, 1.4);
    case 2:
        return zone(0.7, 1.0, 1.1, 3.0);
    case 3:
        return zone(1.0, 2.6, 2.9, 7.4);
    case 4:
        return zone(2.6, 3.5, 4.5, 9.5);
    default:
        return std::nullopt;
    }
}

} // namespace loam::light
