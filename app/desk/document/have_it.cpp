#include "app/desk/document/have_it.hpp"

#include <utility>

#include "core/assess/wishes.hpp"
#include "core/plan/file.hpp"

namespace loam::desk {

bool is_own_line(const assess::ShoppingLine& line)
{
    return line.need.starts_with(assess::own_need_prefix);
}

bool can_be_owned(const assess::ShoppingLine& line)
{
    return !line.item.empty() && !is_own_line(line);
}

plan::Plan with_it(plan::Plan plan, const assess::ShoppingLine& line)
{
    if (can_be_owned(line) && line.amount_needed > 0.0) {
        plan::OwnedItem item; // an entry of its own: what stood there before has an age of its own
        item.id = plan::fresh_id(plan, "o");
        item.item = line.item;
        item.quantity = line.amount_needed;
        plan.owned.push_back(std::move(item));
    }
    return plan;
}

plan::Plan without_it(plan::Plan plan, const assess::ShoppingLine& line)
{
    std::erase_if(plan.owned, [&line](const plan::OwnedItem& item) { return item.item == line.item; });
    return plan;
}

plan::Plan left_out(plan::Plan plan, const assess::ShoppingLine& line)
{
    if (is_own_line(line)) {
        std::erase_if(plan.own_lines, [&line](const plan::OwnLine& own) { return own.id == line.where; });
        return plan;
    }
    plan::Wish wish;
    wish.id = plan::fresh_id(plan, "w");
    wish.need = line.need;
    plan.wishes.push_back(std::move(wish)); // the last one counts
    return plan;
}

} // namespace loam::desk
