// Each structure's members, bounds and documentation, once for reading, writing and the schema.
#pragma once

#include "core/json/archive.hpp"
#include "core/plan/plan.hpp"

namespace loam::plan {

void describe(json::Archive& archive, RoomCase& room_case);
void describe(json::Archive& archive, PowerCut& power_cut);
void describe(json::Archive& archive, Room& room);
void describe(json::Archive& archive, Circuit& circuit);
void describe(json::Archive& archive, Strip& strip);
void describe(json::Archive& archive, Stand& stand);
void describe(json::Archive& archive, Water& water);
void describe(json::Archive& archive, Site& site);

void describe(json::Archive& archive, Cover& cover);
void describe(json::Archive& archive, Top& top);
void describe(json::Archive& archive, Vent& vent);
void describe(json::Archive& archive, Shell& shell);

void describe(json::Archive& archive, CoolSeason& season);
void describe(json::Archive& archive, Measurement& measurement);
void describe(json::Archive& archive, Animal& animal);
void describe(json::Archive& archive, SubstrateLayer& layer);
void describe(json::Archive& archive, Fitting& fitting);
void describe(json::Archive& archive, Reading& reading);

void describe(json::Archive& archive, Probe& probe);
void describe(json::Archive& archive, Control& control);
void describe(json::Archive& archive, UvPoint& point);
void describe(json::Archive& archive, Device& device);

void describe(json::Archive& archive, Photoperiod& photoperiod);
void describe(json::Archive& archive, Moisture& moisture);
void describe(json::Archive& archive, Enclosure& enclosure);
void describe(json::Archive& archive, OwnedItem& owned);
void describe(json::Archive& archive, Wish& wish);
void describe(json::Archive& archive, OwnLine& line);
void describe(json::Archive& archive, Budget& budget);
void describe(json::Archive& archive, Plan& plan);

} // namespace loam::plan
