#include "app/desk/message_bar.hpp"

#include <QHBoxLayout>
#include <QLabel>

#include "app/desk/hide_button.hpp"

namespace loam::desk {

MessageBar::MessageBar(QWidget* parent) : QFrame(parent), text_(new QLabel(this))
{
    setObjectName(QStringLiteral("messageBar"));
    setFrameShape(QFrame::StyledPanel);
    text_->setWordWrap(true);
    text_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    text_->setObjectName(QStringLiteral("messageText"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(10, 6, 6, 6);
    row->addWidget(text_, 1);
    row->addWidget(new HideButton(this));
    hide();
}

void MessageBar::say(const QString& what, const QString& why)
{
    text_->setText(QStringLiteral("▲ <b>%1</b> %2").arg(what.toHtmlEscaped(), why.toHtmlEscaped()));
    show();
}

} // namespace loam::desk
