// Whole files as bytes: never more than a limit is read, and writing is all or nothing.
#pragma once

#include <QByteArray>
#include <QString>

namespace loam::files {

struct Bytes {
    QByteArray bytes;
    QString error; // a sentence; empty: `bytes` is the whole file
};

// `path` "-" is standard input. A file larger than `limit_bytes` is refused before it is read.
Bytes read_bytes(const QString& path, qint64 limit_bytes);

// Replaces the file in one step, or leaves the old one as it was. Returns why it failed, else an empty text.
QString write_bytes(const QByteArray& bytes, const QString& path);

// "standard input", or the path in the reader's own notation.
QString shown_path(const QString& path);

} // namespace loam::files
