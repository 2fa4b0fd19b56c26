#include "app/desk/editors/budget_page.hpp"

#include <QLocale>
#include <algorithm>
#include <set>

namespace loam::desk {

using words::Quantity;

namespace {

// The land whose rules a code names; codes of ours that are no land's have words of their own.
QString land(const QString& code)
{
    if (code == QStringLiteral("AU-NSW")) {
        return QObject::tr("New South Wales");
    }
    if (code == QStringLiteral("EU-LAB")) {
        return QObject::tr("EU, laboratories");
    }
    const QLocale::Territory territory = QLocale::codeToTerritory(code);
    return territory == QLocale::AnyTerritory ? QObject::tr("other") : QLocale::territoryToString(territory);
}

std::vector<Option> jurisdictions(const FormState& state)
{
    std::set<std::string> codes;
    for (const catalog::Rule& rule : state.catalog->rules) {
        codes.insert(rule.jurisdiction);
    }
    codes.erase("none");
    std::vector<Option> options{{QStringLiteral("none"), QObject::tr("none")}};
    for (const std::string& code : codes) {
        const QString shown = QString::fromStdString(code);
        options.push_back({shown, QStringLiteral("%1 (%2)").arg(land(shown), shown)});
    }
    return options;
}

std::vector<Option> currencies(const FormState& state)
{
    std::vector<Option> options;
    for (const char* code :
         {"AUD", "CAD", "CHF", "CZK", "DKK", "EUR", "GBP", "JPY", "NOK", "NZD", "PLN", "SEK", "USD"}) {
        options.push_back({QString::fromLatin1(code), QString::fromLatin1(code)});
    }
    const QString own = QString::fromStdString(state.plan.currency);
    const bool listed = std::any_of(options.begin(), options.end(), [&own](const Option& o) { return o.value == own; });
    if (!listed) {
        options.push_back({own, own});
    }
    return options;
}

std::vector<Option> items(const FormState& state)
{
    std::vector<Option> options;
    for (const catalog::Item& item : state.catalog->prices.items) {
        options.push_back({QString::fromStdString(item.id), QString::fromStdString(item.name)});
    }
    return options;
}

} // namespace

BudgetPage::BudgetPage(FormState& state, QWidget* parent) : Page(state, "budgetPage", parent)
{
    heading(tr("Plan"));
    FieldSet& self = fields([](plan::Plan&) { return std::string("/"); });
    self.text(tr("Title"), "title", [](plan::Plan& plan) { return TextSlot(&plan.title); });
    self.choice(tr("Currency"), "currency", text_choice([](plan::Plan& plan) { return &plan.currency; }, currencies));
    self.choice(tr("Official rules of"), "jurisdiction",
                text_choice([](plan::Plan& plan) { return &plan.jurisdiction; }, jurisdictions));

    heading(tr("Budget"));
    FieldSet& budget = fields([](plan::Plan&) { return std::string("/budget"); });
    const std::function<plan::Budget*(plan::Plan&)> own = [](plan::Plan& plan) { return &plan.budget; };
    budget.quantity(tr("Years to look ahead"), "horizon_years", Quantity::years, {1.0, 60.0},
                    slot_of(own, &plan::Budget::horizon_years));
    budget.quantity(tr("Discount rate a year"), "discount_rate", Quantity::fraction, {0.0, 1.0},
                    slot_of(own, &plan::Budget::discount_rate));
    budget.enumeration<plan::PriceLevel>(tr("Price level"), "price_level", {tr("low"), tr("typical"), tr("high")},
                                         member_of(own, &plan::Budget::price_level));
    budget.quantity(tr("Set aside for surprises"), "contingency", Quantity::fraction, {0.0, 1.0},
                    slot_of(own, &plan::Budget::contingency));

    heading(tr("Already on the shelf"));
    ElementList& owned = elements(
        tr("owned item"),
        actions_for<plan::OwnedItem>([](plan::Plan& plan) { return &plan.owned; }, "o",
                                     [this](plan::Plan&) {
                                         plan::OwnedItem item;
                                         const auto& listed = this->state().catalog->prices.items;
                                         item.item = listed.empty() ? "item" : listed.front().id;
                                         return item;
                                     },
                                     [](const plan::OwnedItem& item, FormState& form) {
                                         return QStringLiteral("%1 × %2").arg(form.formatter.number(item.quantity, 0),
                                                                              QString::fromStdString(item.item));
                                     }));
    const std::function<plan::OwnedItem*(plan::Plan&)> chosen = [&owned](plan::Plan& plan) {
        return element_in(plan.owned, owned.chosen());
    };
    FieldSet& set =
        fields([&owned](plan::Plan& plan) { return element_pointer("/owned", &plan.owned, owned.chosen()); });
    set.choice(tr("Item"), "item", text_choice(member_of(chosen, &plan::OwnedItem::item), items));
    set.quantity(tr("Quantity"), "quantity", Quantity::number, {0.0, 100000.0},
                 slot_of(chosen, &plan::OwnedItem::quantity));
    set.quantity(tr("Age"), "age_months", Quantity::months, {0.0, 1200.0},
                 slot_of(chosen, &plan::OwnedItem::age_months));
}

} // namespace loam::desk
