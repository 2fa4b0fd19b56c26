#include <QCoreApplication>

#include "app/report/lines.hpp"
#include "app/report/text_parts.hpp"
#include "app/words/courses.hpp"

namespace loam::report {

namespace {

QString course(const assess::CourseResult& result, const words::Speaker& speaker)
{
    const QString name = QStringLiteral("  ") + words::course_name(result.id).leftJustified(18);
    return wrapped(name, words::course_sentences(result, speaker).join(QLatin1Char(' ')));
}

} // namespace

QString text_courses(const assess::EnclosureResult& enclosure, const words::Speaker& speaker)
{
    QString text;
    for (const assess::CourseResult& day : enclosure.days) {
        text += course(day, speaker);
    }
    if (enclosure.warm_up) {
        text += course(*enclosure.warm_up, speaker);
    }
    for (const assess::CourseResult& drill : enclosure.drills) {
        text += course(drill, speaker);
    }
    if (text.isEmpty()) {
        return {};
    }
    return QLatin1Char('\n') + QStringLiteral("  ") + QCoreApplication::translate("report", "Hour by hour") +
           QLatin1Char('\n') + text;
}

} // namespace loam::report
