#include "app/desk/editors/site_page.hpp"

namespace loam::desk {

using words::Quantity;

SitePage::SitePage(FormState& state, QWidget* parent) : Page(state, "sitePage", parent)
{
    build_room();
    build_electricity();
    build_water();
    build_circuits();
    build_strips();
    build_stands();
}

void SitePage::build_room_case(const QString& heading_text, const char* key, plan::RoomCase plan::Room::*season)
{
    heading(heading_text);
    FieldSet& set = fields([key](plan::Plan&) { return std::string("/site/room/") + key; });
    set.quantity(tr("Day"), "day_c", Quantity::temperature, {-20.0, 50.0},
                 [season](plan::Plan& plan) { return NumberSlot(&(plan.site.room.*season).day_c); });
    set.quantity(tr("Night"), "night_c", Quantity::temperature, {-20.0, 50.0},
                 [season](plan::Plan& plan) { return NumberSlot(&(plan.site.room.*season).night_c); });
    set.quantity(tr("Humidity"), "relative_humidity", Quantity::fraction, {0.0, 1.0},
                 [season](plan::Plan& plan) { return NumberSlot(&(plan.site.room.*season).relative_humidity); });
}

void SitePage::build_room()
{
    note(tr("What you don't know, leave empty: the program then works with the range shown in grey and says so."));
    build_room_case(tr("Room in winter"), "winter", &plan::Room::winter);
    build_room_case(tr("Room in summer"), "summer", &plan::Room::summer);
    heading(tr("Bad days"));
    FieldSet& set = fields([](plan::Plan&) { return std::string("/site/room"); });
    set.quantity(tr("Room in a heat wave"), "heat_wave_c", Quantity::temperature, {0.0, 60.0},
                 [](plan::Plan& plan) { return NumberSlot(&plan.site.room.heat_wave_c); });
    set.quantity(tr("Loss of the room per kelvin"), "loss_w_k", Quantity::conductance, {0.1, 10000.0},
                 [](plan::Plan& plan) { return NumberSlot(&plan.site.room.loss_w_k); });
    set.enumeration<plan::SunReaches>(tr("Sun reaches the box"), "sun_reaches", {tr("no"), tr("yes"), tr("unknown")},
                                      [](plan::Plan& plan) { return &plan.site.room.sun_reaches; });
}

void SitePage::build_electricity()
{
    heading(tr("Place and electricity"));
    FieldSet& set = fields([](plan::Plan&) { return std::string("/site"); });
    set.quantity(tr("Latitude, north is positive"), "latitude_deg", Quantity::angle, {-90.0, 90.0},
                 [](plan::Plan& plan) { return NumberSlot(&plan.site.latitude_deg); });
    set.price(tr("Price of a kWh"), "electricity_price_per_kwh",
              [](plan::Plan& plan) { return &plan.site.electricity_price_per_kwh; });
}

void SitePage::build_water()
{
    heading(tr("Water"));
    FieldSet& set = fields([](plan::Plan&) { return std::string("/site/water"); });
    const auto from = [](plan::WaterSource source) {
        return [source](plan::Plan& plan) { return plan.site.water.source == source; };
    };
    set.enumeration<plan::WaterSource>(tr("Source"), "source", {tr("tap"), tr("filtered"), tr("reverse osmosis")},
                                       [](plan::Plan& plan) { return &plan.site.water.source; });
    set.quantity(tr("To the drain for each part made"), "reject_l_per_l", Quantity::number, {0.0, 50.0},
                 [](plan::Plan& plan) { return NumberSlot(&plan.site.water.reject_l_per_l); });
    set.only_when(from(plan::WaterSource::reverse_osmosis));
    set.quantity(tr("A cartridge is good for"), "cartridge_l", Quantity::volume, {1.0, 100000.0},
                 [](plan::Plan& plan) { return NumberSlot(&plan.site.water.cartridge_l); });
    set.only_when([](plan::Plan& plan) {
        return plan.site.water.cartridge_l ||
               plan.site.water.source.value_or(plan::WaterSource::tap) != plan::WaterSource::tap;
    });
    set.flag(tr("Conditioner"), "conditioned", [](plan::Plan& plan) { return &plan.site.water.conditioned; });
    set.price(tr("Price of a m³, drain included"), "price_per_m3",
              [](plan::Plan& plan) { return &plan.site.water.price_per_m3; });
}

void SitePage::build_circuits()
{
    heading(tr("Circuits"));
    const auto list = [](plan::Plan& plan) { return &plan.site.circuits; };
    ElementList& elements_list =
        elements(tr("circuit"), actions_for<plan::Circuit>(
                                    list, "c", [](plan::Plan&) { return plan::Circuit{}; },
                                    [](const plan::Circuit& circuit, FormState& state) {
                                        return QStringLiteral("%1  %2, %3")
                                            .arg(QString::fromStdString(circuit.id),
                                                 state.formatter.value(circuit.voltage_v, Quantity::voltage),
                                                 state.formatter.value(circuit.rating_a, Quantity::current));
                                    }));
    const std::function<plan::Circuit*(plan::Plan&)> chosen = [&elements_list](plan::Plan& plan) {
        return element_in(plan.site.circuits, elements_list.chosen());
    };
    FieldSet& set = fields([&elements_list](plan::Plan& plan) {
        return element_pointer("/site/circuits", &plan.site.circuits, elements_list.chosen());
    });
    set.quantity(tr("Voltage"), "voltage_v", Quantity::voltage, {12.0, 480.0},
                 slot_of(chosen, &plan::Circuit::voltage_v));
    set.quantity(tr("Breaker"), "rating_a", Quantity::current, {1.0, 125.0}, slot_of(chosen, &plan::Circuit::rating_a));
    set.quantity(tr("Everything else on it"), "other_load_w", Quantity::power, {0.0, 30000.0},
                 slot_of(chosen, &plan::Circuit::other_load_w));
}

void SitePage::build_strips()
{
    heading(tr("Outlet strips"));
    ElementList& elements_list = elements(
        tr("outlet strip"),
        actions_for<plan::Strip>([](plan::Plan& plan) { return &plan.site.strips; }, "s",
                                 [](plan::Plan& plan) {
                                     plan::Strip strip;
                                     if (plan.site.circuits.empty()) { // a strip has to hang on something
                                         plan::Circuit circuit;
                                         circuit.id = unused_id(plan, "c");
                                         plan.site.circuits.push_back(circuit);
                                     }
                                     strip.circuit = plan.site.circuits.front().id;
                                     return strip;
                                 },
                                 [](const plan::Strip& strip, FormState&) {
                                     return tr("%1  on circuit %2")
                                         .arg(QString::fromStdString(strip.id), QString::fromStdString(strip.circuit));
                                 }));
    const std::function<plan::Strip*(plan::Plan&)> chosen = [&elements_list](plan::Plan& plan) {
        return element_in(plan.site.strips, elements_list.chosen());
    };
    FieldSet& set = fields([&elements_list](plan::Plan& plan) {
        return element_pointer("/site/strips", &plan.site.strips, elements_list.chosen());
    });
    set.choice(tr("On circuit"), "circuit",
               text_choice(member_of(chosen, &plan::Strip::circuit), [](const FormState& form) {
                   std::vector<Option> options;
                   for (const plan::Circuit& candidate : form.plan.site.circuits) {
                       options.push_back({QString::fromStdString(candidate.id), QString::fromStdString(candidate.id)});
                   }
                   return options;
               }));
    set.quantity(tr("Rating"), "rating_a", Quantity::current, {1.0, 125.0}, slot_of(chosen, &plan::Strip::rating_a));
    set.quantity(tr("Timed outlets"), "timed_outlets", Quantity::count, {0.0, 40.0},
                 slot_of(chosen, &plan::Strip::timed_outlets));
    set.quantity(tr("Always-on outlets"), "always_on_outlets", Quantity::count, {0.0, 40.0},
                 slot_of(chosen, &plan::Strip::always_on_outlets));
    set.flag(tr("Residual-current protection"), "residual_current_protected",
             member_of(chosen, &plan::Strip::residual_current_protected));
}

void SitePage::build_stands()
{
    heading(tr("Stands"));
    ElementList& elements_list =
        elements(tr("stand"),
                 actions_for<plan::Stand>(
                     [](plan::Plan& plan) { return &plan.site.stands; }, "t", [](plan::Plan&) { return plan::Stand{}; },
                     [](const plan::Stand& stand, FormState&) { return QString::fromStdString(stand.id); }));
    FieldSet& set = fields([&elements_list](plan::Plan& plan) {
        return element_pointer("/site/stands", &plan.site.stands, elements_list.chosen());
    });
    set.quantity(tr("Rated load, by its maker"), "rated_load_kg", Quantity::mass, {1.0, 5000.0},
                 [&elements_list](plan::Plan& plan) {
                     plan::Stand* stand = element_in(plan.site.stands, elements_list.chosen());
                     return stand != nullptr ? NumberSlot(&stand->rated_load_kg) : NumberSlot();
                 });
}

} // namespace loam::desk
