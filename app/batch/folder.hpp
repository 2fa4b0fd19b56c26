// The folder that a batch is written to: whose it is, and what in it is done.
#pragma once

#include <QByteArray>
#include <QDir>
#include <QFile>
#include <QLockFile>
#include <QString>
#include <map>
#include <memory>
#include <mutex>
#include <optional>

#include "app/batch/job.hpp"
#include "app/batch/record.hpp"

namespace loam::batch {

// The names in it that are not adopters' files.
inline constexpr const char* manifest_name = "batch.json";
inline constexpr const char* rows_name = "batch-rows.jsonl";

// What makes the sheets what they are, but for the list itself: each row's own words stand with its record. The same
// job gives the same bytes on every machine.
QByteArray manifest_of(const Job& job);

// Several processes may hold it for different slices.
class Folder {
public:
    // Makes the folder where it is missing. Refuses one that holds anything else than this job, or whose slice is being
    // worked on: `error` is a sentence then, and nothing was written.
    static std::unique_ptr<Folder> open(const Job& job, const Asked& asked, QString& error);
    ~Folder();
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;

    // What is done by any slice, by row.
    const std::map<std::size_t, Record>& records() const { return records_; }
    // False where its file is missing.
    bool is_there(const Record& record) const;
    // Whether its file is as it was written.
    bool is_untouched(const Record& record) const;

    // The file in one step, then its record; several threads may call it. Returns why not, else an empty text.
    QString put(const Record& record, const QByteArray& pdf);
    // One of the club's papers, in one step.
    QString put_paper(const QString& name, const QByteArray& text) const;
    // All records in one file in the order of the rows, in place of the slices' own.
    QString put_together();

private:
    Folder(const QDir& dir, const Slice& slice);
    QString begin(const QByteArray& manifest);
    QString lock_in_the_way(); // its name; empty: the folder is ours
    QString read_records();

    QDir dir_;
    QString part_; // the stem of the names of this slice's own files
    QLockFile lock_;
    QFile journal_; // a line for each row as it is done
    std::mutex writing_;
    std::map<std::size_t, Record> records_;
};

} // namespace loam::batch
