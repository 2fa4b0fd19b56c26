// What if more of the top were covered, or more misted: two sliders, and humidity and warmth in winter and summer as
// they are and as they would be. A trial changes nothing in the plan until it is taken.
#pragma once

#include <QWidget>
#include <memory>
#include <optional>

#include "app/desk/document/trial_runner.hpp"
#include "app/words/numbers.hpp"
#include "core/assess/assessment.hpp"
#include "core/assess/what_if.hpp"

class QGridLayout;

namespace loam::desk {

class WhatIfView : public QWidget {
    Q_OBJECT

public:
    explicit WhatIfView(QWidget* parent = nullptr);
    ~WhatIfView() override;

    // The enclosure in view, and how far it may be changed (absent: too little is known). Another enclosure, or a plan
    // that has come to what was tried, ends the trial.
    void show_room(const std::string& enclosure, const std::optional<assess::TrialRoom>& room,
                   const words::Formatter& formatter);
    void show_result(const assess::EnclosureResult* result);
    void show_answer(const SharedTrialAnswer& answer);
    assess::Trial trial() const;

signals:
    void wanted(const std::string& enclosure, const loam::assess::Trial& trial); // to be tried out
    void taken(const std::string& enclosure, const loam::assess::Trial& trial);  // to go into the plan

private:
    QGridLayout* make_controls();
    QGridLayout* make_tracks();
    void moved();
    void to_plan();
    void refresh_sliders();
    void refresh_tracks();

    struct Parts;
    std::unique_ptr<Parts> parts_;
};

} // namespace loam::desk
