#include "core/assess/wishes.hpp"

#include <algorithm>
#include <array>

namespace loam::assess {

namespace {

bool meets(const plan::Wish& wish, const buying::Need& need)
{
    const auto from = [&](const std::string& id) {
        return need.where == id ||
               std::find(need.enclosures.begin(), need.enclosures.end(), id) != need.enclosures.end();
    };
    return wish.need == need.kind && (!wish.where || from(*wish.where));
}

const plan::Wish* last_for(const std::vector<plan::Wish>& wishes, const buying::Need& need)
{
    const auto found =
        std::find_if(wishes.rbegin(), wishes.rend(), [&](const plan::Wish& wish) { return meets(wish, need); });
    return found == wishes.rend() ? nullptr : &*found;
}

// What stands between a fault and a burn, a shock or an animal that overheats, or would tell of it.
bool keeps_safe(std::string_view kind)
{
    static constexpr std::array safe{"fixture.lamp-guard", "electrical.rcd-adapter", "control.thermostat-on-off",
                                     "control.thermostat-dimming", "measure.thermometer"};
    return std::find(safe.begin(), safe.end(), kind) != safe.end();
}

// An item that is there and counted as the need is.
bool can_be_bought(const catalog::PriceList& prices, const std::string& item, const buying::Need& need)
{
    const catalog::Item* found = catalog::find_item(prices, item);
    return found != nullptr && found->unit == need.unit;
}

std::optional<MoneyRange> price_of(const plan::OwnLine& line, const Currency& currency)
{
    const auto price = line.price ? Money::from(*line.price, currency) : std::nullopt;
    return price ? std::optional(MoneyRange{*price, *price, *price}) : std::nullopt;
}

} // namespace

std::vector<buying::Need> as_wished(std::vector<buying::Need> needs, const std::vector<plan::Wish>& wishes)
{
    std::vector<buying::Need> result;
    result.reserve(needs.size());
    for (buying::Need& need : needs) {
        const plan::Wish* wish = last_for(wishes, need);
        if (wish != nullptr && !wish->item) {
            continue;
        }
        if (wish != nullptr) {
            need.item = *wish->item;
        }
        result.push_back(std::move(need));
    }
    return result;
}

bool left_out(const std::vector<plan::Wish>& wishes, std::string_view kind)
{
    const auto found = std::find_if(wishes.rbegin(), wishes.rend(),
                                    [&](const plan::Wish& wish) { return wish.need == kind && !wish.where; });
    return found != wishes.rend() && !found->item;
}

Notes judge_wishes(const Context& context, const std::vector<buying::Need>& drawn_up)
{
    Notes notes;
    for (const plan::Wish& wish : context.plan.wishes) {
        const auto met =
            std::find_if(drawn_up.begin(), drawn_up.end(), [&](const buying::Need& need) { return meets(wish, need); });
        if (met == drawn_up.end() || (wish.item && !can_be_bought(context.catalog.prices, *wish.item, *met))) {
            report(notes, "money.wish-idle", {Verdict::not_known, Direction::none}, {wish.id, ""},
                   because("rule.wish", {}, {{"need", wish.need}, {"item", wish.item.value_or("-")}}));
        } else if (!wish.item && keeps_safe(wish.need)) {
            report(notes, "money.safety-left-out", {Verdict::falls_short, Direction::none}, {wish.id, ""},
                   because("rule.wish", {}, {{"need", wish.need}}))
                .remedy = remedy("remedy.put-back", {}, {{"need", wish.need}});
        } else if (!wish.item) {
            report(notes, "money.left-out", {Verdict::fits, Direction::none}, {wish.id, ""},
                   because("rule.wish", {}, {{"need", wish.need}}));
        }
    }
    return notes;
}

void add_own_lines(buying::Order& order, const plan::Plan& plan, const Currency& currency)
{
    for (const plan::OwnLine& own : plan.own_lines) {
        buying::Line line;
        line.need = std::string(own_need_prefix) + own.id;
        line.unit = "each";
        line.needed = static_cast<double>(own.quantity);
        line.why = "need.own-line";
        line.where = own.id;
        if (const auto price = price_of(own, currency)) {
            const MoneyRange total = price->times(own.quantity);
            line.bought.push_back({.item = own.id,
                                   .item_name = own.name,
                                   .pack = {},
                                   .packs = own.quantity,
                                   .covers = line.needed,
                                   .left_over = {},
                                   .pack_price = *price,
                                   .total = total});
            line.total = total;
            order.total += total;
        } else {
            line.unpriced = buying::Unpriced::no_price;
        }
        order.lines.push_back(std::move(line));
    }
}

std::vector<cost::Renewal> own_renewals(const plan::Plan& plan, const Currency& currency)
{
    std::vector<cost::Renewal> all;
    for (const plan::OwnLine& own : plan.own_lines) {
        const auto price = price_of(own, currency);
        if (price && own.every_months) {
            all.push_back({.kind = cost::Kind::other,
                           .item = own.id,
                           .name = own.name,
                           .where = own.id,
                           .price = price->times(own.quantity),
                           .life_months = exactly(*own.every_months),
                           .age_months = exactly(0.0)});
        }
    }
    return all;
}

} // namespace loam::assess
