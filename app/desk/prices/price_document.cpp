#include "app/desk/prices/price_document.hpp"

#include <utility>

#include "app/desk/document/edit_command.hpp"
#include "core/catalog/catalog.hpp"

namespace loam::desk {

namespace {

// The reader of the files is the judge, so that what can be saved can be opened again.
json::Problems problems_of(const catalog::PriceList& prices)
{
    return catalog::read_prices(catalog::write(prices)).problems;
}

} // namespace

PriceDocument::PriceDocument(catalog::PriceList prices, QObject* parent)
    : QObject(parent), prices_(std::move(prices)), problems_(problems_of(prices_))
{
}

void PriceDocument::edit(const QString& text, const QString& field, catalog::PriceList changed)
{
    if (changed == prices_) {
        return;
    }
    undo_stack_.push(new EditCommand<catalog::PriceList>([this](const catalog::PriceList& prices) { put(prices); },
                                                         text, field, prices_, std::move(changed)));
}

void PriceDocument::put(const catalog::PriceList& prices)
{
    prices_ = prices;
    problems_ = problems_of(prices_);
    emit changed();
}

} // namespace loam::desk
