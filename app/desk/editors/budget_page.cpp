#include "app/desk/editors/budget_page.hpp"

#include <QLocale>
#include <algorithm>
#include <set>

#include "app/words/capitals.hpp"
#include "app/words/speaker.hpp"
#include "core/assess/wishes.hpp"

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

std::vector<Option> channels(const FormState& state)
{
    std::vector<Option> options;
    for (const catalog::Seller& seller : catalog::sellers_of(state.catalog->prices)) {
        const QString channel = QString::fromStdString(seller.channel);
        options.push_back({channel, channel});
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

QString name_of_need(const FormState& state, const std::string& kind)
{
    return words::capitalised(words::Speaker(state.formatter, state.plan, *state.catalog).need(kind));
}

// What the order needs as it stands, and what was changed of it before.
std::vector<Option> needs(const FormState& state)
{
    std::set<std::string> kinds;
    for (const assess::ShoppingLine& line :
         state.assessment ? state.assessment->shopping : std::vector<assess::ShoppingLine>{}) {
        if (!line.need.starts_with(assess::own_need_prefix)) {
            kinds.insert(line.need);
        }
    }
    for (const plan::Wish& wish : state.plan.wishes) {
        kinds.insert(wish.need);
    }
    std::vector<Option> options;
    options.reserve(options.size() + kinds.size());
    for (const std::string& kind : kinds) {
        options.push_back({QString::fromStdString(kind), name_of_need(state, kind)});
    }
    std::sort(options.begin(), options.end(),
              [](const Option& a, const Option& b) { return a.text.localeAwareCompare(b.text) < 0; });
    return options;
}

// "2 × Digital hygrometer", "7.8 L Coir chips"; by its id where the price list does not know it.
QString owned_text(const plan::OwnedItem& item, FormState& form)
{
    const auto& listed = form.catalog->prices.items;
    const auto found =
        std::find_if(listed.begin(), listed.end(), [&](const catalog::Item& each) { return each.id == item.item; });
    if (found == listed.end() || found->unit == "each") {
        return QStringLiteral("%1 × %2").arg(form.formatter.figure(item.quantity, "1"),
                                             QString::fromStdString(found == listed.end() ? item.item : found->name));
    }
    return QStringLiteral("%1 %2").arg(form.formatter.figure(item.quantity, found->unit),
                                       QString::fromStdString(found->name));
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
    budget.enumeration<plan::PackAim>(tr("Packs"), "pack_aim",
                                      {tr("the cheapest"), tr("the fewest"), tr("the least left over")},
                                      member_of(own, &plan::Budget::pack_aim), tr("as usual: the cheapest"));
    budget.choice(
        tr("Bought at"), "channel",
        optional_text_choice(member_of(own, &plan::Budget::channel), channels, tr("wherever it is cheapest")));
    budget.quantity(tr("Set aside for surprises"), "contingency", Quantity::fraction, {0.0, 1.0},
                    slot_of(own, &plan::Budget::contingency));

    heading(tr("Already on the shelf"));
    ElementList& owned = elements(
        tr("owned item"), actions_for<plan::OwnedItem>([](plan::Plan& plan) { return &plan.owned; }, "o",
                                                       [this](plan::Plan&) {
                                                           plan::OwnedItem item;
                                                           const auto& listed = this->state().catalog->prices.items;
                                                           item.item = listed.empty() ? "item" : listed.front().id;
                                                           return item;
                                                       },
                                                       owned_text));
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

    add_wishes();
    add_own_lines();
}

void BudgetPage::add_wishes()
{
    heading(tr("Left out or replaced"));
    ElementList& wishes =
        elements(tr("change"),
                 actions_for<plan::Wish>([](plan::Plan& plan) { return &plan.wishes; }, "w",
                                         [](plan::Plan&) {
                                             plan::Wish wish;
                                             wish.need = "measure.infrared-thermometer";
                                             return wish;
                                         },
                                         [](const plan::Wish& wish, FormState& form) {
                                             const QString need = name_of_need(form, wish.need);
                                             return wish.item
                                                        ? tr("%1: %2").arg(need, QString::fromStdString(*wish.item))
                                                        : tr("%1: left out").arg(need);
                                         }));
    const std::function<plan::Wish*(plan::Plan&)> chosen = [&wishes](plan::Plan& plan) {
        return element_in(plan.wishes, wishes.chosen());
    };
    FieldSet& set =
        fields([&wishes](plan::Plan& plan) { return element_pointer("/wishes", &plan.wishes, wishes.chosen()); });
    set.choice(tr("Need"), "need", text_choice(member_of(chosen, &plan::Wish::need), needs));
    set.choice(tr("Buy instead"), "item",
               optional_text_choice(member_of(chosen, &plan::Wish::item), items, tr("nothing: left out")));
    set.text(tr("Why"), "reason", [chosen](plan::Plan& plan) {
        plan::Wish* wish = chosen(plan);
        return wish != nullptr ? TextSlot(&wish->reason) : TextSlot();
    });
}

void BudgetPage::add_own_lines()
{
    heading(tr("Lines of your own"));
    ElementList& lines =
        elements(tr("line"), actions_for<plan::OwnLine>([](plan::Plan& plan) { return &plan.own_lines; }, "l",
                                                        [](plan::Plan&) {
                                                            plan::OwnLine line;
                                                            line.name = tr("Something else").toStdString();
                                                            return line;
                                                        },
                                                        [](const plan::OwnLine& line, FormState& form) {
                                                            return QStringLiteral("%1 × %2").arg(
                                                                form.formatter.count(line.quantity),
                                                                QString::fromStdString(line.name));
                                                        }));
    const std::function<plan::OwnLine*(plan::Plan&)> chosen = [&lines](plan::Plan& plan) {
        return element_in(plan.own_lines, lines.chosen());
    };
    FieldSet& set =
        fields([&lines](plan::Plan& plan) { return element_pointer("/own_lines", &plan.own_lines, lines.chosen()); });
    set.text(tr("What"), "name", [chosen](plan::Plan& plan) {
        plan::OwnLine* line = chosen(plan);
        return line != nullptr ? TextSlot(&line->name) : TextSlot();
    });
    set.quantity(tr("How many"), "quantity", Quantity::number, {1.0, 1000.0},
                 slot_of(chosen, &plan::OwnLine::quantity));
    set.price(tr("Price of one"), "price", member_of(chosen, &plan::OwnLine::price));
    set.quantity(tr("Again after"), "every_months", Quantity::months, {0.1, 1200.0},
                 slot_of(chosen, &plan::OwnLine::every_months));
}

} // namespace loam::desk
