// A batch at work: the command line as a process of its own, since it speaks the adopters' languages one after another
// and the window goes on in the reader's.
#pragma once

#include <QObject>
#include <QProcess>
#include <QString>
#include <QStringList>

namespace loam::desk {

// loamstead-cli beside this program, or where a build leaves it; LOAMSTEAD_CLI names another. Empty: there is none.
QString command_line_program();

class BatchProcess : public QObject {
    Q_OBJECT

public:
    explicit BatchProcess(QObject* parent);
    ~BatchProcess() override; // ends one that is at work

    // `words` are those of “batch”.
    void start(const QStringList& words);
    // What is done stays, and the next run goes on from there.
    void cancel();
    bool at_work() const { return process_.state() != QProcess::NotRunning; }

signals:
    void progressed(int done, int of);
    // `status` as the command line promises; -1: cancelled, or it could not be started. `told` is what it said.
    void ended(int status, const QString& told);

private:
    void read_lines();
    void end(int status);

    QProcess process_;
    QString told_;
    bool cancelled_ = false;
};

} // namespace loam::desk
