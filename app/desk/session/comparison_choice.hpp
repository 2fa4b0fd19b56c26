// Which plan the open one is compared with, if any: as last saved, from another file, or as it stood when the user said
// to keep it. The other plan is a copy that nothing changes any more; it is assessed once, off the window's thread.
#pragma once

#include <QObject>
#include <QString>
#include <memory>
#include <optional>

#include "app/desk/document/runner.hpp"
#include "core/plan/plan.hpp"

namespace loam::desk {

class PlanDocument;
class PlanFiles;

class ComparisonChoice : public QObject {
    Q_OBJECT

public:
    ComparisonChoice(PlanDocument& document, PlanFiles& files, SharedCatalog catalog, QObject* parent = nullptr);
    ~ComparisonChoice() override;

    void with_saved();
    void with_file_asking();
    bool with_file(const QString& path); // false where the file can't be read, which is shown; nothing is changed then
    void keep();                         // remembers the plan as it stands, and compares with it
    void with_kept();
    void close();
    void set_catalog(const SharedCatalog& catalog);

    bool active() const { return other_.has_value(); }
    bool has_kept() const { return kept_.has_value(); }
    const QString& called() const { return other_->called; }    // only while active
    SharedAssessment assessment() const { return assessment_; } // null until its climate is worked out
    // Works it out anew where it is of another day.
    void assess_for(std::chrono::year_month_day date);

signals:
    void begun();
    void changed(); // another plan, none, or its assessment is there

private:
    struct Other {
        plan::Plan plan;
        QString called; // "box as saved on 3 May 2026, 14:10"
    };
    void begin(Other other);
    void receive(const SharedAssessment& assessment);

    PlanDocument& document_;
    PlanFiles& files_;
    SharedCatalog catalog_;
    std::unique_ptr<AssessmentRunner> runner_; // only while there is something to compare with
    std::optional<Other> other_;
    std::optional<Other> kept_;
    SharedAssessment assessment_;
};

} // namespace loam::desk
