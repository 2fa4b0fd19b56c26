#include "app/desk/welcome_bar.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

#include "app/desk/hide_button.hpp"

namespace loam::desk {

WelcomeBar::WelcomeBar(QWidget* parent) : QFrame(parent)
{
    setObjectName(QStringLiteral("welcomeBar"));
    setFrameShape(QFrame::StyledPanel);
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::AlternateBase);
    auto* text = new QLabel(tr("<b>This is an invented example.</b> Change anything and watch the answers."), this);
    text->setWordWrap(true);
    auto* own = new QPushButton(tr("Start your own"), this);
    own->setObjectName(QStringLiteral("startOwn"));
    own->setDefault(true);
    auto* open = new QPushButton(tr("Open a plan…"), this);
    open->setObjectName(QStringLiteral("welcomeOpen"));
    auto* tour = new QPushButton(tr("Show me around"), this);
    tour->setObjectName(QStringLiteral("welcomeTour"));
    auto* close = new HideButton(this);
    close->setObjectName(QStringLiteral("welcomeClose"));

    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(10, 6, 6, 6);
    row->addWidget(text, 1);
    row->addWidget(own);
    row->addWidget(open);
    row->addWidget(tour);
    row->addWidget(close);
    connect(own, &QPushButton::clicked, this, &WelcomeBar::startOwn);
    connect(open, &QPushButton::clicked, this, &WelcomeBar::openFile);
    connect(tour, &QPushButton::clicked, this, &WelcomeBar::tourWanted);
}

} // namespace loam::desk
