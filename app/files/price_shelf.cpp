#include "app/files/price_shelf.hpp"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QStandardPaths>

#include "app/files/bytes.hpp"

namespace loam::files {

namespace {

// The translator finds these texts under "files".
struct Said {
    Q_DECLARE_TR_FUNCTIONS(files)
};

// Letters and digits of the title, the rest as hyphens: a name that every file system takes and that leads nowhere
// else.
QString stem_of(const std::string& title)
{
    constexpr qsizetype longest = 60;
    QString stem;
    for (const QChar c : QString::fromStdString(title).toLower()) {
        if (c.isLetterOrNumber() && c.unicode() < 0x250) {
            stem += c;
        } else if (!stem.isEmpty() && !stem.endsWith(QLatin1Char('-'))) {
            stem += QLatin1Char('-');
        }
    }
    stem = stem.left(longest);
    while (stem.endsWith(QLatin1Char('-'))) {
        stem.chop(1);
    }
    return stem.isEmpty() ? QStringLiteral("prices") : stem;
}

} // namespace

std::vector<ShelvedPrices> PriceShelf::lists() const
{
    std::vector<ShelvedPrices> result;
    const QStringList filter{QStringLiteral("*.json"), QStringLiteral("*.csv")};
    for (const QFileInfo& info : QDir(folder_).entryInfoList(filter, QDir::Files, QDir::Name)) {
        result.push_back({info.absoluteFilePath(), read_prices(info.absoluteFilePath())});
    }
    return result;
}

bool PriceShelf::holds(const QString& path) const
{
    return !path.isEmpty() && QFileInfo(path).absoluteDir() == QDir(folder_);
}

PriceShelf::Put PriceShelf::put(const catalog::PriceList& prices) const
{
    if (!QDir().mkpath(folder_)) {
        return {{}, Said::tr("The folder “%1” can't be made.").arg(shown_path(folder_))};
    }
    const QString stem = stem_of(prices.title);
    QString path = QDir(folder_).filePath(stem + QStringLiteral(".json"));
    for (int number = 2; QFileInfo::exists(path); ++number) {
        path = QDir(folder_).filePath(QStringLiteral("%1-%2.json").arg(stem).arg(number));
    }
    return {path, write_prices(prices, path)};
}

QString PriceShelf::remove(const QString& path) const
{
    if (!holds(path)) {
        return Said::tr("“%1” is not one of the lists kept here.").arg(shown_path(path));
    }
    // Where the user's data folder is missing Qt would put the waste bin into the folder that we happen to stand in.
    QDir().mkpath(QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation));
    return QFile::moveToTrash(path) || QFile::remove(path) ? QString()
                                                           : Said::tr("“%1” can't be deleted.").arg(shown_path(path));
}

} // namespace loam::files
