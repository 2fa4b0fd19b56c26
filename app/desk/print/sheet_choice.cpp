#include "app/desk/print/sheet_choice.hpp"

#include <QCheckBox>
#include <QDialog>
#include <QDialogButtonBox>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "app/sheets/sheets.hpp"

namespace loam::desk {

namespace {

QString name_of(sheets::Sheet sheet)
{
    const auto names = sheets::sheet_names();
    const auto found = std::find_if(names.begin(), names.end(), [&](const auto& one) { return one.sheet == sheet; });
    return QString::fromLatin1(found->name); // every sheet has a name
}

struct Tick {
    sheets::Sheet sheet;
    QCheckBox* box;
};

std::vector<Tick> add_ticks(QDialog& dialog, QVBoxLayout& column, const std::vector<sheets::Sheet>& on_offer,
                            const QStringList& left_out)
{
    std::vector<Tick> ticks;
    for (const sheets::Sheet sheet : on_offer) {
        auto* box = new QCheckBox(sheets::title_of(sheet), &dialog);
        box->setObjectName(QStringLiteral("sheet-") + name_of(sheet));
        box->setChecked(!left_out.contains(name_of(sheet)));
        column.addWidget(box);
        ticks.push_back({sheet, box});
    }
    return ticks;
}

std::vector<sheets::Sheet> chosen(const std::vector<Tick>& ticks)
{
    std::vector<sheets::Sheet> sheets;
    for (const Tick& tick : ticks) {
        if (tick.box->isChecked()) {
            sheets.push_back(tick.sheet);
        }
    }
    return sheets;
}

// What was not on offer this time stays as it was.
QStringList left_out_now(const std::vector<Tick>& ticks, QStringList left_out)
{
    for (const Tick& tick : ticks) {
        left_out.removeAll(name_of(tick.sheet));
        if (!tick.box->isChecked()) {
            left_out << name_of(tick.sheet);
        }
    }
    return left_out;
}

} // namespace

std::optional<std::vector<sheets::Sheet>> ask_for_sheets(const std::vector<sheets::Sheet>& on_offer, Settings& settings,
                                                         QWidget* parent)
{
    QDialog dialog(parent);
    dialog.setObjectName(QStringLiteral("sheetChoice"));
    dialog.setWindowTitle(QObject::tr("Which sheets"));
    auto* column = new QVBoxLayout(&dialog);
    column->addWidget(new QLabel(QObject::tr("Sheets to print or to save:"), &dialog));
    const std::vector<Tick> ticks = add_ticks(dialog, *column, on_offer, settings.left_out_sheets());
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, &dialog);
    column->addWidget(buttons);
    QPushButton* go_on = buttons->button(QDialogButtonBox::Ok);
    const auto allow = [&ticks, go_on] { go_on->setEnabled(!chosen(ticks).empty()); };
    for (const Tick& tick : ticks) {
        QObject::connect(tick.box, &QCheckBox::toggled, &dialog, allow);
    }
    allow();
    QObject::connect(buttons, &QDialogButtonBox::accepted, &dialog, &QDialog::accept);
    QObject::connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
    if (dialog.exec() != QDialog::Accepted) {
        return std::nullopt;
    }
    settings.set_left_out_sheets(left_out_now(ticks, settings.left_out_sheets()));
    return chosen(ticks);
}

} // namespace loam::desk
