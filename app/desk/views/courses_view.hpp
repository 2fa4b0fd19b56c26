// The hours of the enclosure in view: a chooser over days, warming up and drills, the chart, and what it comes to.
#pragma once

#include <QWidget>
#include <memory>

#include "app/desk/views/explanation.hpp"
#include "app/words/speaker.hpp"
#include "core/assess/assessment.hpp"

namespace loam::desk {

class CoursesView : public QWidget {
    Q_OBJECT

public:
    explicit CoursesView(QWidget* parent = nullptr);
    ~CoursesView() override;

    // `complete`: no courses are still to come. Until then the last ones of the same enclosure stay, marked.
    void show_courses(const assess::EnclosureResult& enclosure, bool complete, const words::Speaker& speaker);
    void clear();
    // What the "why?" pane says of the course in view; nothing where there is none.
    std::optional<Explanation> explanation() const;

signals:
    void courseChosen();

private:
    void show_chosen();

    struct Parts;
    std::unique_ptr<Parts> parts_;
};

} // namespace loam::desk
