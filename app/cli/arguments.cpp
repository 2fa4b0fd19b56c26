#include "app/cli/arguments.hpp"

#include <string>

#include "app/cli/say.hpp"
#include "core/json/nearest_name.hpp"

namespace loam::cli {

namespace {

QStringList choices_of(const Option& option)
{
    return text(option.choices).split(QLatin1Char(' '), Qt::SkipEmptyParts);
}

const Option* find_option(const Command& command, const QString& name)
{
    for (const Option& option : command.options) {
        if (name == text(option.name)) {
            return &option;
        }
    }
    return nullptr;
}

UsageError unknown_option(const Command& command, const QString& name)
{
    QStringList known;
    for (const Option& option : command.options) {
        known << text(option.name);
    }
    return {say("“%1” is not an option of “%2”.%3").arg(name, text(command.name), did_you_mean(name, known))};
}

std::optional<UsageError> check_value(const Option& option, const QString& value)
{
    const QStringList known = choices_of(option);
    if (known.isEmpty()) {
        return value.isEmpty() ? std::optional(UsageError{say("%1 needs a value.").arg(text(option.name))})
                               : std::nullopt;
    }
    for (const QString& each : option.list ? value.split(QLatin1Char(',')) : QStringList{value}) {
        if (!known.contains(each)) {
            return UsageError{
                say("“%1” is not a value of %2.%3 It takes: %4.")
                    .arg(each, text(option.name), did_you_mean(each, known), known.join(QStringLiteral(", ")))};
        }
    }
    return std::nullopt;
}

std::optional<UsageError> check_files(const Command& command, const Arguments& arguments)
{
    const auto given = static_cast<std::size_t>(arguments.files.size());
    if (given < command.least_files) {
        return UsageError{say("“%1” needs %2.").arg(text(command.name), text(command.takes))};
    }
    if (given > command.most_files) {
        return UsageError{say("“%1” takes one %2, and there is also “%3”.")
                              .arg(text(command.name), text(command.takes), arguments.files.back())};
    }
    QStringList all = arguments.files;
    all << arguments.all("--prices");
    return all.count(QStringLiteral("-")) > 1
               ? std::optional(UsageError{say("Standard input (-) can be read only once.")})
               : std::nullopt;
}

class Reader {
public:
    Reader(const Command& command, const QStringList& words) : command_(command), words_(words) {}

    std::variant<Arguments, UsageError> read()
    {
        while (at_ < words_.size()) {
            if (auto error = word(words_[at_++])) {
                return *error;
            }
        }
        if (auto error = check_files(command_, result_)) {
            return *error;
        }
        return std::move(result_);
    }

private:
    std::optional<UsageError> word(const QString& word)
    {
        if (only_files_ || word == QStringLiteral("-") || !word.startsWith(QLatin1Char('-'))) {
            result_.files << word;
            return std::nullopt;
        }
        if (word == QStringLiteral("--")) {
            only_files_ = true;
            return std::nullopt;
        }
        const QString name = word.section(QLatin1Char('='), 0, 0);
        const Option* option = find_option(command_, name);
        if (option == nullptr) {
            return unknown_option(command_, name);
        }
        if (result_.values.count(name) > 0 && !option->repeats) {
            return UsageError{say("%1 is given twice.").arg(name)};
        }
        return option->value.empty() ? take_switch(name, word) : take_value(*option, name, word);
    }

    std::optional<UsageError> take_switch(const QString& name, const QString& word)
    {
        if (word.contains(QLatin1Char('='))) {
            return UsageError{say("%1 takes no value.").arg(name)};
        }
        result_.values[name] = {QString()};
        return std::nullopt;
    }

    std::optional<UsageError> take_value(const Option& option, const QString& name, const QString& word)
    {
        if (!word.contains(QLatin1Char('=')) && at_ >= words_.size()) {
            return UsageError{say("%1 needs a value: %2.").arg(name, text(option.value))};
        }
        const QString value = word.contains(QLatin1Char('=')) ? word.section(QLatin1Char('='), 1) : words_[at_++];
        result_.values[name] << value;
        return check_value(option, value);
    }

    const Command& command_;
    const QStringList& words_;
    qsizetype at_ = 0;
    bool only_files_ = false;
    Arguments result_;
};

} // namespace

bool Arguments::has(std::string_view option) const
{
    return values.count(text(option)) > 0;
}

std::optional<QString> Arguments::value(std::string_view option) const
{
    const auto found = values.find(text(option));
    return found == values.end() ? std::nullopt : std::optional(found->second.front());
}

QStringList Arguments::all(std::string_view option) const
{
    const auto found = values.find(text(option));
    return found == values.end() ? QStringList() : found->second;
}

std::variant<Arguments, UsageError> parse(const Command& command, const QStringList& words)
{
    return Reader(command, words).read();
}

QString did_you_mean(const QString& mistyped, const QStringList& names)
{
    std::vector<std::string> texts;
    for (const QString& name : names) {
        texts.push_back(name.toStdString());
    }
    const std::vector<std::string_view> views(texts.begin(), texts.end());
    const auto nearest = json::nearest_name(mistyped.toStdString(), views);
    return nearest ? say(" Did you mean “%1”?").arg(text(*nearest)) : QString();
}

} // namespace loam::cli
