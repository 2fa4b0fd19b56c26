// How long a bed that nobody waters holds the humidity, in words.
#pragma once

#include <QString>

#include "app/words/numbers.hpp"
#include "core/assess/assessment.hpp"

namespace loam::words {

QString dry_spell_name(const assess::DrySpellResult& spell); // "Unwatered in winter"
// "Too dry after 2.0–6.1 days (likely 3.5)", "holds for 30 days and more", "no target humidity on file".
QString dry_spell_days(const assess::DrySpellResult& spell, const Formatter& formatter);
QString dry_spell_method();

} // namespace loam::words
