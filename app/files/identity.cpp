#include "app/files/identity.hpp"

#include <QCoreApplication>

namespace loam::files {

void set_identity(QCoreApplication& application)
{
    // ".invalid" is reserved (RFC 2606, from memory): it names nobody's site.
    application.setOrganizationDomain(QStringLiteral("loamstead.invalid"));
    application.setApplicationName(QStringLiteral("loamstead"));
    application.setApplicationVersion(QStringLiteral(LOAMSTEAD_VERSION));
}

} // namespace loam::files
