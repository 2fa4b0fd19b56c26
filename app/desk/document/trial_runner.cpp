#include "app/desk/document/trial_runner.hpp"

#include <QMetaObject>
#include <utility>

#include "app/desk/document/vector_registers.hpp"

namespace loam::desk {

TrialRunner::TrialRunner(QObject* parent)
    : QObject(parent), there_(new QObject), workspace_(std::make_shared<assess::Workspace>())
{
    qRegisterMetaType<SharedTrialAnswer>();
    thread_.setObjectName(QStringLiteral("trial"));
    there_->moveToThread(&thread_);
    connect(&thread_, &QThread::finished, there_, &QObject::deleteLater);
    thread_.start();
}

TrialRunner::~TrialRunner()
{
    stop_.request_stop();
    thread_.quit();
    thread_.wait();
}

void TrialRunner::request(const plan::Plan& plan, const SharedCatalog& catalog, const std::string& enclosure,
                          const assess::Trial& trial)
{
    // Of one plan a trial takes a few milliseconds and is let finish, or a slider that is dragged would never be
    // answered; of an older plan nobody wants to know.
    if (busy_ && !(plan == working_on_)) {
        stop_.request_stop();
    }
    waiting_ = Job{plan, catalog, enclosure, trial};
    launch();
}

void TrialRunner::launch()
{
    if (busy_ || !waiting_) {
        return;
    }
    busy_ = true;
    stop_ = std::stop_source();
    working_on_ = waiting_->plan;
    const auto run = [this, job = *std::exchange(waiting_, std::nullopt), workspace = workspace_,
                      stop = stop_.get_token()] {
        clear_vector_registers();
        auto tried = assess::try_out(job.plan, *job.catalog, job.enclosure, job.trial, *workspace, stop);
        const auto answer =
            std::make_shared<const TrialAnswer>(TrialAnswer{job.enclosure, job.trial, std::move(tried)});
        QMetaObject::invokeMethod(
            this, [this, answer] { receive(answer); }, Qt::QueuedConnection);
    };
    QMetaObject::invokeMethod(there_, run, Qt::QueuedConnection);
}

void TrialRunner::receive(const SharedTrialAnswer& answer)
{
    busy_ = false;
    if (waiting_) {
        if (!stop_.stop_requested()) {
            emit tried(answer); // on the way
        }
        launch();
        return;
    }
    emit tried(answer);
}

} // namespace loam::desk
