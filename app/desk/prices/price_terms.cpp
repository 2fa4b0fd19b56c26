#include "app/desk/prices/price_terms.hpp"

#include <QCheckBox>
#include <QFormLayout>
#include <QGroupBox>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>
#include <cmath>
#include <utility>

#include "app/desk/prices/price_spans.hpp"

namespace loam::desk {

namespace {

using catalog::PriceList;

QString no_price(const QString& typed)
{
    return PriceTerms::tr("“%1” is not an amount of money.").arg(typed);
}

// "6.90", or "5.00 – 6.90 – 9.00": the least, the typical and the most that delivery costs.
QString written_delivery(const std::optional<catalog::Delivery>& delivery, const words::Formatter& format)
{
    if (!delivery) {
        return {};
    }
    const QString typical = format.price(delivery->typical);
    return delivery->low == delivery->high
               ? typical
               : QStringLiteral("%1 – %2 – %3").arg(format.price(delivery->low), typical, format.price(delivery->high));
}

QString take_delivery(std::optional<catalog::Delivery>& delivery, const QString& typed, const words::Formatter& format)
{
    if (typed.isEmpty()) {
        delivery.reset();
        return {};
    }
    const QStringList parts = split_at_dashes(typed);
    std::vector<Decimal> prices;
    for (const QString& part : parts) {
        if (const auto price = format.parse_price(part)) {
            prices.push_back(*price);
        }
    }
    if (prices.size() != static_cast<std::size_t>(parts.size()) || (prices.size() != 1 && prices.size() != 3)) {
        return PriceTerms::tr(
                   "“%1” is not what delivery costs. Write one price, or the least, the typical and the most "
                   "with dashes between.")
            .arg(typed);
    }
    catalog::Delivery changed = delivery.value_or(catalog::Delivery{});
    changed.low = prices.front();
    changed.typical = prices[prices.size() / 2];
    changed.high = prices.back();
    delivery = changed;
    return {};
}

} // namespace

PriceTerms::PriceTerms(PriceDocument& document, words::Formatter format, QWidget* parent)
    : QWidget(parent), document_(document), format_(std::move(format)), problem_(new QLabel(this))
{
    problem_->setObjectName(QStringLiteral("termsProblem"));
    problem_->setTextFormat(Qt::PlainText);
    problem_->setWordWrap(true);
    auto* names = new QGroupBox(tr("The list"), this);
    auto* sale = new QGroupBox(tr("How it is sold"), this);
    build_name_rows(*new QFormLayout(names));
    build_sale_rows(*new QFormLayout(sale));
    auto* column = new QVBoxLayout(this);
    column->addWidget(names);
    column->addWidget(sale);
    column->addWidget(problem_);
    column->addStretch(1);
    connect(&document_, &PriceDocument::changed, this, &PriceTerms::refresh);
    refresh();
}

void PriceTerms::refresh()
{
    for (const auto& show : refreshers_) {
        show();
    }
}

void PriceTerms::line(QFormLayout& form, const QString& label, const char* name, const QString& help, const Show& show,
                      const Take& take)
{
    auto* edit = new QLineEdit(this);
    edit->setObjectName(QString::fromLatin1(name));
    edit->setToolTip(help);
    auto* shown_label = new QLabel(label, this);
    shown_label->setBuddy(edit);
    form.addRow(shown_label, edit);
    QString plain = label;
    plain.remove(QLatin1Char('&'));
    edit->setAccessibleName(plain);
    edit->setAccessibleDescription(help);
    refreshers_.emplace_back([this, edit, show] { edit->setText(show(document_.prices())); });
    connect(edit, &QLineEdit::editingFinished, this, [this, edit, show, take, plain] {
        PriceList changed = document_.prices();
        if (edit->text() == show(changed)) {
            return;
        }
        const QString why = take(changed, edit->text().trimmed());
        problem_->setText(why);
        if (why.isEmpty()) {
            document_.edit(tr("Change “%1”").arg(plain), edit->objectName(), std::move(changed));
        }
    });
}

void PriceTerms::text_line(QFormLayout& form, const QString& label, const char* name, const QString& help,
                           std::string PriceList::*member)
{
    line(
        form, label, name, help, [member](const PriceList& list) { return QString::fromStdString(list.*member); },
        [member](PriceList& list, const QString& typed) {
            list.*member = typed.toStdString();
            return QString();
        });
}

void PriceTerms::price_line(QFormLayout& form, const QString& label, const char* name, const QString& help,
                            std::optional<Decimal> PriceList::*member)
{
    line(
        form, label, name, help,
        [this, member](const PriceList& list) { return list.*member ? format_.price(*(list.*member)) : QString(); },
        [this, member](PriceList& list, const QString& typed) {
            const auto price = format_.parse_price(typed);
            if (!typed.isEmpty() && !price) {
                return no_price(typed);
            }
            list.*member = price;
            return QString();
        });
}

void PriceTerms::build_name_rows(QFormLayout& form)
{
    text_line(form, tr("&Name of the list"), "termsTitle", tr("What you will know it by"), &PriceList::title);
    text_line(form, tr("&Date of the prices"), "termsDate", tr("Year-month-day, for example 2026-11-01"),
              &PriceList::date);
    text_line(form, tr("&Currency"), "termsCurrency", tr("Its three letters, for example EUR"), &PriceList::currency);
    text_line(form, tr("&Place"), "termsPlace", tr("Where the prices were taken"), &PriceList::place);
    text_line(form, tr("Bought &at"), "termsChannel",
              tr("What kind of place: shop, online, club. It stands beside each line of an order from several places."),
              &PriceList::channel);
    auto* invented = new QCheckBox(tr("The prices are &invented examples"), this);
    invented->setObjectName(QStringLiteral("termsInvented"));
    invented->setToolTip(tr("Every sheet with such prices says so"));
    form.addRow(QString(), invented);
    refreshers_.emplace_back([this, invented] {
        const QSignalBlocker quiet(invented);
        invented->setChecked(document_.prices().illustrative);
    });
    connect(invented, &QCheckBox::toggled, this, [this](bool on) {
        PriceList changed = document_.prices();
        changed.illustrative = on;
        document_.edit(tr("Change whether the prices are invented"), {}, std::move(changed));
    });
}

void PriceTerms::build_sale_rows(QFormLayout& form)
{
    line(
        form, tr("De&livery"), "termsDelivery",
        tr("What it costs to have an order brought: one price, or least – typical – most. Empty: it is fetched."),
        [this](const PriceList& list) { return written_delivery(list.delivery, format_); },
        [this](PriceList& list, const QString& typed) { return take_delivery(list.delivery, typed, format_); });
    line(
        form, tr("&Free from"), "termsFreeFrom", tr("Goods of this much are brought for nothing. Empty: never."),
        [this](const PriceList& list) {
            return list.delivery && list.delivery->free_from ? format_.price(*list.delivery->free_from) : QString();
        },
        [this](PriceList& list, const QString& typed) {
            const auto price = format_.parse_price(typed);
            if (!typed.isEmpty() && !price) {
                return no_price(typed);
            }
            if (!list.delivery) {
                return price ? tr("First say what delivery costs, then from how much on it is free.") : QString();
            }
            list.delivery->free_from = price;
            return QString();
        });
    line(
        form, tr("Ta&x on top"), "termsTax", tr("In per cent of goods and delivery. Empty: it is in the prices."),
        [this](const PriceList& list) {
            // Rounded where a share's per cent has no end of digits: 0.07 times 100 is not quite 7.
            return list.tax_share ? written(std::round(*list.tax_share * 1e8) / 1e6, format_) : QString();
        },
        [this](PriceList& list, const QString& typed) {
            const auto share = format_.parse(typed, words::Quantity::fraction);
            if (!typed.isEmpty() && !share) {
                return tr("“%1” is not a share in per cent.").arg(typed);
            }
            list.tax_share = share;
            return QString();
        });
    price_line(form, tr("Least o&rder"), "termsMinimum", tr("Smaller orders of goods are not taken. Empty: all are."),
               &PriceList::minimum_order);
}

} // namespace loam::desk
