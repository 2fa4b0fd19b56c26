#include "app/desk/batch/batch_process.hpp"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QRegularExpression>

namespace loam::desk {

QString command_line_program()
{
    const QDir here(QCoreApplication::applicationDirPath());
    for (const QString& path : {qEnvironmentVariable("LOAMSTEAD_CLI"), here.filePath(QStringLiteral("loamstead-cli")),
                                here.filePath(QStringLiteral("../cli/loamstead-cli"))}) {
        if (!path.isEmpty() && QFileInfo(path).isExecutable()) {
            return path;
        }
    }
    return {};
}

BatchProcess::BatchProcess(QObject* parent) : QObject(parent)
{
    connect(&process_, &QProcess::readyReadStandardError, this, &BatchProcess::read_lines);
    connect(&process_, &QProcess::finished, this, [this](int code, QProcess::ExitStatus how) {
        end(how == QProcess::NormalExit && !cancelled_ ? code : -1);
    });
    connect(&process_, &QProcess::errorOccurred, this, [this](QProcess::ProcessError error) {
        if (error == QProcess::FailedToStart) {
            told_ = process_.errorString();
            end(-1);
        }
    });
}

BatchProcess::~BatchProcess()
{
    process_.disconnect(this);
    if (at_work()) {
        process_.kill();
        process_.waitForFinished();
    }
}

void BatchProcess::start(const QStringList& words)
{
    told_.clear();
    cancelled_ = false;
    process_.start(command_line_program(), QStringList{QStringLiteral("batch")} + words);
}

void BatchProcess::cancel()
{
    cancelled_ = true;
    process_.kill(); // each file is written in one step, so nothing is left half made
}

void BatchProcess::read_lines()
{
    static const QRegularExpression step(QStringLiteral("^([0-9]+) of ([0-9]+)$"));
    process_.setReadChannel(QProcess::StandardError);
    while (process_.canReadLine()) {
        const QString line = QString::fromUtf8(process_.readLine()).trimmed();
        const QRegularExpressionMatch match = step.match(line);
        if (match.hasMatch()) {
            emit progressed(match.captured(1).toInt(), match.captured(2).toInt());
        } else if (!line.isEmpty()) {
            told_ += line + QLatin1Char('\n');
        }
    }
}

void BatchProcess::end(int status)
{
    read_lines();
    emit ended(status, told_.trimmed());
}

} // namespace loam::desk
