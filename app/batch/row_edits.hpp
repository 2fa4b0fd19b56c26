// The cells of one row on their way into the plan. Internal to app/batch.
#pragma once

#include <map>
#include <string>

#include "app/batch/adopter.hpp"
#include "core/json/node.hpp"

namespace loam::batch {

class RowEdits {
public:
    RowEdits(const AdopterList& list, const catalog::csv::Row& row, const Template& shared);

    // The template's text with the cells in it, good or not; but for the size of the box, which would leave behind what
    // stands in it.
    json::Node document();
    // The box in the size that the row states, with what stands in it.
    void resize(plan::Enclosure& enclosure) const;
    // Of the cells that could not be put in.
    std::vector<RowProblem> take_problems() { return std::move(problems_); }
    // From a place in the plan to the column that says what stands there; empty where none does.
    QString column_at(std::string_view pointer) const;
    // In the plan; nullopt where the row does not tell which.
    std::optional<std::size_t> enclosure() const { return enclosure_; }

private:
    void choose_enclosure();
    void put(const Column& column, const std::string& cell);
    void put_number(const Column& column, const std::string& cell);
    void put_animals(const Column& column, const std::string& cell);
    void put_owned(const std::string& cell);
    void put_item(const QString& item, const QString& quantity);
    void set(const Column& column, json::Node value);
    bool claim(const Column& column); // false: another column has said it
    void put_box(const Column& column, double size_m);
    void check_species(const Column& column, const QString& species);
    void refuse(std::string_view column, const QString& reason);
    std::string pointer_of(const Column& column) const;
    json::Node& at(const std::string& pointer);
    json::Node animal(const std::string& id, std::int64_t count, const QString& species) const;

    const AdopterList& list_;
    const catalog::csv::Row& row_;
    const Template& shared_;
    json::Node document_;
    std::optional<std::size_t> enclosure_;
    std::optional<double> length_m_;
    std::optional<double> width_m_;
    std::optional<double> height_m_;
    std::map<std::string, std::string, std::less<>> column_of_; // by pointer
    std::vector<RowProblem> problems_;
};

} // namespace loam::batch
