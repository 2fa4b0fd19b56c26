// Lets Catch2 show texts of Qt where a check fails.
#pragma once

#include <QString>
#include <QStringList>
#include <ostream>

inline std::ostream& operator<<(std::ostream& out, const QString& text)
{
    return out << text.toStdString();
}

inline std::ostream& operator<<(std::ostream& out, const QStringList& texts)
{
    return out << texts.join(QLatin1Char('\n')).toStdString();
}
