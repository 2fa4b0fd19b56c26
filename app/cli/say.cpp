#include "app/cli/say.hpp"

#include <QCoreApplication>

#include <cstdio>

namespace loam::cli {

QString say(const char* sentence)
{
    return QCoreApplication::translate("cli", sentence);
}

QString text(std::string_view utf8)
{
    return QString::fromUtf8(utf8);
}

void tell(const QString& message)
{
    const QByteArray line = (QStringLiteral("loamstead-cli: ") + message + QLatin1Char('\n')).toUtf8();
    std::fwrite(line.constData(), 1, static_cast<std::size_t>(line.size()), stderr);
}

void tell(const QStringList& messages)
{
    for (const QString& message : messages) {
        tell(message);
    }
}

Exit put_out(const QByteArray& result)
{
    const auto size = static_cast<std::size_t>(result.size());
    const bool written = std::fwrite(result.constData(), 1, size, stdout) == size && std::fflush(stdout) == 0;
    if (!written) {
        tell(say("The result can't be written to standard output."));
    }
    return written ? Exit::done : Exit::file_trouble;
}

} // namespace loam::cli
