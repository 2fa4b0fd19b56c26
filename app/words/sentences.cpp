#include "app/words/sentences.hpp"

#include <QCoreApplication>

namespace loam::words {

namespace {

// How many of its conditions a row states; -1 where one does not hold.
int match(const Sentence& row, Judgement judgement)
{
    if ((row.verdict && *row.verdict != judgement.verdict) ||
        (row.direction && *row.direction != judgement.direction)) {
        return -1;
    }
    return (row.verdict ? 1 : 0) + (row.direction ? 1 : 0);
}

const QString missing_text()
{
    return QCoreApplication::translate("words", "not known");
}

class Filler {
public:
    Filler(const QString& sentence, const Lookup& lookup) : sentence_(sentence), lookup_(lookup) {}

    Filled run()
    {
        while (at_ < sentence_.size()) {
            const QChar mark = sentence_[at_];
            if (mark == QLatin1Char('[')) {
                bracket();
            } else if (mark == QLatin1Char('{')) {
                const QString name = placeholder_name();
                const auto value = look_up(name);
                result_.text += value.value_or(missing_text());
                if (!value) {
                    result_.unfilled << name;
                }
            } else {
                result_.text += mark;
                ++at_;
            }
        }
        return std::move(result_);
    }

private:
    std::optional<QString> look_up(const QString& name) const
    {
        return lookup_(name.section(QLatin1Char(':'), 0, 0), name.section(QLatin1Char(':'), 1));
    }

    QString placeholder_name()
    {
        const qsizetype end = sentence_.indexOf(QLatin1Char('}'), at_);
        const qsizetype stop = end < 0 ? sentence_.size() : end;
        QString name = sentence_.mid(at_ + 1, stop - at_ - 1);
        at_ = stop + 1;
        return name;
    }

    void bracket()
    {
        ++at_;
        QString part;
        bool complete = true;
        while (at_ < sentence_.size() && sentence_[at_] != QLatin1Char(']')) {
            if (sentence_[at_] == QLatin1Char('{')) {
                const auto value = look_up(placeholder_name());
                complete = complete && value.has_value();
                part += value.value_or(QString());
            } else {
                part += sentence_[at_++];
            }
        }
        ++at_;
        result_.text += complete ? part : QString();
    }

    const QString& sentence_;
    const Lookup& lookup_;
    qsizetype at_ = 0;
    Filled result_;
};

} // namespace

const Sentence* find_sentence(Sentences table, std::string_view code, Judgement judgement)
{
    const Sentence* best = nullptr;
    int best_match = -1;
    for (const Sentence& row : table) {
        if (code != row.code) {
            continue;
        }
        const int found = match(row, judgement);
        if (found > best_match) {
            best = &row;
            best_match = found;
        }
    }
    return best;
}

const Sentence* find_finding_sentence(std::string_view code, Judgement judgement)
{
    for (const Sentences table :
         {danger_sentences(), space_sentences(), heat_sentences(), moisture_sentences(), reading_sentences(),
          record_sentences(), light_sentences(), electricity_sentences(), money_sentences(), caution_sentences()}) {
        if (const Sentence* found = find_sentence(table, code, judgement)) {
            return found;
        }
    }
    return nullptr;
}

Filled fill(const QString& sentence, const Lookup& lookup)
{
    Filled filled = Filler(sentence, lookup).run();
    if (!filled.text.isEmpty()) {
        filled.text[0] = filled.text[0].toUpper(); // a sentence may begin with a name such as "lamp d1"
    }
    return filled;
}

QString translated(const char* text)
{
    return QCoreApplication::translate("sentences", text);
}

} // namespace loam::words
