// The user's own guidance, as far as it tells two machines apart.
#pragma once

#include <QByteArray>
#include <QString>

namespace loam::batch {

// Of the names and bytes of all JSON files in the folder; of a folder that is not there or empty always the same.
QByteArray guidance_fingerprint(const QString& folder);

} // namespace loam::batch
