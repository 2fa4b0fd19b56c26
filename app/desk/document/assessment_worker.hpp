// Lives on the runner's thread and owns the solver's workspace there.
#pragma once

#include <QObject>
#include <stop_token>

#include "app/desk/document/runner.hpp"

namespace loam::desk {

class AssessmentWorker : public QObject {
    Q_OBJECT

public:
    // Both to be called on the worker's own thread.
    void compute(quint64 generation, const plan::Plan& plan, const SharedCatalog& catalog, std::stop_token stop);
    void look(quint64 generation, const plan::Plan& plan, const SharedCatalog& catalog, const assess::LookAt& at);

signals:
    void ready(quint64 generation, loam::desk::SharedAssessment assessment);
    void looked(quint64 generation, loam::desk::SharedLook look); // null: there was nothing to see

private:
    assess::Workspace workspace_;
};

} // namespace loam::desk
