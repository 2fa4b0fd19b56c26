// Computes assessments on one worker thread. The newest plan always wins; older work is told to stop.
#pragma once

#include <QElapsedTimer>
#include <QObject>
#include <QThread>
#include <QTimer>
#include <memory>
#include <stop_token>

#include "core/assess/assess.hpp"
#include "core/assess/look.hpp"
#include "core/catalog/catalog.hpp"
#include "core/plan/plan.hpp"

namespace loam::desk {

using SharedAssessment = std::shared_ptr<const assess::Assessment>;
using SharedCatalog = std::shared_ptr<const catalog::Catalog>;

// One case of the newest plan, or of the one just before it while edits follow one another.
struct Look {
    assess::LookAt at;
    assess::HeatCase heat;
};
using SharedLook = std::shared_ptr<const Look>;

class AssessmentWorker;

class AssessmentRunner : public QObject {
    Q_OBJECT

public:
    explicit AssessmentRunner(SharedCatalog catalog, QObject* parent = nullptr);
    ~AssessmentRunner() override;

    // Starts over with this plan after a short rest, so that a burst of edits costs one computation. At once, and as
    // often as it can while edits follow one another, it takes a look at what is in view.
    void request(const plan::Plan& plan, const assess::LookAt& in_view);
    void set_catalog(SharedCatalog catalog);
    // The newest request has not been answered in full yet.
    bool pending() const { return answered_ != generation_; }

signals:
    void started();
    // A stage or the whole; `complete` in the assessment tells which.
    void ready(loam::desk::SharedAssessment assessment);
    void looked(loam::desk::SharedLook look); // null: there was nothing to see in the newest plan

private:
    void launch();
    void look();
    void receive(quint64 generation, const SharedAssessment& assessment);
    void receive_look(quint64 generation, const SharedLook& look);

    QThread thread_;
    AssessmentWorker* worker_;
    QTimer rest_;
    QElapsedTimer since_request_;
    SharedCatalog catalog_;
    plan::Plan plan_;
    assess::LookAt in_view_;
    std::stop_source stop_;
    quint64 generation_ = 0;
    quint64 answered_ = 0;
    quint64 looked_at_ = 0;
    bool looking_ = false;
};

} // namespace loam::desk

Q_DECLARE_METATYPE(loam::desk::SharedAssessment)
Q_DECLARE_METATYPE(loam::desk::SharedLook)
