#include "app/desk/views/why_pane.hpp"

#include <QPushButton>
#include <QTextBrowser>
#include <QVBoxLayout>

#include "app/words/line_breaks.hpp"

namespace loam::desk {

namespace {

QString paragraph(const QString& heading, const QString& text)
{
    if (text.isEmpty()) {
        return {};
    }
    return QStringLiteral("<p style='margin-top:6px;margin-bottom:0'><b>%1</b><br>%2</p>")
        .arg(heading.toHtmlEscaped(),
             words::figures_kept_whole(text).toHtmlEscaped().replace(QLatin1Char('\n'), QStringLiteral("<br>")));
}

} // namespace

WhyPane::WhyPane(QWidget* parent) : QWidget(parent), text_(new QTextBrowser(this)), go_(new QPushButton(this))
{
    setObjectName(QStringLiteral("whyPane"));
    text_->setObjectName(QStringLiteral("whyText"));
    text_->setAccessibleName(tr("Why this figure or finding"));
    text_->setOpenLinks(false);
    text_->setFrameShape(QFrame::NoFrame);
    go_->setObjectName(QStringLiteral("whyGo"));
    go_->setText(tr("Show in the plan"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(4, 4, 4, 4);
    column->addWidget(text_, 1);
    column->addWidget(go_);
    connect(go_, &QPushButton::clicked, this, [this] { emit placeChosen(explanation_.where, explanation_.enclosure); });
    clear();
}

void WhyPane::show_explanation(const Explanation& explanation)
{
    explanation_ = explanation;
    QString html = QStringLiteral("<p><b>%1</b></p>").arg(words::figures_kept_whole(explanation.title).toHtmlEscaped());
    if (!explanation.verdict_words.isEmpty()) {
        html += QStringLiteral("<p style='margin-top:2px'>%1</p>").arg(explanation.verdict_words.toHtmlEscaped());
    }
    html += paragraph(tr("What to do"), explanation.remedy);
    html += paragraph(tr("How it was worked out"), explanation.how);
    html += paragraph(tr("With these numbers"), explanation.inputs);
    html += paragraph(tr("Where it comes from"), explanation.source);
    text_->setHtml(html);
    go_->setVisible(!explanation.where.isEmpty());
}

void WhyPane::clear()
{
    explanation_ = {};
    text_->setHtml(QStringLiteral("<p>%1</p>").arg(tr("Choose a line to see why it says what it says.")));
    go_->hide();
}

} // namespace loam::desk
