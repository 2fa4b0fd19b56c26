// New, open, save and what is asked around them. Everything that may lose work goes through `may_discard`.
#pragma once

#include <QObject>
#include <QString>
#include <optional>

#include "app/files/plan_file.hpp"
#include "core/plan/plan.hpp"

class QWidget;

namespace loam::desk {

class PlanDocument;
class Settings;

class PlanFiles : public QObject {
    Q_OBJECT

public:
    PlanFiles(PlanDocument& document, Settings& settings, QWidget* dialog_parent);

    bool open_asking();             // file dialog
    bool open(const QString& path); // asks about unsaved work, shows what is wrong with the file
    // A plan to look at beside the open one, which stays as it is; nothing where the file is bad, which is shown.
    std::optional<plan::Plan> read(const QString& path);
    QString ask_for_plan(const QString& title); // file dialog; empty: none was chosen
    bool save();                                // asks for a path where there is none
    bool save_as();
    bool start_new();   // an empty plan with one enclosure to begin with
    bool may_discard(); // true where nothing unsaved is lost, or the user said so

signals:
    void opened(const QString& path);
    void saved(const QString& path);
    void startedNew();

private:
    bool write_to(const QString& path);
    std::optional<files::PlanFile> read_or_tell(const QString& path);
    void show_problems(const QString& path, const QStringList& lines);

    PlanDocument& document_;
    Settings& settings_;
    QWidget* dialog_parent_;
};

// The plan that a new keeper begins with: one enclosure without animals, nothing assumed silently.
plan::Plan blank_plan();

} // namespace loam::desk
