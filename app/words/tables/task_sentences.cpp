// What the tasks of the care calendar are called, and what each says to do. {species}, {where} and {food} are names.
#include <QtGlobal>

#include "app/words/sentences.hpp"

namespace loam::words {

namespace {

constexpr Sentence names[] = {
    {"look-over", QT_TRANSLATE_NOOP("sentences", "Look at the animals and read the thermometers")},
    {"change-water", QT_TRANSLATE_NOOP("sentences", "Change the water")},
    {"top-up-bowls", QT_TRANSLATE_NOOP("sentences", "Top up the bowls")},
    {"mist", QT_TRANSLATE_NOOP("sentences", "Mist")},
    {"clean-mister", QT_TRANSLATE_NOOP("sentences", "Clean the mister")},
    {"water-bed", QT_TRANSLATE_NOOP("sentences", "Water the bed")},
    {"spot-clean", QT_TRANSLATE_NOOP("sentences", "Remove droppings and leftovers")},
    {"disinfect", QT_TRANSLATE_NOOP("sentences", "Clean and disinfect bowls and furnishings")},
    {"turn-bed", QT_TRANSLATE_NOOP("sentences", "Sift and turn the bed, top it up")},
    {"set-timer", QT_TRANSLATE_NOOP("sentences", "Set the timer of the lamps: {on} to {off}")},
    {"outgrown", QT_TRANSLATE_NOOP("sentences", "The enclosure may be outgrown")},
    {"quarantine-end", QT_TRANSLATE_NOOP("sentences", "Quarantine of a new animal may end")},
    {"feed-how-often", QT_TRANSLATE_NOOP("sentences", "Feeding of {species}: decide how often")},
    {"feed-prey", QT_TRANSLATE_NOOP("sentences", "Feed {species}: {food}")},
    {"stock-food", QT_TRANSLATE_NOOP("sentences", "Food of {species} for a month")},
    {"soak", QT_TRANSLATE_NOOP("sentences", "Bathe {species}")},
    {"weigh-first", QT_TRANSLATE_NOOP("sentences", "Weigh the new {species}")},
    {"weigh", QT_TRANSLATE_NOOP("sentences", "Weigh {species}")},
    {"check-shell", QT_TRANSLATE_NOOP("sentences", "Check beak, claws and shell of {species}")},
    {"check-lizard", QT_TRANSLATE_NOOP("sentences", "Check claws, toes and skin of {species}")},
    {"check-snake", QT_TRANSLATE_NOOP("sentences", "Check skin, eyes and mouth of {species}")},
    {"check-frog", QT_TRANSLATE_NOOP("sentences", "Check skin and weight of {species}")},
    {"vet-first", QT_TRANSLATE_NOOP("sentences", "First check of {species} by a reptile vet")},
    {"vet-yearly", QT_TRANSLATE_NOOP("sentences", "Yearly check of {species} by a reptile vet")},
    {"rest-vet", QT_TRANSLATE_NOOP("sentences", "Vet's check of {species} before the winter rest")},
    {"rest-begins", QT_TRANSLATE_NOOP("sentences", "Winter rest of {species} begins: no food from today")},
    {"rest-cold", QT_TRANSLATE_NOOP("sentences", "{species} goes into the cold")},
    {"rest-weigh", QT_TRANSLATE_NOOP("sentences", "Weigh {species} in its winter rest")},
    {"rest-warm-up", QT_TRANSLATE_NOOP("sentences", "Begin to warm {species} up")},
    {"rest-over", QT_TRANSLATE_NOOP("sentences", "Winter rest of {species} is over")},
    {"test-thermostat", QT_TRANSLATE_NOOP("sentences", "Test the thermostat of {where}")},
    {"read-uv", QT_TRANSLATE_NOOP("sentences", "Read the UV of {where} with a meter")},
    {"test-residual-current", QT_TRANSLATE_NOOP("sentences", "Test the residual-current device")},
    {"test-smoke-alarm", QT_TRANSLATE_NOOP("sentences", "Test the smoke alarm")},
    {"change-batteries", QT_TRANSLATE_NOOP("sentences", "Change the batteries of thermometers and hygrometers")},
    {"change-cartridge", QT_TRANSLATE_NOOP("sentences", "Change the cartridge of the water filter")},
    {"replace-item", QT_TRANSLATE_NOOP("sentences", "Replace: {item}")},
    {"replace-uv", QT_TRANSLATE_NOOP("sentences", "Replace: {item} (its UV fades)")},
    {"replace-bed", QT_TRANSLATE_NOOP("sentences", "Replace the bed: {item}")},
    {"renew-prices", QT_TRANSLATE_NOOP("sentences", "Renew the price list")},
    {"renew-plan", QT_TRANSLATE_NOOP("sentences", "Work the plan out anew and save the calendar again")},
};

constexpr Sentence rows[] = {
    {"look-over",
     QT_TRANSLATE_NOOP(
         "sentences",
         "Every animal is awake, breathes with its mouth closed and moves as usual; lamps and heaters work; both "
         "thermometers read what they should. A lamp that has failed is replaced the same day.")},
    {"change-water",
     QT_TRANSLATE_NOOP("sentences",
                       "Pour the bowls out, scrub and rinse them, and fill in {water} of fresh lukewarm water[, with "
                       "{conditioner} of conditioner]. Change it at once where it is fouled.")},
    {"top-up-bowls",
     QT_TRANSLATE_NOOP("sentences",
                       "See that the water is clean and as deep as planned; about {water} a day evaporate.")},
    {"mist",
     QT_TRANSLATE_NOOP("sentences", "Spray {water} a day[, in {times} goes], most of it over the cool side, and not on "
                                    "hot lamps or sockets. Between two mistings the top of the bed may dry.")},
    {"clean-mister", QT_TRANSLATE_NOOP("sentences", "Empty it, rinse the tank and the nozzles, and fill it with fresh "
                                                    "water. It draws about {water} a day. Unplug it first.")},
    {"water-bed", QT_TRANSLATE_NOOP("sentences", "Pour {water} into the bed on the cool side, away from lamps, mats "
                                                 "and sockets. Feel the bed first: none where it is still wet.")},
    {"spot-clean",
     QT_TRANSLATE_NOOP("sentences", "Take out droppings, what is left of the food, and wet patches of the bed.")},
    {"disinfect",
     QT_TRANSLATE_NOOP("sentences", "Wash them outside the kitchen, disinfect them, and rinse until nothing smells. No "
                                    "phenols. The animal stays away from it until all is dry.")},
    {"turn-bed",
     QT_TRANSLATE_NOOP(
         "sentences",
         "Sift out what is fouled, turn the upper part, and fill up to the planned depth. Change the whole bed at once "
         "where it smells or has mites or mould. Look for eggs and for a buried animal first.")},
    {"set-timer",
     QT_TRANSLATE_NOOP("sentences", "On at {on}, off at {off}, so that the hours of light follow the year.")},
    {"outgrown", QT_TRANSLATE_NOOP(
                     "sentences", "By the fastest published growth the animals reach about now what this enclosure can "
                                  "hold. Measure them, state their length in the plan, and have it worked out anew.")},
    {"quarantine-end",
     QT_TRANSLATE_NOOP(
         "sentences",
         "Only where an animal was new on the first day, has been by itself with tools of its own, and a vet has found "
         "nothing in its droppings: {days} are usual. The count begins anew when another animal joins.")},
    {"feed-how-often",
     QT_TRANSLATE_NOOP(
         "sentences",
         "Write down on which days {food} are given and how much. What is left is taken out the same day.")},
    {"feed-prey",
     QT_TRANSLATE_NOOP("sentences", "One for each animal, {prey} in all, thawed outside the kitchen. None to an animal "
                                    "that is about to shed. What is not eaten is taken out the same day.")},
    {"stock-food",
     QT_TRANSLATE_NOOP("sentences", "For a month about {monthly} {food}[, and {calcium} of calcium powder].")},
    {"soak", QT_TRANSLATE_NOOP("sentences", "Ten to fifteen minutes in shallow lukewarm water that it can stand in, "
                                            "never left alone. Hatchlings more often: ask a reptile vet.")},
    {"weigh-first", QT_TRANSLATE_NOOP("sentences", "Write the weight down, always at the same time of day. A loss of a "
                                                   "tenth is a reason for a reptile vet within days.")},
    {"weigh", QT_TRANSLATE_NOOP("sentences",
                                "Write the weight down, always at the same time of day. A loss of a tenth is a reason "
                                "for a reptile vet within days. Measure the length too, and state both in the plan.")},
    {"check-shell",
     QT_TRANSLATE_NOOP("sentences", "Beak and claws of the usual length, eyes and nose clear, the shell hard and "
                                    "without soft or smelling places. A vet trims what is too long.")},
    {"check-lizard", QT_TRANSLATE_NOOP("sentences", "Claws of the usual length, no remains of shed skin about toes and "
                                                    "tail, jaw firm, eyes clear. A vet trims what is too long.")},
    {"check-snake", QT_TRANSLATE_NOOP("sentences", "The last shed skin in one piece with both eye caps and the tip of "
                                                   "the tail, no mites, mouth closed and clean.")},
    {"check-frog", QT_TRANSLATE_NOOP("sentences", "Skin smooth and of the usual colour, no sores, belly neither sunken "
                                                  "nor swollen. Touch it only with clean wet hands or rinsed gloves.")},
    {"vet-first", QT_TRANSLATE_NOOP("sentences", "Where the animal is new, or no vet has seen it yet: within {days}, "
                                                 "with a faecal sample. Bring its weights.")},
    {"vet-yearly",
     QT_TRANSLATE_NOOP("sentences",
                       "With a faecal sample and the list of its weights. Usual visits in a year: {visits}.")},
    {"rest-vet",
     QT_TRANSLATE_NOOP(
         "sentences",
         "With a faecal sample. Without it, or where it is ill, thin or in its first winter, the animal stays warm.")},
    {"rest-begins",
     QT_TRANSLATE_NOOP(
         "sentences",
         "Water to drink and baths go on, so that the gut empties. The sheet “Winter rest” has the weeks.")},
    {"rest-cold",
     QT_TRANSLATE_NOOP("sentences", "From today at {cold}, dark and even; read the thermometer every day.")},
    {"rest-weigh", QT_TRANSLATE_NOOP("sentences", "Ask a vet below {ask_below}; end the rest below {stop_below}. End "
                                                  "it too where the animal is wet, wakes or passes urine.")},
    {"rest-warm-up",
     QT_TRANSLATE_NOOP("sentences",
                       "Warmth and light rise evenly to the usual; water to drink and to bathe in first.")},
    {"rest-over",
     QT_TRANSLATE_NOOP("sentences", "Food again. One that does not eat within a week or two sees a reptile vet.")},
    {"test-thermostat",
     QT_TRANSLATE_NOOP(
         "sentences",
         "Warm the probe in your hand: the device has to switch off or grow dim. Lay it back exactly where it was[, "
         "set to {setpoint}]. One that goes on heating is unplugged and replaced the same day.")},
    {"read-uv",
     QT_TRANSLATE_NOOP("sentences",
                       "At the height of the animal's back in the basking place, after half an hour of burning; write "
                       "it into the plan. Without a meter, go by the date of replacement. Do not look into the lamp.")},
    {"test-residual-current",
     QT_TRANSLATE_NOOP(
         "sentences",
         "Push its test button: the power has to go off. Where it does not, unplug the enclosures and call a licensed "
         "electrician. Where there is none, have one fitted. Check the timers afterwards.")},
    {"test-smoke-alarm",
     QT_TRANSLATE_NOOP(
         "sentences",
         "Push the test button of the alarm in the room of the enclosures. Where there is none, fit one.")},
    {"change-batteries",
     QT_TRANSLATE_NOOP(
         "sentences",
         "Afterwards lay them side by side for an hour: those that differ by more than a degree are replaced.")},
    {"change-cartridge",
     QT_TRANSLATE_NOOP("sentences",
                       "[It is good for {life}. ]Sooner where the maker says so or the water tastes of chlorine.")},
    {"replace-item",
     QT_TRANSLATE_NOOP("sentences",
                       "By its usual life it is worn out now, at the earliest on {earliest}. Keep a spare of every "
                       "lamp. Let lamps cool and unplug them first; lamps with mercury are hazardous waste.")},
    {"replace-uv",
     QT_TRANSLATE_NOOP("sentences",
                       "It still shines, but gives less UV than the animals need; at the earliest on {earliest}, and a "
                       "meter tells. Let it cool and unplug it first; lamps with mercury are hazardous waste.")},
    {"replace-bed",
     QT_TRANSLATE_NOOP("sentences",
                       "[{bed} are filled in. ]At the earliest on {earliest}, and at once where it smells or has mites "
                       "or mould. Switch off and unplug mats first, and do it outside the kitchen.")},
    {"renew-prices",
     QT_TRANSLATE_NOOP("sentences",
                       "The prices are of {date}. Older than a year, they say little of what things cost.")},
    {"renew-plan", QT_TRANSLATE_NOOP("sentences", "State ages, lengths, weights and hours burnt. What has to be "
                                                  "replaced is in this calendar until {date} only.")},
};

} // namespace

Sentences task_names()
{
    return names;
}

Sentences task_sentences()
{
    return rows;
}

} // namespace loam::words
