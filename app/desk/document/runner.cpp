#include "app/desk/document/runner.hpp"

#include <QDate>
#include <QMetaObject>
#include <chrono>
#include <utility>

#include "app/desk/document/assessment_worker.hpp"
#include "app/desk/document/vector_registers.hpp"

namespace loam::desk {

namespace {

// After a single edit: short enough that it is answered at once.
constexpr int rest_ms = 15;
// While edits follow one another, as in a drag: what is started between two of them would be stopped by the next, which
// would have to wait for it.
constexpr int rest_in_succession_ms = 200;
constexpr int succession_ms = 250; // edits no further apart follow one another

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
        clear_vector_registers();
    };
    clear_vector_registers();
    std::optional<assess::Assessment> whole = assess::assess(plan, *catalog, today(), workspace_, stop, deliver);
    if (whole) {
        emit ready(generation, std::make_shared<const assess::Assessment>(std::move(*whole)));
    }
}

void AssessmentWorker::look(quint64 generation, const plan::Plan& plan, const SharedCatalog& catalog,
                            const assess::LookAt& at)
{
    clear_vector_registers();
    auto heat = assess::look(plan, *catalog, at, workspace_);
    emit looked(generation, heat ? std::make_shared<const Look>(Look{at, *std::move(heat)}) : nullptr);
}

AssessmentRunner::AssessmentRunner(SharedCatalog catalog, QObject* parent)
    : QObject(parent), worker_(new AssessmentWorker), catalog_(std::move(catalog))
{
    qRegisterMetaType<SharedAssessment>();
    qRegisterMetaType<SharedLook>();
    thread_.setObjectName(QStringLiteral("assessment"));
    worker_->moveToThread(&thread_);
    connect(&thread_, &QThread::finished, worker_, &QObject::deleteLater);
    connect(worker_, &AssessmentWorker::ready, this, &AssessmentRunner::receive);
    connect(worker_, &AssessmentWorker::looked, this, &AssessmentRunner::receive_look);
    rest_.setSingleShot(true);
    connect(&rest_, &QTimer::timeout, this, &AssessmentRunner::launch);
    thread_.start();
}

AssessmentRunner::~AssessmentRunner()
{
    stop_.request_stop();
    thread_.quit();
    thread_.wait();
}

void AssessmentRunner::request(const plan::Plan& plan, const assess::LookAt& in_view)
{
    plan_ = plan;
    in_view_ = in_view;
    ++generation_;
    stop_.request_stop();
    emit started();
    const bool in_succession = since_request_.isValid() && since_request_.elapsed() < succession_ms;
    since_request_.start();
    rest_.start(in_succession ? rest_in_succession_ms : rest_ms);
    look();
}

void AssessmentRunner::set_catalog(SharedCatalog catalog)
{
    catalog_ = std::move(catalog);
    if (generation_ > 0) {
        request(plan_, in_view_);
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

// One at a time, so that the newest plan is looked at next and none has to wait behind older ones.
void AssessmentRunner::look()
{
    if (looking_ || looked_at_ == generation_ || in_view_.enclosure.empty()) {
        return;
    }
    looking_ = true;
    QMetaObject::invokeMethod(
        worker_,
        [worker = worker_, generation = generation_, plan = plan_, catalog = catalog_, at = in_view_]() {
            worker->look(generation, plan, catalog, at);
        },
        Qt::QueuedConnection);
}

void AssessmentRunner::receive_look(quint64 generation, const SharedLook& look)
{
    looking_ = false;
    looked_at_ = generation;
    emit looked(look);
    this->look(); // the plan may have gone on meanwhile
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
