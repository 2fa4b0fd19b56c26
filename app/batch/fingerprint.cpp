#include "app/batch/fingerprint.hpp"

#include <QCryptographicHash>
#include <QDir>
#include <QDirIterator>
#include <QFile>

namespace loam::batch {

QByteArray guidance_fingerprint(const QString& folder)
{
    QStringList paths;
    QDirIterator files(folder, {QStringLiteral("*.json")}, QDir::Files, QDirIterator::Subdirectories);
    while (files.hasNext()) {
        paths << files.next();
    }
    paths.sort();
    QCryptographicHash hash(QCryptographicHash::Sha256);
    for (const QString& path : paths) {
        QFile file(path);
        hash.addData(QDir(folder).relativeFilePath(path).toUtf8() + '\0');
        if (file.open(QIODevice::ReadOnly)) {
            hash.addData(QCryptographicHash::hash(file.readAll(), QCryptographicHash::Sha256));
        }
    }
    return hash.result().toHex();
}

} // namespace loam::batch
