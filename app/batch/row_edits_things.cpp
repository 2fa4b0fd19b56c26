// Animals and owned things in one cell.
#include <QRegularExpression>
#include <QStringList>

#include "app/batch/cell_words.hpp"
#include "app/batch/number_cell.hpp"
#include "app/batch/row_edits.hpp"
#include "app/batch/said.hpp"
#include "core/plan/file.hpp"

namespace loam::batch {

void RowEdits::check_species(const Column& column, const QString& species)
{
    if (shared_.catalog.find_species(species.toStdString()) != nullptr) {
        return;
    }
    refuse(column.name, no_such_species(species, shared_.catalog));
}

json::Node RowEdits::animal(const std::string& id, std::int64_t count, const QString& species) const
{
    json::Node node = json::Node::object();
    node.add("id", json::Node::of(std::string_view(id)))
        .add("species", json::Node::of(std::string_view(species.toStdString())));
    node.add("count", json::Node::of(count));
    return node;
}

// "3": so many of the template's kind. "1 python-regius + 2 pantherophis-guttatus": these in place of the template's.
void RowEdits::put_animals(const Column& column, const std::string& cell)
{
    static const QRegularExpression count_alone(QStringLiteral("^[0-9]{1,4}$"));
    static const QRegularExpression count_and_kind(QStringLiteral("^([0-9]{1,4})\\s+([a-z0-9-]+)$"));
    const QString typed = text(cell);
    const std::size_t kinds = shared_.plan.enclosures[*enclosure_].animals.size();
    if (count_alone.match(typed).hasMatch()) {
        if (kinds != 1) {
            refuse(column.name,
                   Said::tr("The template does not have one kind of animal here, so a number alone does not "
                            "tell of which. Write as in “2 pantherophis-guttatus”."));
            return;
        }
        set(column, json::Node::literal(QString::number(typed.toInt()).toStdString()));
        return;
    }
    json::Node animals = json::Node::array();
    const std::string stem = plan::fresh_id(shared_.plan, "adopted");
    for (const QString& part : typed.split(QLatin1Char('+'))) {
        const QRegularExpressionMatch match = count_and_kind.match(part.trimmed());
        if (!match.hasMatch()) {
            refuse(column.name, Said::tr("“%1” is neither a number nor a list as in “1 python-regius + 2 "
                                         "pantherophis-guttatus”.")
                                    .arg(shown(typed)));
            return;
        }
        check_species(column, match.captured(2));
        const std::size_t index = animals.items.size();
        animals.add(animal(index == 0 ? stem : stem + "-" + std::to_string(index + 1), match.captured(1).toInt(),
                           match.captured(2)));
    }
    const std::string pointer = "/enclosures/" + std::to_string(*enclosure_) + "/animals";
    column_of_.emplace(pointer, column.name);
    at(pointer) = std::move(animals);
}

void RowEdits::put_item(const QString& item, const QString& quantity)
{
    if (catalog::find_item(shared_.catalog.prices, item.toStdString()) == nullptr) {
        refuse("owned", no_such_item(item, shared_.catalog.prices));
        return;
    }
    const auto read = plain_number(quantity.toStdString(), list_.separator);
    if (const auto* why_not = std::get_if<QString>(&read)) {
        refuse("owned", *why_not);
        return;
    }
    json::Node& owned = at("/owned");
    owned.kind = json::Kind::array; // where the template owned nothing
    const std::string id = plan::fresh_id(shared_.plan, "had") + "-" + std::to_string(owned.items.size() + 1);
    json::Node node = json::Node::object();
    node.add("id", json::Node::of(std::string_view(id)))
        .add("item", json::Node::of(std::string_view(item.toStdString())));
    node.add("quantity", json::Node::literal(std::get<std::string>(read)));
    owned.add(std::move(node));
}

void RowEdits::put_owned(const std::string& cell)
{
    static const QRegularExpression between(QStringLiteral("[;|]"));
    column_of_.emplace("/owned", "owned");
    for (const QString& part : text(cell).split(between, Qt::SkipEmptyParts)) {
        const QString item = part.section(QLatin1Char(':'), 0, 0).trimmed();
        const QString quantity = part.section(QLatin1Char(':'), 1).trimmed();
        if (!item.isEmpty()) {
            put_item(item, quantity.isEmpty() ? QStringLiteral("1") : quantity);
        }
    }
}

} // namespace loam::batch
