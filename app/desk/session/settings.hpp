// Preferences that outlive a session. Never part of a plan: changing one edits nothing.
#pragma once

#include <QObject>
#include <QSettings>
#include <QStringList>

#include "app/sheets/paper.hpp"
#include "app/sheets/printed_by.hpp"
#include "app/words/units.hpp"

namespace loam::desk {

enum class Theme { system, light, dark };

class Settings : public QObject {
    Q_OBJECT

public:
    explicit Settings(QObject* parent = nullptr);

    words::UnitSystem units() const;
    void set_units(words::UnitSystem units);
    QString language() const;        // code of a language that the program speaks; the desktop's where none was chosen
    QString chosen_language() const; // empty: as the desktop
    void set_language(const QString& code); // empty: as the desktop; counts when the program next starts
    Theme theme() const;
    void set_theme(Theme theme);
    sheets::Paper paper() const;
    void set_paper(sheets::Paper paper);

    sheets::PrintedBy printed_by() const;
    void set_printed_by(const sheets::PrintedBy& by);

    QStringList left_out_sheets() const; // names of sheets that are not wanted on paper; new ones are
    void set_left_out_sheets(const QStringList& names);

    QStringList price_lists() const; // paths, bought from together; empty: the one that comes with the program
    void set_price_lists(const QStringList& paths);

    QStringList recent_files() const; // newest first, at most ten, existing or not
    void add_recent_file(const QString& path);
    void forget_recent_file(const QString& path);
    void clear_recent_files();

    bool first_start() const; // true until `note_started` was called once on this account
    void note_started();

    QByteArray window_geometry() const;
    QByteArray window_layout(const QString& part) const;
    void keep_window(const QByteArray& geometry);
    void keep_layout(const QString& part, const QByteArray& state);

signals:
    void unitsChanged(loam::words::UnitSystem units);
    void themeChanged(loam::desk::Theme theme);
    void recentFilesChanged();

private:
    QSettings store_;
};

} // namespace loam::desk
