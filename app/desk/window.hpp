// The window: wires document, runner, form, drawing and results to one another, and holds nothing else.
#pragma once

#include <QMainWindow>
#include <memory>
#include <optional>

#include "app/desk/document/runner.hpp"
#include "core/assess/what_if.hpp"
#include "core/plan/plan.hpp"

class QLabel;
class QMenu;
class QSplitter;

namespace loam::desk {

class ComparisonChoice;
class DrawingView;
class FormPanel;
class PlanDocument;
class PlanFiles;
class PriceChoice;
class Recovery;
class ResultsPanel;
class Settings;
class TrialRunner;
class MessageBar;
class TourBar;
class WelcomeBar;

class Window : public QMainWindow {
    Q_OBJECT

public:
    // `data_folder` holds the recovery copies; `settings` outlives the window.
    Window(SharedCatalog catalog, Settings& settings, const QString& data_folder, QWidget* parent = nullptr);
    ~Window() override;

    PlanDocument& document() { return *document_; }
    PlanFiles& files() { return *files_; }
    PriceChoice& prices() { return *prices_; }
    ComparisonChoice& comparison() { return *comparison_; }
    // The invented example, already assessed, with "start your own" beside it.
    void show_example();
    // Asks whether to take back what a crash left behind; true where a plan was recovered.
    bool offer_recovery();
    SharedAssessment assessment() const { return assessment_; } // the last one received, may be stale
    bool up_to_date() const;
    // Once it is closed: the plan that the program is to open when it starts again at once (empty: none); nullopt
    // where it is not to start again.
    const std::optional<QString>& starts_again_with() const { return starts_again_with_; }

protected:
    void showEvent(QShowEvent* event) override;
    void closeEvent(QCloseEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    void build_panels();
    void build_file_menu();
    void build_edit_menu();
    void build_compare_menu();
    void build_prices_menu();
    void build_view_menu();
    void build_help_menu();
    void fill_recent_menu();
    void wire_document();
    void wire_panels();
    void wire_comparison();

    // Takes an edit of the form, or says why it can't be: a plan that would not open again is never made.
    void take_edit(const QString& text, const QString& field, const plan::Plan& changed);
    void take_trial(const std::string& enclosure, const assess::Trial& trial);
    void take_tick(const assess::ShoppingLine& line, bool have);
    void take_enclosure(const QString& text, const QString& field, const plan::Enclosure& changed);
    void duplicate_thing(const QString& id);
    void catalog_changed(const SharedCatalog& catalog);
    void comparison_changed();
    void plan_changed();
    void assessment_ready(const SharedAssessment& assessment);
    void refresh_title();
    void refresh_status();
    void print_sheets(bool to_pdf);
    void make_batch();
    void show_preferences();
    void start_again();
    void manage_prices();
    void start_first_plan();
    void start_tour();
    void find_command();
    void export_drawing();
    void show_calendar();
    void export_shopping();
    void export_costs();
    bool may_hand_out(); // says so where the figures are not there yet
    void say_exported(const QString& path);

    Settings& settings_;
    QString data_folder_;
    PriceChoice* prices_;
    SharedCatalog catalog_;
    PlanDocument* document_;
    PlanFiles* files_;
    ComparisonChoice* comparison_;
    AssessmentRunner* runner_;
    TrialRunner* trials_;
    std::unique_ptr<Recovery> recovery_;
    FormPanel* form_ = nullptr;
    DrawingView* drawing_ = nullptr;
    ResultsPanel* results_ = nullptr;
    WelcomeBar* welcome_ = nullptr;
    TourBar* tour_ = nullptr;
    MessageBar* message_ = nullptr;
    QSplitter* across_ = nullptr;
    QSplitter* down_ = nullptr;
    QMenu* recent_menu_ = nullptr;
    QLabel* state_label_ = nullptr;
    SharedAssessment assessment_;
    bool stale_ = true;
    std::optional<QString> starts_again_with_;
};

} // namespace loam::desk
