// A first plan from few questions, in the order in which a keeper can answer them: the animals, the room, the box, what
// heats and lights it. Nothing has to be known but the species.
#pragma once

#include <QDialog>
#include <optional>

#include "app/desk/document/runner.hpp"
#include "app/desk/start/equipment_search.hpp"
#include "app/words/numbers.hpp"
#include "core/suggest/first_plan.hpp"

class QComboBox;
class QLabel;
class QListWidget;
class QProgressBar;
class QPushButton;
class QSpinBox;
class QStackedWidget;

namespace loam::desk {

class QuantityField;

class FirstSetup : public QDialog {
    Q_OBJECT

public:
    FirstSetup(SharedCatalog catalog, words::UnitSystem units, std::chrono::year_month_day today,
               QWidget* parent = nullptr);

    // Once accepted: the plan that was chosen.
    std::optional<plan::Plan> plan() const;

private:
    QWidget* build_animals();
    QWidget* build_room();
    QWidget* build_box();
    QWidget* build_equipment();
    QuantityField* field(words::Quantity quantity, double min, double max, const char* name,
                         std::optional<double>& value);
    void turn_to(int step);
    void next();
    bool typed_own_size() const;
    QString size_note(const plan::Plan& plan, bool chosen_for_them) const;
    void refresh_box();
    void refresh_next();
    void search();
    void show_found(const SharedSuggestions& result);
    suggest::FirstAnswers answers() const;
    std::optional<plan::Plan> bare_plan() const;

    SharedCatalog catalog_;
    words::Formatter format_;
    std::chrono::year_month_day today_;
    EquipmentSearch search_;
    SharedSuggestions found_;
    suggest::FirstAnswers typed_;
    std::optional<double> own_length_m_;
    std::optional<double> own_width_m_;
    std::optional<double> own_height_m_;
    QStackedWidget* steps_;
    QLabel* title_;
    QComboBox* species_ = nullptr;
    QSpinBox* count_ = nullptr;
    QComboBox* size_ = nullptr;
    QComboBox* walls_ = nullptr;
    QLabel* box_note_ = nullptr;
    QWidget* own_size_ = nullptr;
    QLabel* search_note_ = nullptr;
    QProgressBar* busy_ = nullptr;
    QListWidget* choices_ = nullptr;
    QPushButton* back_;
    QPushButton* next_;
};

} // namespace loam::desk
