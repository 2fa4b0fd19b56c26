#include "app/desk/views/findings_view.hpp"

#include <QStandardItemModel>
#include <array>

#include "app/desk/views/explanation.hpp"
#include "app/desk/views/finding_delegate.hpp"
#include "app/words/line_breaks.hpp"
#include "app/words/verdicts.hpp"

namespace loam::desk {

namespace {

bool is_caution(const Finding& finding)
{
    return finding.code.starts_with("caution.");
}

struct Group {
    QString heading;
    bool (*takes)(const Finding&);
};

std::array<Group, 6> groups()
{
    return {
        {{QObject::tr("Danger"), [](const Finding& f) { return f.verdict == Verdict::danger; }},
         {QObject::tr("Falls short"), [](const Finding& f) { return f.verdict == Verdict::falls_short; }},
         {QObject::tr("Tight"), [](const Finding& f) { return f.verdict == Verdict::tight; }},
         {QObject::tr("Not known yet"), [](const Finding& f) { return f.verdict == Verdict::not_known; }},
         {QObject::tr("Cautions"), [](const Finding& f) { return f.verdict == Verdict::fits && is_caution(f); }},
         {QObject::tr("Good to know"), [](const Finding& f) { return f.verdict == Verdict::fits && !is_caution(f); }}}};
}

QStandardItem* heading_item(const QString& text)
{
    auto* item = new QStandardItem(text);
    item->setData(true, heading_role);
    item->setFlags(Qt::ItemIsEnabled);
    return item;
}

QStandardItem* finding_item(const Finding& finding, const words::Speaker& speaker)
{
    const Explanation explanation = explanation_of(finding, speaker);
    auto* item = new QStandardItem(words::figures_kept_whole(explanation.title));
    item->setData(QVariant::fromValue(explanation), explanation_role);
    item->setData(words::figures_kept_whole(explanation.remedy), remedy_role);
    item->setData(explanation.verdict_words + QStringLiteral(": ") + explanation.title, Qt::AccessibleTextRole);
    item->setEditable(false);
    return item;
}

} // namespace

FindingsView::FindingsView(QWidget* parent) : QListView(parent), model_(new QStandardItemModel(this))
{
    setObjectName(QStringLiteral("findings"));
    setAccessibleName(tr("Findings, most serious first"));
    setModel(model_);
    setItemDelegate(new FindingDelegate(this));
    setVerticalScrollMode(ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFrameShape(QFrame::NoFrame);
}

void FindingsView::show_findings(const assess::Assessment& assessment, const words::Speaker& speaker)
{
    const int kept_row = currentIndex().row();
    model_->clear();
    for (const Group& group : groups()) {
        QList<QStandardItem*> items;
        for (const Finding& finding : assessment.findings) {
            if (group.takes(finding)) {
                items << finding_item(finding, speaker);
            }
        }
        if (!items.isEmpty()) {
            model_->appendRow(heading_item(QStringLiteral("%1 (%2)").arg(group.heading).arg(items.size())));
            for (QStandardItem* item : items) {
                model_->appendRow(item);
            }
        }
    }
    // The first finding is explained unasked, so that nobody has to discover the pane beside the list.
    if (model_->rowCount() > 1) {
        setCurrentIndex(model_->index(kept_row > 0 && kept_row < model_->rowCount() ? kept_row : 1, 0));
    }
}

void FindingsView::resizeEvent(QResizeEvent* event)
{
    QListView::resizeEvent(event);
    scheduleDelayedItemsLayout(); // sentences wrap anew
}

} // namespace loam::desk
