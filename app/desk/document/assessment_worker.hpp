// Lives on the runner's thread and owns the solver's workspace there.
#pragma once

#include <QObject>
#include <stop_token>

#include "app/desk/document/runner.hpp"

namespace loam::desk {

class AssessmentWorker : public QObject {
    Q_OBJECT

public:
    // To be called on the worker's own thread.
    void compute(quint64 generation, const plan::Plan& plan, const SharedCatalog& catalog, std::stop_token stop);

signals:
    void ready(quint64 generation, loam::desk::SharedAssessment assessment);

private:
    assess::Workspace workspace_;
};

} // namespace loam::desk
