#include "app/files/guidance.hpp"

#include <QDir>
#include <QDirIterator>
#include <QStandardPaths>

#include <cassert>
#include <vector>

#include "app/files/bytes.hpp"
#include "app/words/catalog_names.hpp"
#include "app/words/problems.hpp"

namespace loam::files {

namespace {

constexpr qint64 largest_guidance_file_bytes = 4 * 1024 * 1024;

// In the order of their names, so that the same files give the same catalog on every machine.
QStringList json_files_under(const QString& folder)
{
    QStringList paths;
    QDirIterator files(folder, {QStringLiteral("*.json")}, QDir::Files, QDirIterator::Subdirectories);
    while (files.hasNext()) {
        paths << files.next();
    }
    paths.removeIf([](const QString& path) { return path.endsWith(QStringLiteral(".loamstead.json")); });
    paths.sort();
    return paths;
}

struct Layer {
    std::vector<catalog::SourceText> texts;
    QStringList problems;
};

Layer read_layer(const QString& folder)
{
    Layer layer;
    for (const QString& path : json_files_under(folder)) {
        const Bytes file = read_bytes(path, largest_guidance_file_bytes);
        if (file.error.isEmpty()) {
            layer.texts.push_back({QDir(folder).relativeFilePath(path).toStdString(), file.bytes.toStdString()});
        } else {
            layer.problems << file.error;
        }
    }
    return layer;
}

void tell(const std::vector<catalog::FileProblem>& problems, QStringList& sentences)
{
    for (const catalog::FileProblem& each : problems) {
        sentences << QString::fromStdString(each.file) + QStringLiteral(": ") + words::problem(each.problem);
    }
}

} // namespace

Guidance load_guidance(const QString& folder)
{
    Guidance guidance;
    const Layer shipped = read_layer(QStringLiteral(":/loamstead"));
    tell(catalog::add_layer(guidance.catalog, shipped.texts), guidance.problems);
    assert(guidance.problems.isEmpty()); // a test opens every shipped file

    const Layer own = folder.isEmpty() ? Layer() : read_layer(folder);
    guidance.problems << own.problems;
    tell(catalog::add_layer(guidance.catalog, own.texts), guidance.problems);
    tell(catalog::check(guidance.catalog), guidance.problems);
    words::translate_names(guidance.catalog);
    return guidance;
}

Guidance load_guidance()
{
    return load_guidance(user_guidance_folder());
}

QString user_guidance_folder()
{
    return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) + QStringLiteral("/guidance");
}

} // namespace loam::files
