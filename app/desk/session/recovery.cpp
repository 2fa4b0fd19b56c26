#include "app/desk/session/recovery.hpp"

#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>
#include <QUuid>
#include <utility>

#include "core/plan/file.hpp"

namespace loam::desk {

namespace {

constexpr int rest_ms = 2000;
const auto plan_suffix = QStringLiteral(".recovery.loamstead.json");
const auto lock_suffix = QStringLiteral(".lock");
// The plan's own path travels inside the copy, as an extra member that plans may carry.
constexpr const char* path_key = "x_recovery_original_path";

std::string take_original_path(plan::Plan& plan)
{
    std::string path;
    std::erase_if(plan.extras, [&path](const auto& extra) {
        if (extra.first == path_key) {
            path = extra.second.text;
            return true;
        }
        return false;
    });
    return path;
}

} // namespace

Recovery::Recovery(QString folder, QObject* parent)
    : QObject(parent), folder_(std::move(folder)), session_(QUuid::createUuid().toString(QUuid::WithoutBraces))
{
    QDir().mkpath(folder_);
    lock_ = std::make_unique<QLockFile>(folder_ + QLatin1Char('/') + session_ + lock_suffix);
    lock_->setStaleLockTime(0); // a lock is stale only when its process is gone
    lock_->tryLock(0);
    rest_.setSingleShot(true);
    rest_.setInterval(rest_ms);
    connect(&rest_, &QTimer::timeout, this, &Recovery::flush);
}

Recovery::~Recovery()
{
    QFile::remove(file_of(session_));
    lock_->unlock();
}

QString Recovery::file_of(const QString& session) const
{
    return folder_ + QLatin1Char('/') + session + plan_suffix;
}

std::vector<RecoveredPlan> Recovery::left_behind() const
{
    std::vector<RecoveredPlan> found;
    const QFileInfoList files = QDir(folder_).entryInfoList({QLatin1Char('*') + plan_suffix}, QDir::Files, QDir::Time);
    for (const QFileInfo& info : files) {
        const QString session = info.fileName().chopped(plan_suffix.size());
        QLockFile other(folder_ + QLatin1Char('/') + session + lock_suffix);
        other.setStaleLockTime(0);
        if (session == session_ || !other.tryLock(0)) {
            continue; // ours, or a window that is still open
        }
        QFile file(info.filePath());
        if (!file.open(QIODevice::ReadOnly)) {
            continue;
        }
        const QByteArray bytes = file.readAll();
        auto read = plan::read({bytes.constData(), static_cast<std::size_t>(bytes.size())});
        if (auto* loaded = std::get_if<plan::Loaded>(&read)) {
            const QString original = QString::fromStdString(take_original_path(loaded->plan));
            found.push_back({info.filePath(), original, std::move(loaded->plan), info.lastModified()});
        }
    }
    return found;
}

void Recovery::discard(const RecoveredPlan& recovered)
{
    QFile::remove(recovered.recovery_file);
}

void Recovery::keep(const plan::Plan& plan, const QString& path, bool modified)
{
    if (!modified) {
        waiting_ = false;
        rest_.stop();
        QFile::remove(file_of(session_));
        return;
    }
    plan_ = plan;
    path_ = path;
    waiting_ = true;
    if (!rest_.isActive()) {
        rest_.start();
    }
}

bool Recovery::flush()
{
    if (!waiting_) {
        return true;
    }
    plan::Plan copy = plan_;
    copy.extras.emplace_back(path_key, json::Node::of(std::string_view(path_.toStdString())));
    const std::string text = plan::write(copy);
    QSaveFile file(file_of(session_));
    if (!file.open(QIODevice::WriteOnly) || file.write(text.data(), static_cast<qint64>(text.size())) < 0 ||
        !file.commit()) {
        return false; // tried again with the next edit
    }
    waiting_ = false;
    return true;
}

} // namespace loam::desk
