#include "core/buying/offer.hpp"

namespace loam::buying {

bool serves(const ItemOffer& item, const Need& need)
{
    if (!need.item.empty()) { // whoever wishes for it knows what it does
        return item.id == need.item && item.unit == need.unit;
    }
    return item.serves == need.kind && item.unit == need.unit && fits(item, need);
}

bool fits(const ItemOffer& item, const Need& need)
{
    if (!item.fits_from && !item.fits_to) {
        return true;
    }
    return need.fits_value && (!item.fits_from || *item.fits_from <= *need.fits_value) &&
           (!item.fits_to || *need.fits_value <= *item.fits_to);
}

} // namespace loam::buying
