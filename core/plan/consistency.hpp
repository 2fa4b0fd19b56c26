// What a schema can't state about a plan: ids, references, and figures that must agree with each other.
#pragma once

#include <string>
#include <string_view>

#include "core/json/problem.hpp"
#include "core/plan/plan.hpp"

namespace loam::plan {

// Collects the problems of meaning. Holds its tongue about anything that rests on a part whose form is broken already,
// since that part was read as its default.
class Consistency {
public:
    Consistency(const Plan& plan, const json::Problems& of_form) : plan_(plan), of_form_(of_form) {}

    json::Problems check();

private:
    bool is_sound(std::string_view pointer) const;
    void refuse(std::string where, std::string_view code, std::vector<std::string> args);

    // consistency_ids.cpp
    void check_ids();
    void check_references();
    void check_reference(std::string_view kind, const std::string& id, const std::string& where);
    void check_feeding();
    // consistency_devices.cpp
    void check_device(const Device& device, const std::string& where);
    void check_control(const Control& control, const std::string& where);
    void check_mat(const Device& mat, const std::string& where);
    void check_uvi_table(const Device& device, const std::string& where);
    void need(bool there, std::string_view key, std::string_view why, const std::string& where);
    // consistency_box.cpp
    void check_box(const Enclosure& enclosure, const std::string& where);
    void check_panels(const Enclosure& enclosure, const std::string& where);
    void check_bed(const Enclosure& enclosure, const std::string& where);
    void check_inside(const Enclosure& enclosure, const std::string& where);

    const Plan& plan_;
    const json::Problems& of_form_;
    json::Problems found_;
};

} // namespace loam::plan
