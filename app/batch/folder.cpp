#include "app/batch/folder.hpp"

#include <QCryptographicHash>
#include <QFileInfo>
#include <QJsonDocument>
#include <QJsonObject>

#include <filesystem>

#include "app/batch/said.hpp"
#include "app/files/bytes.hpp"

namespace loam::batch {

namespace {

constexpr qint64 largest_manifest_bytes = 64 * 1024;
constexpr qint64 largest_journal_bytes = 64 * 1024 * 1024;
const QStringList part_pattern{QStringLiteral("batch-part-*.jsonl")};

QString sha256(const QByteArray& bytes)
{
    return QString::fromLatin1(QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex());
}

// What of two manifests is not the same, in words of the command line.
QString difference(const QByteArray& there, const QByteArray& ours)
{
    const QJsonObject one = QJsonDocument::fromJson(there).object();
    const QJsonObject other = QJsonDocument::fromJson(ours).object();
    QStringList keys;
    for (const QString& key : other.keys()) {
        if (one.value(key) != other.value(key)) {
            keys << (key == QStringLiteral("date") && one.value(key).isString()
                         ? Said::tr("date (there: %1)").arg(one.value(key).toString().left(20))
                         : key);
        }
    }
    return keys.join(QStringLiteral(", "));
}

} // namespace

Folder::Folder(const QDir& dir, const Slice& slice)
    : dir_(dir), part_(QStringLiteral("batch-part-%1-of-%2").arg(slice.index).arg(slice.of)),
      lock_(dir_.filePath(part_ + QStringLiteral(".lock"))), journal_(dir_.filePath(part_ + QStringLiteral(".jsonl")))
{
    lock_.setStaleLockTime(0); // a run may take hours; one that was killed is found by its process
}

Folder::~Folder()
{
    if (lock_.isLocked()) {
        journal_.close();
        if (journal_.exists() && journal_.size() == 0) {
            journal_.remove(); // nothing was made, so nothing is to be put together
        }
        QDir(dir_.filePath(part_ + QStringLiteral(".tmp"))).removeRecursively();
    }
}

std::unique_ptr<Folder> Folder::open(const Job& job, const Asked& asked, QString& error)
{
    const QDir dir(asked.folder);
    if (!dir.exists() && !QDir().mkpath(asked.folder)) {
        error = Said::tr("The folder “%1” can't be made.").arg(files::shown_path(asked.folder));
        return nullptr;
    }
    std::unique_ptr<Folder> folder(new Folder(dir, asked.slice));
    error = folder->begin(manifest_of(job));
    return error.isEmpty() ? std::move(folder) : nullptr;
}

QString Folder::begin(const QByteArray& manifest)
{
    const QString path = dir_.filePath(QLatin1String(manifest_name));
    const QString shown = files::shown_path(dir_.path());
    if (QFileInfo::exists(path)) {
        const QByteArray there = files::read_bytes(path, largest_manifest_bytes).bytes;
        if (there != manifest) {
            return Said::tr("“%1” holds sheets that were made with something else (%2). Nothing is written over: name "
                            "another folder, or give what was given then.")
                .arg(shown, difference(there, manifest));
        }
    } else if (!dir_.isEmpty(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot)) {
        return Said::tr("“%1” holds other files. Name an empty folder or a new one.").arg(shown);
    } else if (QString error = files::write_bytes(manifest, path); !error.isEmpty()) {
        return error;
    }
    if (const QString lock = lock_in_the_way(); !lock.isEmpty()) {
        return Said::tr("Another run works on “%1”. Wait for it; if there is none on any machine, remove “%2”.")
            .arg(shown, lock);
    }
    QDir(dir_.filePath(part_ + QStringLiteral(".tmp"))).removeRecursively(); // of a run that was killed
    dir_.mkdir(part_ + QStringLiteral(".tmp"));
    return read_records();
}

// A slice may run beside other slices, the whole beside none: it puts their journals together.
QString Folder::lock_in_the_way()
{
    const QString own = part_ + QStringLiteral(".lock");
    const QString whole = QStringLiteral("batch-part-1-of-1.lock");
    for (const QString& name : dir_.entryList({QStringLiteral("batch-part-*.lock")}, QDir::Files, QDir::Name)) {
        if (name != own && (name == whole || own == whole)) {
            QLockFile other(dir_.filePath(name));
            other.setStaleLockTime(0);
            if (!other.tryLock(0)) {
                return name;
            }
        }
    }
    return lock_.tryLock(0) ? QString() : own;
}

// A last line that was torn when a run was killed counts as not there, and goes.
QString Folder::read_records()
{
    QByteArray own;
    QStringList names = dir_.entryList(part_pattern, QDir::Files, QDir::Name);
    names.prepend(QLatin1String(rows_name));
    for (const QString& name : names) {
        const QString path = dir_.filePath(name);
        if (!QFileInfo::exists(path)) {
            continue;
        }
        const files::Bytes file = files::read_bytes(path, largest_journal_bytes);
        if (!file.error.isEmpty()) {
            return file.error;
        }
        for (const QByteArray& line : file.bytes.split('\n')) {
            if (const auto record = record_in(line + '\n')) {
                records_[record->row] = *record;
                own += path == journal_.fileName() ? line + '\n' : QByteArray();
            }
        }
    }
    if (!own.isEmpty() || journal_.exists()) {
        if (QString error = files::write_bytes(own, journal_.fileName()); !error.isEmpty()) {
            return error;
        }
    }
    return journal_.open(QIODevice::Append) ? QString()
                                            : Said::tr("“%1” can't be written: %2.")
                                                  .arg(files::shown_path(journal_.fileName()), journal_.errorString());
}

bool Folder::is_there(const Record& record) const
{
    return QFileInfo::exists(dir_.filePath(record.file));
}

bool Folder::is_untouched(const Record& record) const
{
    QFile file(dir_.filePath(record.file));
    return file.open(QIODevice::ReadOnly) && sha256(file.readAll()) == record.sha256;
}

QString Folder::put(const Record& record, const QByteArray& pdf)
{
    const QString made = dir_.filePath(part_ + QStringLiteral(".tmp/") + record.file);
    const QString path = dir_.filePath(record.file);
    QFile file(made);
    const bool written = file.open(QIODevice::WriteOnly) && file.write(pdf) == pdf.size() && file.flush();
    file.close();
    std::error_code failed;
    if (written) {
        std::filesystem::rename(made.toStdString(), path.toStdString(), failed); // in one step
    }
    if (!written || failed) {
        return Said::tr("The sheets of row %1 can't be written: %2.")
            .arg(record.row)
            .arg(written ? QString::fromStdString(failed.message()) : file.errorString());
    }
    Record whole = record;
    whole.sha256 = sha256(pdf);
    const QByteArray line = line_of(whole);
    const std::lock_guard guard(writing_);
    const auto before = records_.find(record.row);
    if (before != records_.end() && before->second.file != record.file && is_untouched(before->second)) {
        dir_.remove(before->second.file); // the row has another name now, and this was ours
    }
    records_[record.row] = whole;
    return journal_.write(line) == line.size() && journal_.flush()
               ? QString()
               : Said::tr("“%1” can't be written: %2.")
                     .arg(files::shown_path(journal_.fileName()), journal_.errorString());
}

QString Folder::put_paper(const QString& name, const QByteArray& text) const
{
    return files::write_bytes(text, dir_.filePath(name));
}

QString Folder::put_together()
{
    QByteArray all;
    for (const auto& [row, record] : records_) {
        all += line_of(record);
    }
    if (QString error = files::write_bytes(all, dir_.filePath(QLatin1String(rows_name))); !error.isEmpty()) {
        return error;
    }
    journal_.close();
    for (const QString& name : dir_.entryList(part_pattern, QDir::Files, QDir::Name)) {
        dir_.remove(name);
    }
    return {};
}

} // namespace loam::batch
