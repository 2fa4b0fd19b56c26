#include "app/cli/help.hpp"

#include "app/cli/say.hpp"

namespace loam::cli {

namespace {

// A name and what it means; the meaning in a column of its own.
QString entry(const QString& name, const QString& meaning)
{
    constexpr qsizetype column = 24;
    return QStringLiteral("  ") + name.leftJustified(column - 2) + meaning + QLatin1Char('\n');
}

QString option_name(const Option& option)
{
    return text(option.name) + (option.value.empty() ? QString() : QStringLiteral(" ") + text(option.value));
}

} // namespace

QString general_help()
{
    QString help = say("Usage: loamstead-cli COMMAND ...") + QStringLiteral("\n\n");
    help += say("Plans indoor enclosures for reptiles and amphibians, and costs them.") + QStringLiteral("\n\n");
    help += say("Commands:") + QLatin1Char('\n');
    for (const Command& command : commands()) {
        help += entry(text(command.name) + QStringLiteral(" ") + text(command.takes), say(command.summary.data()));
    }
    help += QLatin1Char('\n') + say("Options:") + QLatin1Char('\n');
    help += entry(QStringLiteral("--help"), say("this help; after a command, that command's"));
    help += entry(QStringLiteral("--version"), say("the version"));
    help += QLatin1Char('\n') +
            say("A file named - is standard input. Results go to standard output,\nmessages to "
                "standard error.") +
            QLatin1Char('\n');
    return help +
           say("Exit status: 0 done, 1 with --strict where something falls short, 2 wrong usage,\n3 bad input, "
               "4 a file can't be read or written.") +
           QLatin1Char('\n');
}

QString command_help(const Command& command)
{
    QString help = say("Usage: loamstead-cli %1 %2").arg(text(command.name), text(command.takes));
    help += (command.options.empty() ? QString() : say(" [OPTION ...]")) + QStringLiteral("\n\n");
    help += say(command.summary.data()) + QLatin1Char('\n');
    help += command.note.empty() ? QString() : say(command.note.data()) + QLatin1Char('\n');
    help += QLatin1Char('\n') + say("Options:") + QLatin1Char('\n');
    for (const Option& option : command.options) {
        help += entry(option_name(option), say(option.help.data()));
    }
    return help + entry(QStringLiteral("--help"), say("this help"));
}

} // namespace loam::cli
