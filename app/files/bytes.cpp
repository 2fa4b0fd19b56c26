#include "app/files/bytes.hpp"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QLocale>
#include <QSaveFile>

#include <cstdio>

namespace loam::files {

namespace {

// The translator finds these texts under "files".
struct Said {
    Q_DECLARE_TR_FUNCTIONS(files)
};

QString size_text(qint64 bytes)
{
    return QLocale(QLocale::English).formattedDataSize(bytes, 0, QLocale::DataSizeTraditionalFormat);
}

QString too_large(const QString& path, qint64 limit_bytes)
{
    return Said::tr("“%1” is larger than %2, the most that is read. It is probably not the file you meant.")
        .arg(shown_path(path), size_text(limit_bytes));
}

QString open_error(const QString& path, const QFile& file)
{
    if (!QFileInfo::exists(path)) {
        return Said::tr("“%1” does not exist.").arg(shown_path(path));
    }
    return Said::tr("“%1” can't be read: %2.").arg(shown_path(path), file.errorString());
}

} // namespace

Bytes read_bytes(const QString& path, qint64 limit_bytes)
{
    const bool standard_input = path == QStringLiteral("-");
    QFile file(path);
    if (!standard_input && QFileInfo(path).isDir()) {
        return {{}, Said::tr("“%1” is a folder, not a file.").arg(shown_path(path))};
    }
    if (standard_input ? !file.open(stdin, QIODevice::ReadOnly) : !file.open(QIODevice::ReadOnly)) {
        return {{}, open_error(path, file)};
    }
    if (!file.isSequential() && file.size() > limit_bytes) {
        return {{}, too_large(path, limit_bytes)};
    }
    // One byte more than allowed tells a pipe that is too long from one that just fits.
    QByteArray bytes = file.read(limit_bytes + 1);
    if (bytes.size() > limit_bytes) {
        return {{}, too_large(path, limit_bytes)};
    }
    if (file.error() != QFileDevice::NoError) {
        return {{}, Said::tr("“%1” can't be read: %2.").arg(shown_path(path), file.errorString())};
    }
    return {std::move(bytes), {}};
}

QString write_bytes(const QByteArray& bytes, const QString& path)
{
    QSaveFile file(path);
    const bool written = file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size() && file.commit();
    return written ? QString() : Said::tr("“%1” can't be written: %2.").arg(shown_path(path), file.errorString());
}

QString shown_path(const QString& path)
{
    return path == QStringLiteral("-") ? Said::tr("standard input") : QDir::toNativeSeparators(path);
}

} // namespace loam::files
