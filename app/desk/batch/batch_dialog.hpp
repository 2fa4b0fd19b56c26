// The sheets for a list of adopters: the open plan is the template. Shows which rows would fail before anything is
// made.
#pragma once

#include <QDialog>
#include <QTemporaryDir>

#include "app/desk/batch/adopter_preview.hpp"
#include "app/desk/batch/batch_process.hpp"
#include "app/sheets/paper.hpp"
#include "app/sheets/printed_by.hpp"
#include "app/words/units.hpp"

class QFormLayout;
class QLabel;
class QLineEdit;
class QProgressBar;
class QPushButton;
class QTreeWidget;

namespace loam::desk {

// How the sheets are to be: as the window has it.
struct BatchSettings {
    QStringList price_lists; // files; empty: the list that comes with the program
    QString language;
    words::UnitSystem units = words::UnitSystem::metric;
    sheets::Paper paper = sheets::Paper::a4;
    sheets::PrintedBy printed_by{};
};

class BatchDialog : public QDialog {
    Q_OBJECT

public:
    BatchDialog(const plan::Plan& plan, SharedCatalog catalog, BatchSettings settings, QWidget* parent);

    void reject() override; // asks first where a run is at work

private:
    QLineEdit* add_path(QFormLayout& form, const QString& label, const char* name, void (BatchDialog::*ask)());
    QWidget* build_buttons();
    void ask_for_list();
    void ask_for_lent();
    void ask_for_folder();
    void show_preview(const SharedPreview& preview);
    void start();
    void ended(int status, const QString& told);
    void refresh();
    QStringList words() const;
    QString template_path() const;

    const plan::Plan plan_;
    BatchSettings settings_;
    QTemporaryDir own_; // holds the template as it stands in the window
    AdopterPreview* preview_;
    BatchProcess* process_;
    SharedPreview shown_;
    QLineEdit* list_ = nullptr;
    QLineEdit* lent_ = nullptr;
    QLineEdit* folder_ = nullptr;
    QTreeWidget* rows_;
    QLabel* summary_;
    QProgressBar* progress_;
    QLabel* result_;
    QPushButton* start_ = nullptr;
    QPushButton* cancel_ = nullptr;
    QPushButton* open_ = nullptr;
};

} // namespace loam::desk
