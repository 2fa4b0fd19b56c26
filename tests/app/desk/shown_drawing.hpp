// The view of the drawing, shown with one box and what is known of it.
#pragma once

#include <QComboBox>

#include "app/desk/views/drawing_view.hpp"

namespace loam::test {

struct ShownDrawing {
    ShownDrawing(const plan::Enclosure& box, const assess::EnclosureResult& result)
    {
        plan::Plan plan;
        plan.enclosures.push_back(box);
        auto assessment = std::make_shared<assess::Assessment>();
        assessment->enclosures.push_back(result);
        view.resize(900, 460);
        view.show_plan(plan, QString::fromStdString(box.id));
        view.show_assessment(assessment, false);
        view.show();
        layers = view.findChild<QComboBox*>(QStringLiteral("layerChooser"));
        cases = view.findChild<QComboBox*>(QStringLiteral("caseChooser"));
        sheet = view.findChild<QWidget*>(QStringLiteral("sheet"));
        layers->setFocus(); // the sheet shows when it has the focus
    }
    QImage image() const { return sheet->grab().toImage(); }

    desk::DrawingView view{words::UnitSystem::metric};
    QComboBox* layers = nullptr;
    QComboBox* cases = nullptr;
    QWidget* sheet = nullptr;
};

} // namespace loam::test
