// The enclosure to scale, plan above section, with the predicted zones and a chooser for the case.
#pragma once

#include <QWidget>
#include <memory>

#include "app/desk/document/runner.hpp"
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
    void set_units(words::UnitSystem units);
    void highlight(const QString& element); // id; empty: nothing

signals:
    void elementChosen(const QString& id); // clicked on the drawing

private:
    struct Parts;
    std::unique_ptr<Parts> parts_;
};

} // namespace loam::desk
