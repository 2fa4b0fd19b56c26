// Where the translator finds the texts of reports: under "report". Internal to app/report.
#pragma once

#include <QCoreApplication>

namespace loam::report {

struct Said {
    Q_DECLARE_TR_FUNCTIONS(report)
};

} // namespace loam::report
