// What was concluded: findings, figures and hours per enclosure, shopping, costs and the chart over the years.
#pragma once

#include <QWidget>
#include <memory>

#include "app/desk/document/runner.hpp"
#include "app/words/units.hpp"
#include "core/plan/plan.hpp"

namespace loam::desk {

class WhatIfView;

class ResultsPanel : public QWidget {
    Q_OBJECT

public:
    ResultsPanel(SharedCatalog catalog, words::UnitSystem units, QWidget* parent = nullptr);
    ~ResultsPanel() override;

    void show_tab(int tab); // by its number

    void show_plan(const plan::Plan& plan, const QString& enclosure);
    void show_assessment(const SharedAssessment& assessment, bool stale);
    void set_units(words::UnitSystem units);
    void set_catalog(SharedCatalog catalog);
    WhatIfView& what_if();
    // The plan that stands beside this one, and what it is called; its assessment is null while it is worked out.
    void show_other(const QString& called, const SharedAssessment& other);
    void turn_to_comparison();
    void show_order_again(); // where a tick was not taken
    void hide_other();

signals:
    void enclosureChosen(const QString& id); // in the overview
    void comparisonClosed();
    // A line of the order was ticked off, or is to be bought after all.
    void haveIt(const loam::assess::ShoppingLine& line, bool have);
    void leftOut(const loam::assess::ShoppingLine& line);
    void shoppingExportWanted();
    void costsExportWanted();
    void comparisonExportWanted(const std::string& csv);
    // A finding or line was chosen: its plan element id or JSON Pointer, and its enclosure (may be empty).
    void placeChosen(const QString& where, const QString& enclosure);

protected:
    void changeEvent(QEvent* event) override;

private:
    struct Parts;
    std::unique_ptr<Parts> parts_;
};

} // namespace loam::desk
