// Tries out changes of cover and misting on a thread of its own, so that neither the window nor an assessment has to
// wait. The newest trial always wins.
#pragma once

#include <QObject>
#include <QThread>
#include <memory>
#include <optional>
#include <stop_token>

#include "app/desk/document/runner.hpp"
#include "core/assess/what_if.hpp"

namespace loam::desk {

// What was tried, and what it comes to.
struct TrialAnswer {
    std::string enclosure;
    assess::Trial trial;
    std::optional<assess::Tried> tried; // absent: no balance was found
};
using SharedTrialAnswer = std::shared_ptr<const TrialAnswer>;

class TrialRunner : public QObject {
    Q_OBJECT

public:
    explicit TrialRunner(QObject* parent = nullptr);
    ~TrialRunner() override;

    void request(const plan::Plan& plan, const SharedCatalog& catalog, const std::string& enclosure,
                 const assess::Trial& trial);
    bool pending() const { return busy_ || waiting_; }

signals:
    void tried(loam::desk::SharedTrialAnswer answer);

private:
    struct Job {
        plan::Plan plan;
        SharedCatalog catalog;
        std::string enclosure;
        assess::Trial trial;
    };
    void launch();
    void receive(const SharedTrialAnswer& answer);

    QThread thread_;
    QObject* there_;                               // lives on the thread: what is sent to it runs there
    std::shared_ptr<assess::Workspace> workspace_; // used on the thread only
    std::optional<Job> waiting_;
    plan::Plan working_on_;
    std::stop_source stop_;
    bool busy_ = false;
};

} // namespace loam::desk

Q_DECLARE_METATYPE(loam::desk::SharedTrialAnswer)
