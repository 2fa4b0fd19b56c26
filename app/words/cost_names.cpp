#include "app/words/cost_names.hpp"

#include <QCoreApplication>

#include <array>

namespace loam::words {

QString cost_name(const std::string& name)
{
    static constexpr std::array own{QT_TRANSLATE_NOOP("costs", "electricity"), QT_TRANSLATE_NOOP("costs", "water")};
    for (const char* each : own) {
        if (name == each) {
            return QCoreApplication::translate("costs", each);
        }
    }
    return QString::fromStdString(name);
}

} // namespace loam::words
