// Computes assessments on one worker thread. The newest plan always wins; older work is told to stop.
#pragma once

#include <QObject>
#include <QThread>
#include <QTimer>
#include <memory>
#include <stop_token>

#include "core/assess/assess.hpp"
#include "core/catalog/catalog.hpp"
#include "core/plan/plan.hpp"

namespace loam::desk {

using SharedAssessment = std::shared_ptr<const assess::Assessment>;
using SharedCatalog = std::shared_ptr<const catalog::Catalog>;

class AssessmentWorker;

class AssessmentRunner : public QObject {
    Q_OBJECT

public:
    explicit AssessmentRunner(SharedCatalog catalog, QObject* parent = nullptr);
    ~AssessmentRunner() override;

    // Starts over with this plan after a short rest, so that a burst of edits costs one computation.
    void request(const plan::Plan& plan);
    void set_catalog(SharedCatalog catalog);
    // The newest request has not been answered in full yet.
    bool pending() const { return answered_ != generation_; }

signals:
    void started();
    // A stage or the whole; `complete` in the assessment tells which.
    void ready(loam::desk::SharedAssessment assessment);

private:
    void launch();
    void receive(quint64 generation, const SharedAssessment& assessment);

    QThread thread_;
    AssessmentWorker* worker_;
    QTimer rest_;
    SharedCatalog catalog_;
    plan::Plan plan_;
    std::stop_source stop_;
    quint64 generation_ = 0;
    quint64 answered_ = 0;
};

} // namespace loam::desk

Q_DECLARE_METATYPE(loam::desk::SharedAssessment)
