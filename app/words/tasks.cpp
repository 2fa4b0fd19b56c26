#include "app/words/tasks.hpp"

#include <QCoreApplication>

#include <array>

#include "app/words/sentences.hpp"
#include "app/words/verdicts.hpp"

namespace loam::words {

namespace {

// The translator finds these texts under "tasks".
struct Said {
    Q_DECLARE_TR_FUNCTIONS(tasks)
};

using calendar::Frequency;
using calendar::Task;

QString amount_text(const calendar::Amount& amount, const Formatter& formatter)
{
    const bool of_an_animal = amount.name == "ask_below" || amount.name == "stop_below";
    if (amount.unit == "g") {
        const Range kg{amount.range.low / 1000.0, amount.range.likely / 1000.0, amount.range.high / 1000.0};
        return formatter.span(kg, Quantity::small_mass);
    }
    const Quantity quantity = of_an_animal ? Quantity::small_mass
                              : amount.unit == "each" || amount.unit == "1"
                                  ? Quantity::number
                                  : quantity_of(amount.unit).value_or(Quantity::number);
    const bool reads_as_nothing = quantity == Quantity::dose && amount.range.low > 0.0 && amount.range.low < 1.0;
    return reads_as_nothing
               ? Said::tr("%1 to %2")
                     .arg(formatter.about(amount.range.low, quantity), formatter.about(amount.range.high, quantity))
               : formatter.span(amount.range, quantity);
}

QString label_text(const Label& label, const Speaker& speaker)
{
    if (label.name == "earliest" || label.name == "date") {
        return speaker.formatter().iso_date(label.text);
    }
    if (label.name == "food") {
        return speaker.need(label.text);
    }
    return label.name == "species" ? speaker.name_of(label.text) : QString::fromStdString(label.text);
}

std::optional<QString> placeholder(const Task& task, const Speaker& speaker, const QString& name)
{
    if (name == QStringLiteral("where")) {
        return speaker.name_of(task.where);
    }
    for (const calendar::Amount& one : task.amounts) {
        if (name == QString::fromStdString(one.name)) {
            return amount_text(one, speaker.formatter());
        }
    }
    for (const Label& one : task.labels) {
        if (name == QString::fromStdString(one.name)) {
            return label_text(one, speaker);
        }
    }
    return std::nullopt;
}

QString sentence(Sentences table, const Task& task, const Speaker& speaker)
{
    const Sentence* row = find_sentence(table, task.code);
    if (row == nullptr) {
        return QString::fromStdString(task.code);
    }
    return fill(translated(row->text),
                [&](const QString& name, const QString&) { return placeholder(task, speaker, name); })
        .text;
}

QString weekdays(const std::vector<std::chrono::weekday>& days, const QLocale& locale)
{
    QStringList names;
    for (const std::chrono::weekday day : days) {
        names << locale.standaloneDayName(static_cast<int>(day.iso_encoding()));
    }
    return names.join(QStringLiteral(", "));
}

QString several(const char* one, const char* many, int count)
{
    return count == 1 ? QCoreApplication::translate("tasks", one)
                      : QCoreApplication::translate("tasks", many).arg(count);
}

} // namespace

QString task_title(const Task& task, const Speaker& speaker)
{
    return sentence(task_names(), task, speaker);
}

QString task_title_placed(const Task& task, const Speaker& speaker)
{
    const QString title = task_title(task, speaker);
    return task.enclosure.empty() ? title : Said::tr("%1 (%2)").arg(title, speaker.name_of(task.enclosure));
}

QString task_advice(const Task& task, const Speaker& speaker)
{
    return sentence(task_sentences(), task, speaker);
}

QString task_when(const Task& task, const Formatter& formatter)
{
    const calendar::Recurrence& recurrence = task.recurrence;
    switch (recurrence.frequency) {
    case Frequency::once:
        return task.basis == calendar::Basis::not_known ? Said::tr("how often is not known") : Said::tr("once");
    case Frequency::daily:
        return recurrence.times_a_day > 1 ? Said::tr("%1 times a day").arg(recurrence.times_a_day)
                                          : several(QT_TRANSLATE_NOOP("tasks", "every day"),
                                                    QT_TRANSLATE_NOOP("tasks", "every %1 days"), recurrence.every);
    case Frequency::weekly:
        if (!recurrence.on.empty()) {
            return Said::tr("every week: %1").arg(weekdays(recurrence.on, formatter.locale()));
        }
        return several(QT_TRANSLATE_NOOP("tasks", "every week"), QT_TRANSLATE_NOOP("tasks", "every %1 weeks"),
                       recurrence.every);
    case Frequency::monthly:
        return several(QT_TRANSLATE_NOOP("tasks", "every month"), QT_TRANSLATE_NOOP("tasks", "every %1 months"),
                       recurrence.every);
    case Frequency::yearly:
        return several(QT_TRANSLATE_NOOP("tasks", "every year"), QT_TRANSLATE_NOOP("tasks", "every %1 years"),
                       recurrence.every);
    }
    return {};
}

QString task_basis(const Task& task, const Formatter& formatter)
{
    switch (task.basis) {
    case calendar::Basis::stated:
        return Said::tr("As the plan states it.");
    case calendar::Basis::computed:
        return Said::tr("Worked out from the plan.");
    case calendar::Basis::not_known:
        return Said::tr("How often is not in the guidance. Decide it, with a reptile vet or an experienced keeper, and "
                        "write it down.");
    case calendar::Basis::guidance:
        break;
    }
    const QString cited = source(task.source);
    const bool one_figure = !task.interval_d || task.interval_d->low == task.interval_d->high;
    return one_figure
               ? Said::tr("Why: %1").arg(cited)
               : Said::tr("Usual are %1 between. Why: %2").arg(formatter.span(*task.interval_d, Quantity::days), cited);
}

QString hands_advice()
{
    return Said::tr("Wash your hands with soap afterwards, and keep all this out of the kitchen.");
}

QString task_kind(calendar::Kind kind)
{
    static constexpr std::array names{
        QT_TRANSLATE_NOOP("tasks", "animals"),        QT_TRANSLATE_NOOP("tasks", "water"),
        QT_TRANSLATE_NOOP("tasks", "cleaning"),       QT_TRANSLATE_NOOP("tasks", "food"),
        QT_TRANSLATE_NOOP("tasks", "equipment"),      QT_TRANSLATE_NOOP("tasks", "replacement"),
        QT_TRANSLATE_NOOP("tasks", "health"),         QT_TRANSLATE_NOOP("tasks", "winter rest"),
        QT_TRANSLATE_NOOP("tasks", "plan and prices")};
    return QCoreApplication::translate("tasks", names.at(static_cast<std::size_t>(kind)));
}

} // namespace loam::words
