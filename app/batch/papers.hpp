// The club's own papers over all adopters: what failed, a summary, one order. Internal to app/batch.
#pragma once

#include <QByteArray>
#include <map>
#include <vector>

#include "app/batch/job.hpp"
#include "app/batch/record.hpp"

namespace loam::batch {

QByteArray failed_csv(const std::vector<RowProblem>& failed);
QByteArray summary_csv(const std::map<std::size_t, Record>& records);

struct ClubOrder {
    QByteArray csv;
    QByteArray text;
};

// Over the plans of all good rows, as `shop` would put them together, in the currency of the price list: the club buys.
// What each has, or is lent, is set off first.
ClubOrder club_order(const Job& job, const std::vector<Adopter>& adopters);

} // namespace loam::batch
