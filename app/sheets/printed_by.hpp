// Who hands a sheet out: free text at its head. Empty: nobody is named.
#pragma once

#include <QString>

namespace loam::sheets {

struct PrintedBy {
    QString name;    // of a club, rescue or keeper
    QString contact; // how the reader reaches them; several lines
    friend bool operator==(const PrintedBy&, const PrintedBy&) = default;
};

} // namespace loam::sheets
