// Keeps a copy of unsaved work beside the user's data, so that a crash loses at most a few seconds.
#pragma once

#include <QDateTime>
#include <QLockFile>
#include <QObject>
#include <QString>
#include <QTimer>
#include <memory>
#include <vector>

#include "core/plan/plan.hpp"

namespace loam::desk {

struct RecoveredPlan {
    QString recovery_file;
    QString original_path; // empty: was never saved
    plan::Plan plan;
    QDateTime when;
};

class Recovery : public QObject {
    Q_OBJECT

public:
    explicit Recovery(QString folder, QObject* parent = nullptr);
    ~Recovery() override; // an orderly end leaves nothing behind

    // Work that an earlier session left when it ended without saying goodbye; live sessions' work is not offered.
    std::vector<RecoveredPlan> left_behind() const;
    void discard(const RecoveredPlan& recovered);

    // Writes soon (and at most every few seconds) if `modified`; removes the copy if not.
    void keep(const plan::Plan& plan, const QString& path, bool modified);
    // Writes what is waiting at once.
    bool flush();

private:
    QString file_of(const QString& session) const;

    QString folder_;
    QString session_;
    std::unique_ptr<QLockFile> lock_;
    QTimer rest_;
    plan::Plan plan_;
    QString path_;
    bool waiting_ = false;
};

} // namespace loam::desk
