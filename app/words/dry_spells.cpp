#include "app/words/dry_spells.hpp"

#include <QCoreApplication>

namespace loam::words {

namespace {

// The translator finds these texts under "dry_spells".
struct Said {
    Q_DECLARE_TR_FUNCTIONS(dry_spells)
};

} // namespace

QString dry_spell_name(const assess::DrySpellResult& spell)
{
    return spell.season == "winter" ? Said::tr("Unwatered in winter") : Said::tr("Unwatered in summer");
}

QString dry_spell_days(const assess::DrySpellResult& spell, const Formatter& formatter)
{
    if (!spell.days || !spell.least_humidity) {
        return Said::tr("no least humidity on file to compare with");
    }
    const QString least = formatter.value(*spell.least_humidity, Quantity::fraction);
    if (spell.days->high <= 0.0) {
        return Said::tr("under %1 by day from the beginning").arg(least);
    }
    const QString low = formatter.value(spell.days->low, Quantity::days);
    const QString end = formatter.value(spell.course.points.back().days, Quantity::days);
    if (spell.holds_throughout) {
        return spell.days->low < spell.days->high
                   ? Said::tr("likely holds %1 by day for %2 and more; under it after %3 at the earliest")
                         .arg(least, end, low)
                   : Said::tr("holds %1 by day for %2 and more").arg(least, end);
    }
    if (spell.may_hold_longer) {
        return Said::tr("under %1 by day after %2 to more than %3 (likely %4)")
            .arg(least, low, end, formatter.value(spell.days->likely, Quantity::days));
    }
    return Said::tr("under %1 by day after %2").arg(least, formatter.range(*spell.days, Quantity::days));
}

QString dry_spell_method()
{
    return Said::tr(
        "The steady day and night are worked out again step by step while the upper 10 cm of the bed lose their "
        "water, with nobody misting and the bowls kept filled. A bed gives off less once part of its water is "
        "gone (FAO Irrigation and Drainage Paper 56).");
}

} // namespace loam::words
