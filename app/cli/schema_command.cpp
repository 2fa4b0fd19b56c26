#include "app/cli/arguments.hpp"
#include "app/cli/say.hpp"
#include "core/catalog/catalog.hpp"
#include "core/plan/file.hpp"

namespace loam::cli {

Exit run_schema(const Arguments& arguments)
{
    const QString& kind = arguments.files.front();
    if (kind == QStringLiteral("plan")) {
        return put_out(QByteArray::fromStdString(plan::schema()));
    }
    if (const auto schema = catalog::schema(kind.toStdString())) {
        return put_out(QByteArray::fromStdString(*schema));
    }
    const QStringList known{QStringLiteral("plan"),       QStringLiteral("prices"),    QStringLiteral("species"),
                            QStringLiteral("rules"),      QStringLiteral("materials"), QStringLiteral("devices"),
                            QStringLiteral("assumptions")};
    tell(say("There is no schema “%1”.%2 There are: %3.")
             .arg(kind, did_you_mean(kind, known), known.join(QStringLiteral(", "))));
    return Exit::wrong_usage;
}

} // namespace loam::cli
