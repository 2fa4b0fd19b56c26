// What would narrow a range that an uncertain input decides: what to measure, and where nothing can be measured, that.
#include <QtGlobal>

#include "app/words/sentences.hpp"

namespace loam::words {

namespace {

constexpr const char* by_readings =
    QT_TRANSLATE_NOOP("sentences", "It can't be measured by itself; readings in the running box would narrow it.");
constexpr const char* by_data =
    QT_TRANSLATE_NOOP("sentences", "It lies in the material; a data sheet that states it would narrow it.");

constexpr Sentence rows[] = {
    {"room.temperature",
     QT_TRANSLATE_NOOP("sentences", "A thermometer that keeps highest and lowest, left in the room for a week of that "
                                    "season, would narrow it.")},
    {"room.relative-humidity",
     QT_TRANSLATE_NOOP("sentences", "A hygrometer left in the room for a week of that season would narrow it.")},
    {"mesh.open-fraction",
     QT_TRANSLATE_NOOP("sentences", "Measuring it would narrow it: the gap over the gap and its wire, squared.")},
    {"mesh.return", by_readings},
    {"bed.dampness",
     QT_TRANSLATE_NOOP("sentences", "Keeping the bed evenly damp under the lamp, or dry, would narrow it.")},
    {"misting", QT_TRANSLATE_NOOP("sentences", "Stating how much is misted would narrow it.")},
    {"model.film-factor", by_readings},
    {"model.exchange-factor", by_readings},
    {"model.leak", by_readings},
    {"model.evaporation-factor", by_readings},
    {"model.mixing", by_readings},
    {"model.error",
     QT_TRANSLATE_NOOP("sentences",
                       "No entry of the plan narrows it; thermometers in the running box tell what is so.")},
    // Of a thing
    {"conductivity", by_data},
    {"conductivity-per-water", by_data},
    {"emissivity", by_data},
    {"lamp-transmittance", by_data},
    {"lamp-absorptance", by_data},
    {"leak", QT_TRANSLATE_NOOP("sentences", "Sealing its gaps would narrow it.")},
    {"water-damp",
     QT_TRANSLATE_NOOP("sentences", "Weighing a litre of it as it is kept, and again when dried, would narrow it.")},
    {"water-dry",
     QT_TRANSLATE_NOOP("sentences", "Weighing a litre of it from under the lamp, and again when dried, would narrow "
                                    "it.")},
    {"wetness", by_readings},
    {"power", QT_TRANSLATE_NOOP("sentences", "Measuring it with a power meter at the outlet would narrow it.")},
    {"radiant-share", by_readings},
    {"convective-share", by_readings},
    {"beam", QT_TRANSLATE_NOOP("sentences", "The maker's beam angle, entered with the lamp, would narrow it.")},
};

} // namespace

Sentences narrowing_sentences()
{
    return rows;
}

} // namespace loam::words
