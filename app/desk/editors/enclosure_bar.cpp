#include "app/desk/editors/enclosure_bar.hpp"

#include <QComboBox>
#include <QHBoxLayout>
#include <QToolButton>

#include "core/plan/file.hpp"

namespace loam::desk {

namespace {

QToolButton* tool(QWidget* parent, const QString& text, const QString& tip, const char* name)
{
    auto* button = new QToolButton(parent);
    button->setText(text);
    button->setToolTip(tip);
    button->setAccessibleName(tip);
    button->setObjectName(QLatin1String(name));
    return button;
}

// Every id inside a copied enclosure is made new: ids are unique in the whole plan.
template <class T> void renew_ids(plan::Plan& plan, std::vector<T>& elements, const char* stem)
{
    for (T& element : elements) {
        element.id = plan::fresh_id(plan, stem);
    }
}

void renew_inner_ids(plan::Plan& plan, const std::string& id)
{
    plan::Enclosure& enclosure = *enclosure_in(plan, id);
    renew_ids(plan, enclosure.animals, "a");
    for (plan::Animal& animal : enclosure.animals) {
        renew_ids(plan, animal.measurements, "m"); // the same animal, it may be, in its next box
    }
    renew_ids(plan, enclosure.substrate, "b");
    renew_ids(plan, enclosure.fittings, "f");
    renew_ids(plan, enclosure.equipment, "d");
    renew_ids(plan, enclosure.shell.panels, "p");
    renew_ids(plan, enclosure.shell.linings, "l");
    renew_ids(plan, enclosure.shell.top.covers, "v");
    renew_ids(plan, enclosure.shell.vents, "w");
    enclosure.readings.clear(); // they were taken in the other box
    enclosure.replaces.reset();
}

} // namespace

EnclosureBar::EnclosureBar(FormState& state, QWidget* parent)
    : QWidget(parent), state_(state), list_(new QComboBox(this)),
      copy_(tool(this, tr("Copy"), tr("Copy this enclosure"), "copyEnclosure")),
      remove_(tool(this, tr("Remove"), tr("Remove this enclosure"), "removeEnclosure"))
{
    list_->setObjectName(QStringLiteral("enclosureChooser"));
    list_->setAccessibleName(tr("Enclosure in view"));
    list_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    list_->setMinimumContentsLength(8);
    QToolButton* add_button = tool(this, tr("Add"), tr("Add an enclosure"), "addEnclosure");
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(4);
    row->addWidget(list_, 1);
    row->addWidget(add_button);
    row->addWidget(copy_);
    row->addWidget(remove_);
    connect(list_, &QComboBox::activated, this, [this] { emit chosen(list_->currentData().toString()); });
    connect(add_button, &QToolButton::clicked, this, &EnclosureBar::add);
    connect(copy_, &QToolButton::clicked, this, &EnclosureBar::copy);
    connect(remove_, &QToolButton::clicked, this, &EnclosureBar::remove);
}

void EnclosureBar::show_state()
{
    const QSignalBlocker quiet(list_);
    list_->clear();
    for (const plan::Enclosure& enclosure : state_.plan.enclosures) {
        const QString name =
            enclosure.name.empty() ? QString::fromStdString(enclosure.id) : QString::fromStdString(enclosure.name);
        list_->addItem(name, QString::fromStdString(enclosure.id));
    }
    list_->setCurrentIndex(list_->findData(QString::fromStdString(state_.enclosure)));
    copy_->setEnabled(list_->currentIndex() >= 0);
    remove_->setEnabled(list_->currentIndex() >= 0);
}

void EnclosureBar::add()
{
    plan::Plan changed = state_.plan;
    plan::Enclosure made;
    made.id = plan::fresh_id(changed, "e");
    made.name = tr("Enclosure %1").arg(changed.enclosures.size() + 1).toStdString();
    state_.enclosure = made.id;
    changed.enclosures.push_back(std::move(made));
    emit edited(tr("Add enclosure"), QString(), changed);
}

void EnclosureBar::copy()
{
    plan::Plan changed = state_.plan;
    const plan::Enclosure* original = enclosure_in(changed, state_.enclosure);
    if (original == nullptr) {
        return;
    }
    plan::Enclosure made = *original;
    made.id = plan::fresh_id(changed, "e");
    made.name = tr("%1, copy").arg(QString::fromStdString(made.name)).toStdString();
    const std::string id = made.id;
    changed.enclosures.push_back(std::move(made));
    renew_inner_ids(changed, id);
    state_.enclosure = id;
    emit edited(tr("Copy enclosure"), QString(), changed);
}

void EnclosureBar::remove()
{
    plan::Plan changed = state_.plan;
    std::erase_if(changed.enclosures, [this](const plan::Enclosure& e) { return e.id == state_.enclosure; });
    for (plan::Enclosure& each : changed.enclosures) {
        if (each.replaces == state_.enclosure) {
            each.replaces.reset(); // nothing is left to take over from
        }
    }
    state_.enclosure = changed.enclosures.empty() ? std::string() : changed.enclosures.front().id;
    emit edited(tr("Remove enclosure"), QString(), changed);
}

} // namespace loam::desk
