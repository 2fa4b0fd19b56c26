// The translator finds the texts of this folder under "batch". Internal to app/batch.
#pragma once

#include <QCoreApplication>

namespace loam::batch {

struct Said {
    Q_DECLARE_TR_FUNCTIONS(batch)
};

} // namespace loam::batch
