#include "app/desk/editors/element_list.hpp"

#include <QHBoxLayout>
#include <QListWidget>
#include <QStyledItemDelegate>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

namespace loam::desk {

namespace {

constexpr int most_rows_in_view = 5;

QToolButton* button(QWidget* parent, const QString& text, const QString& tip, const char* name)
{
    auto* made = new QToolButton(parent);
    made->setText(text);
    made->setToolTip(tip);
    made->setAccessibleName(tip);
    made->setObjectName(QLatin1String(name));
    return made;
}

// A long row ends in an ellipsis: a bar to scroll it would lie over the only row of a short list.
class Eliding : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        return {0, QStyledItemDelegate::sizeHint(option, index).height()};
    }
};

} // namespace

ElementList::ElementList(const QString& what, ElementActions actions, QWidget* parent)
    : QWidget(parent), what_(what), actions_(std::move(actions)), list_(new QListWidget(this)),
      add_(button(this, tr("Add"), tr("Add: %1").arg(what), "add")),
      copy_(button(this, tr("Copy"), tr("Copy: %1").arg(what), "copy")),
      remove_(button(this, tr("Remove"), tr("Remove: %1").arg(what), "remove"))
{
    list_->setObjectName(QStringLiteral("elements"));
    list_->setAccessibleName(what);
    list_->setItemDelegate(new Eliding(list_));
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(4);
    buttons->addWidget(add_);
    buttons->addWidget(copy_);
    buttons->addWidget(remove_);
    buttons->addStretch(1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    column->addWidget(list_);
    column->addLayout(buttons);
    connect(list_, &QListWidget::currentRowChanged, this, [this](int row) {
        chosen_ = row >= 0 ? list_->item(row)->data(Qt::UserRole).toString().toStdString() : std::string();
        refresh_buttons();
        emit chosenChanged();
    });
    connect(add_, &QToolButton::clicked, this, [this] {
        plan::Plan changed = state_->plan;
        chosen_ = actions_.add(changed);
        emit edited(tr("Add %1").arg(what_), QString(), changed);
    });
    connect(copy_, &QToolButton::clicked, this, [this] {
        plan::Plan changed = state_->plan;
        chosen_ = actions_.copy(changed, chosen_);
        emit edited(tr("Copy %1").arg(what_), QString(), changed);
    });
    connect(remove_, &QToolButton::clicked, this, [this] {
        plan::Plan changed = state_->plan;
        actions_.remove(changed, chosen_);
        emit edited(tr("Remove %1").arg(what_), QString(), changed);
    });
}

void ElementList::show(FormState& state)
{
    state_ = &state;
    const std::vector<ElementRow> rows = actions_.rows(state);
    const QSignalBlocker quiet(list_);
    list_->clear();
    int row_of_chosen = -1;
    for (const ElementRow& row : rows) {
        auto* item = new QListWidgetItem(row.text, list_);
        item->setData(Qt::UserRole, QString::fromStdString(row.id));
        item->setToolTip(row.text);
        if (row.id == chosen_) {
            row_of_chosen = list_->count() - 1;
        }
    }
    if (row_of_chosen < 0 && !rows.empty()) {
        row_of_chosen = 0;
    }
    list_->setCurrentRow(row_of_chosen);
    chosen_ = row_of_chosen >= 0 ? rows.at(static_cast<std::size_t>(row_of_chosen)).id : std::string();
    const int shown = std::clamp(list_->count(), 1, most_rows_in_view);
    list_->setFixedHeight(shown * (fontMetrics().height() + 6) + 6);
    refresh_buttons();
}

bool ElementList::choose(const std::string& id)
{
    for (int row = 0; row < list_->count(); ++row) {
        if (list_->item(row)->data(Qt::UserRole).toString().toStdString() == id) {
            list_->setCurrentRow(row);
            list_->setFocus(Qt::OtherFocusReason);
            return true;
        }
    }
    return false;
}

void ElementList::refresh_buttons()
{
    copy_->setEnabled(!chosen_.empty());
    remove_->setEnabled(!chosen_.empty());
}

} // namespace loam::desk
