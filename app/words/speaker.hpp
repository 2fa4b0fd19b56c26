// Turns what core returns as codes and figures into sentences, in the reader's units and language, with the names
// that the plan and the catalog give to things.
#pragma once

#include <QString>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "app/words/numbers.hpp"
#include "core/assess/assessment.hpp"
#include "core/catalog/catalog.hpp"
#include "core/explain.hpp"
#include "core/plan/plan.hpp"

namespace loam::words {

class Speaker {
public:
    // Keeps references: plan and catalog must outlive it.
    Speaker(Formatter formatter, const plan::Plan& plan, const catalog::Catalog& catalog);

    const Formatter& formatter() const { return formatter_; }

    QString finding(const Finding& finding) const;           // what is the matter, where and by how much
    QString remedy(const Finding& finding) const;            // what to do; empty where there is nothing to do
    QString method(const Because& because) const;            // how it was computed, and what its range comes from
    QString because(const Because& because) const;           // the same with the figures that went in and the source
    QString inputs(const Because& because) const;            // "room 18.0 °C · lamp 75 W"
    QString moved(const climate::UpdatedInput& input) const; // "the open share of the mesh: was …, now …"
    QString uncertainty(const std::string& id) const;        // what an assumption or an input of the climate is about
    // "The open share of the mesh decides this range most (41% of it). Measure …": what an input has to do with a
    // range, and what would narrow it.
    QString decides(const std::string& id, double share) const;
    QString place(const std::string& where) const;         // "flood lamp d1 in Front room box", from an id or a pointer
    QString name_of(std::string_view id) const;            // of a plan element, species, material, item or rule
    QString assumed(const assess::Assumed& assumed) const; // "Room in a heat wave: taken as 30–36 °C"
    // The same in parts, for a table.
    struct Unstated {
        QString box; // empty: of the whole plan
        QString what;
        QString taken; // "30–36 °C"; empty: nothing could be assumed
    };
    Unstated unstated(const assess::Assumed& assumed) const;
    QString item(const assess::ShoppingLine& line) const; // "Coir, pressed – brick of 650 g"
    QString why(const assess::ShoppingLine& line) const;  // why it is on the list
    QString need(std::string_view need) const;            // "substrate: coir chips"

private:
    struct Figures {
        const std::vector<Input>& inputs;
        const std::vector<Label>& labels;
    };
    QString label(const Label& label) const;
    QString taken(const assess::Assumed& assumed) const;
    std::optional<QString> placeholder(const Figures& figures, const QString& name, const QString& form) const;

    Formatter formatter_;
    const plan::Plan& plan_;
    const catalog::Catalog& catalog_;
};

QString species_note(std::string_view code);

} // namespace loam::words
