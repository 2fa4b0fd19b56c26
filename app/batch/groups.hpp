// Which rows share a climate, and which machine does which.
#pragma once

#include <QByteArray>
#include <vector>

#include "app/batch/job.hpp"

namespace loam::batch {

// Rows whose climates, days and drills are the same, in the order of the list: worked out once.
struct Group {
    std::size_t climate = 0;           // several groups may share one
    std::vector<std::size_t> adopters; // indices
};

// Of the good rows, in the order in which they first appear; none has more than `most` rows, so that one machine need
// not do the list alone and not everything is held at once. The same list gives the same groups everywhere.
std::vector<Group> groups_of(const std::vector<Adopter>& adopters, std::size_t most = 64);

// Those of the slice. Each group goes to the slice with the least to do so far, by what a climate and a row take.
std::vector<Group> slice_of_groups(const std::vector<Group>& groups, const Slice& slice);

} // namespace loam::batch
