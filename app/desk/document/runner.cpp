#include "app/desk/document/runner.hpp"

#include <QDate>
#include <QMetaObject>
#include <chrono>
#include <utility>

#include "app/desk/document/assessment_worker.hpp"

namespace loam::desk {

namespace {

// Short enough that an edit answers at once, long enough that dragging a slider does not queue work.
constexpr int rest_ms = 15;

std::chrono::year_month_day today()
{
    const QDate date = QDate::currentDate();
    return {std::chrono::year(date.year()), std::chrono::month(static_cast<unsigned>(date.month())),
            std::chrono::day(static_cast<unsigned>(date.day()))};
}

} // namespace

void AssessmentWorker::compute(quint64 generation, const plan::Plan& plan, const SharedCatalog& catalog,
                               std::stop_token stop)
{
    const auto deliver = [this, generation](const assess::Assessment& stage) {
        emit ready(generation, std::make_shared<const assess::Assessment>(stage));
    };
    std::optional<assess::Assessment> whole = assess::assess(plan, *catalog, today(), workspace_, stop, deliver);
    if (whole) {
        emit ready(generation, std::make_shared<const assess::Assessment>(std::move(*whole)));
    }
}

AssessmentRunner::AssessmentRunner(SharedCatalog catalog, QObject* parent)
    : QObject(parent), worker_(new AssessmentWorker), catalog_(std::move(catalog))
{
    qRegisterMetaType<SharedAssessment>();
    thread_.setObjectName(QStringLiteral("assessment"));
    worker_->moveToThread(&thread_);
    connect(&thread_, &QThread::finished, worker_, &QObject::deleteLater);
    connect(worker_, &AssessmentWorker::ready, this, &AssessmentRunner::receive);
    rest_.setSingleShot(true);
    rest_.setInterval(rest_ms);
    connect(&rest_, &QTimer::timeout, this, &AssessmentRunner::launch);
    thread_.start();
}

AssessmentRunner::~AssessmentRunner()
{
    stop_.request_stop();
    thread_.quit();
    thread_.wait();
}

void AssessmentRunner::request(const plan::Plan& plan)
{
    plan_ = plan;
    ++generation_;
    stop_.request_stop();
    emit started();
    rest_.start();
}

void AssessmentRunner::set_catalog(SharedCatalog catalog)
{
    catalog_ = std::move(catalog);
    if (generation_ > 0) {
        request(plan_);
    }
}

void AssessmentRunner::launch()
{
    stop_ = std::stop_source();
    QMetaObject::invokeMethod(
        worker_,
        [worker = worker_, generation = generation_, plan = plan_, catalog = catalog_, stop = stop_.get_token()]() {
            worker->compute(generation, plan, catalog, stop);
        },
        Qt::QueuedConnection);
}

void AssessmentRunner::receive(quint64 generation, const SharedAssessment& assessment)
{
    if (generation != generation_) {
        return; // superseded: a newer one is on its way
    }
    if (assessment->complete) {
        answered_ = generation;
    }
    emit ready(assessment);
}

} // namespace loam::desk
