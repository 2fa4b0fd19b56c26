#include "app/words/catalog_names.hpp"

#include <QCoreApplication>

namespace loam::words {

namespace {

void translate_name(std::string& name)
{
    name = QCoreApplication::translate("catalog", name.c_str()).toStdString();
}

} // namespace

void translate_names(catalog::Catalog& catalog)
{
    for (catalog::Species& species : catalog.species) {
        translate_name(species.common_name);
    }
    for (catalog::Material& material : catalog.materials) {
        translate_name(material.name);
    }
    for (catalog::Rule& rule : catalog.rules) {
        translate_name(rule.title);
    }
    translate_name(catalog.prices.title);
    translate_name(catalog.prices.place);
    for (catalog::Item& item : catalog.prices.items) {
        translate_name(item.name);
        for (catalog::Pack& pack : item.packs) {
            translate_name(pack.name);
        }
    }
}

QString pack_words(const std::string& name)
{
    const bool single = name == "one" || QString::fromStdString(name) == QCoreApplication::translate("catalog", "one");
    return single ? QString() : QString::fromStdString(name);
}

} // namespace loam::words
