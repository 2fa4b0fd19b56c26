// loamstead-cli: the program without a window.
#include <QCoreApplication>
#include <QGuiApplication>
#include <QHashFunctions>

#include <memory>

#include "app/cli/arguments.hpp"
#include "app/cli/help.hpp"
#include "app/cli/say.hpp"
#include "app/files/identity.hpp"

using namespace loam;
using namespace loam::cli;

namespace {

bool draws(int argc, char** argv)
{
    const Command* command = argc > 1 ? find_command(QString::fromLocal8Bit(argv[1])) : nullptr;
    return command != nullptr && command->draws;
}

// Only what draws pays for fonts, and it never needs a display.
std::unique_ptr<QCoreApplication> application_for(int& argc, char** argv)
{
    if (!draws(argc, argv)) {
        return std::make_unique<QCoreApplication>(argc, argv);
    }
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    return std::make_unique<QGuiApplication>(argc, argv);
}

Exit refuse(const QString& message)
{
    tell(message);
    tell(say("“loamstead-cli --help” tells more."));
    return Exit::wrong_usage;
}

// The words before "--" that ask for help or the version, wherever they stand.
bool asks_for(const QStringList& words, const QStringList& names)
{
    for (const QString& word : words) {
        if (word == QStringLiteral("--")) {
            return false;
        }
        if (names.contains(word)) {
            return true;
        }
    }
    return false;
}

Exit unknown_command(const QString& name)
{
    QStringList known;
    for (const Command& command : commands()) {
        known << text(command.name);
    }
    return refuse(say("“%1” is not a command.%2").arg(name, did_you_mean(name, known)));
}

Exit run(const QStringList& words)
{
    const QStringList help{QStringLiteral("--help"), QStringLiteral("-h")};
    if (words.isEmpty()) {
        return refuse(say("A command is missing."));
    }
    const Command* command = find_command(words.front());
    if (command == nullptr && !words.front().startsWith(QLatin1Char('-'))) {
        return unknown_command(words.front());
    }
    if (asks_for(words, help)) {
        return put_out((command != nullptr ? command_help(*command) : general_help()).toUtf8());
    }
    if (asks_for(words, {QStringLiteral("--version")})) {
        return put_out(QStringLiteral("loamstead-cli %1\n").arg(QCoreApplication::applicationVersion()).toUtf8());
    }
    if (command == nullptr) {
        return refuse(say("The command must come first, before “%1”.").arg(words.front()));
    }
    const auto parsed = parse(*command, words.mid(1));
    if (const auto* error = std::get_if<UsageError>(&parsed)) {
        return refuse(error->message);
    }
    return command->run(std::get<Arguments>(parsed));
}

} // namespace

int main(int argc, char** argv)
{
    QHashSeed::setDeterministicGlobalSeed(); // Qt writes the fonts of a PDF in the order of a hash
    const std::unique_ptr<QCoreApplication> application = application_for(argc, argv);
    files::set_identity(*application);
    return static_cast<int>(run(QCoreApplication::arguments().mid(1)));
}
