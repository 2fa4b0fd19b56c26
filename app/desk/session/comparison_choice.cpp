#include "app/desk/session/comparison_choice.hpp"

#include <QDateTime>
#include <QFileInfo>
#include <QLocale>
#include <utility>

#include "app/desk/document/plan_document.hpp"
#include "app/desk/session/plan_files.hpp"

namespace loam::desk {

ComparisonChoice::ComparisonChoice(PlanDocument& document, PlanFiles& files, SharedCatalog catalog, QObject* parent)
    : QObject(parent), document_(document), files_(files), catalog_(std::move(catalog))
{
}

ComparisonChoice::~ComparisonChoice() = default;

void ComparisonChoice::with_saved()
{
    // Read from the disk: what is saved there is the truth, also after a crash and its recovery.
    const QFileInfo file(document_.path());
    if (document_.path().isEmpty()) {
        return; // never saved
    }
    if (std::optional<plan::Plan> plan = files_.read(document_.path())) {
        begin({*std::move(plan),
               tr("%1 as saved on %2")
                   .arg(file.fileName(), QLocale().toString(file.lastModified(), QLocale::ShortFormat))});
    }
}

void ComparisonChoice::with_file_asking()
{
    const QString path = files_.ask_for_plan(tr("Compare with another plan"));
    if (!path.isEmpty()) {
        with_file(path);
    }
}

bool ComparisonChoice::with_file(const QString& path)
{
    std::optional<plan::Plan> plan = files_.read(path);
    if (!plan) {
        return false;
    }
    begin({*std::move(plan), QFileInfo(path).fileName()});
    return true;
}

void ComparisonChoice::keep()
{
    kept_ = Other{document_.plan(),
                  tr("%1 as kept at %2")
                      .arg(document_.display_name(), QLocale().toString(QTime::currentTime(), QLocale::ShortFormat))};
    begin(*kept_);
}

void ComparisonChoice::with_kept()
{
    if (kept_) {
        begin(*kept_);
    }
}

void ComparisonChoice::close()
{
    runner_.reset();
    other_.reset();
    assessment_.reset();
    emit changed();
}

void ComparisonChoice::begin(Other other)
{
    if (!runner_) {
        runner_ = std::make_unique<AssessmentRunner>(catalog_);
        connect(runner_.get(), &AssessmentRunner::ready, this, &ComparisonChoice::receive);
    }
    assessment_.reset();
    other_ = std::move(other);
    runner_->request(other_->plan, {}); // nothing of it is in view
    emit changed();
    emit begun();
}

void ComparisonChoice::set_catalog(const SharedCatalog& catalog)
{
    catalog_ = catalog;
    if (runner_) {
        assessment_.reset(); // of other prices
        runner_->set_catalog(catalog);
        emit changed();
    }
}

void ComparisonChoice::assess_for(std::chrono::year_month_day date)
{
    if (assessment_ && assessment_->date != date) { // midnight came in between
        assessment_.reset();
        runner_->request(other_->plan, {});
    }
}

void ComparisonChoice::receive(const SharedAssessment& assessment)
{
    // Only whole: of a part the figures of one side would be missing, and look like a difference.
    if (assessment->complete) {
        assessment_ = assessment;
        emit changed();
    }
}

} // namespace loam::desk
