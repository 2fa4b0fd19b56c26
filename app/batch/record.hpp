// What is kept of an adopter whose sheets are made.
#pragma once

#include <QByteArray>
#include <QString>
#include <optional>

#include "core/assess/assessment.hpp"

namespace loam::batch {

struct Record {
    std::size_t row = 0;
    QString fingerprint; // of what the row said
    QString file;        // its name in the folder
    QString sha256;      // of its bytes
    QString verdict;     // the worst: "fits", "tight", "falls short", "danger" or "not known"
    QString currency;    // empty: the prices are in another one, and the amounts are empty too
    QString startup_low;
    QString startup_typical;
    QString startup_high;
    QString running_per_year; // typical
    int unpriced = 0;         // things without a price
    int not_stated = 0;       // inputs that were assumed
    friend bool operator==(const Record&, const Record&) = default;
};

// Without row, fingerprint, file and hash.
Record record_of(const assess::Assessment& assessment);

QByteArray line_of(const Record& record); // one line of JSON with its end; the same record gives the same bytes
std::optional<Record> record_in(const QByteArray& line);

} // namespace loam::batch
