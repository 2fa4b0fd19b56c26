#include "app/sheets/care_parts.hpp"

#include "app/words/tasks.hpp"
#include "core/calendar/care_tasks.hpp"

namespace loam::sheets {

std::chrono::sys_days first_day_of(const Request& request)
{
    return request.assessment.date;
}

std::vector<calendar::Task> tasks_of(const Request& request)
{
    return calendar::care_tasks(request.plan, request.assessment, request.catalog, first_day_of(request));
}

bool is_dated(const calendar::Task& task)
{
    constexpr int a_week = 7;
    switch (task.recurrence.frequency) {
    case calendar::Frequency::once:
        return task.basis != calendar::Basis::not_known;
    case calendar::Frequency::daily:
        return task.recurrence.every > a_week;
    case calendar::Frequency::weekly:
        return task.recurrence.every > 1 || task.until.has_value();
    case calendar::Frequency::monthly:
    case calendar::Frequency::yearly:
        return true;
    }
    return true;
}

QString title_of(const calendar::Task& task, const Request& request, const words::Speaker& speaker)
{
    return request.plan.enclosures.size() > 1 ? words::task_title_placed(task, speaker)
                                              : words::task_title(task, speaker);
}

} // namespace loam::sheets
