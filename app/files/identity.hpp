// The program's name, version and the domain that settings and data folders go by: one place for both executables.
#pragma once

class QCoreApplication;

namespace loam::files {

// The organization's *domain* is set and its name is not: with a name, the data folders would move.
void set_identity(QCoreApplication& application);

} // namespace loam::files
