// The enclosure to scale, plan above section, with choosers for what is laid over the floor and for the
// case.
#pragma once

#include <QWidget>
#include <memory>

#include "app/desk/document/runner.hpp"
#include "app/drawing/enclosure_drawing.hpp"
#include "app/words/units.hpp"
#include "core/plan/plan.hpp"

namespace loam::desk {

class DrawingView : public QWidget {
    Q_OBJECT

public:
    explicit DrawingView(words::UnitSystem units, QWidget* parent = nullptr);
    ~DrawingView() override;

    void show_plan(const plan::Plan& plan, const QString& enclosure);
    void show_assessment(const SharedAssessment& assessment, bool stale);
    // The case in view as it has just become, until an assessment tells more. Null: back to the last assessment.
    void show_look(const SharedLook& look);
    assess::LookAt shown() const;
    void set_units(words::UnitSystem units);
    void highlight(const QString& element); // id; empty: nothing
    const drawing::Picture& picture() const;

signals:
    void elementChosen(const QString& id); // clicked on the drawing
    // Something was moved, resized, turned or taken out; edits of the same `field` are one step of undo.
    void enclosureEdited(const QString& text, const QString& field, const loam::plan::Enclosure& changed);
    void duplicateWanted(const QString& id);
    void fieldWanted(const QString& id); // the form is to come to it

private:
    struct Parts;
    std::unique_ptr<Parts> parts_;
};

} // namespace loam::desk
