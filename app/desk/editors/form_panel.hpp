// The form that collects the plan, chapter by chapter. Receives values and emits intentions; sees no document.
#pragma once

#include <QWidget>
#include <memory>

#include "app/desk/document/runner.hpp"
#include "app/words/units.hpp"
#include "core/plan/plan.hpp"

namespace loam::desk {

class FormPanel : public QWidget {
    Q_OBJECT

public:
    FormPanel(SharedCatalog catalog, words::UnitSystem units, QWidget* parent = nullptr);
    ~FormPanel() override;

    void show_plan(const plan::Plan& plan);
    // What was assumed stands greyed in the empty fields, with its bracket.
    void show_assessment(const SharedAssessment& assessment);
    void set_units(words::UnitSystem units);
    void set_catalog(SharedCatalog catalog);

    QString enclosure() const; // id of the one in view
    void choose_enclosure(const QString& id);
    // Brings the field for an element id or a JSON Pointer into view and focuses it; false where there is none.
    bool reveal(const QString& where, const QString& enclosure);
    void show_chapter(int chapter); // by its number in the list

signals:
    // `text` names the step in the Edit menu; equal successive `field`s become one step.
    void edited(const QString& text, const QString& field, const loam::plan::Plan& changed);
    void enclosureChosen(const QString& id);

private:
    struct Parts;
    std::unique_ptr<Parts> parts_;
};

} // namespace loam::desk
