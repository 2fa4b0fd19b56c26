// The price lists that a user keeps with the program: one JSON file each, in one folder.
#pragma once

#include <QString>
#include <vector>

#include "app/files/price_file.hpp"

namespace loam::files {

struct ShelvedPrices {
    QString path;
    PriceFile file; // with its errors, where it can't be read
};

class PriceShelf {
public:
    explicit PriceShelf(QString folder) : folder_(std::move(folder)) {} // need not exist yet

    std::vector<ShelvedPrices> lists() const; // by their file names
    bool holds(const QString& path) const;    // whether the path lies in the folder

    struct Put {
        QString path;
        QString error; // a sentence; empty: the list stands at `path`
    };
    // A further list, under a file name made of its title that no other file has.
    Put put(const catalog::PriceList& prices) const;
    // To the desktop's waste bin where there is one, else deleted. Only what the shelf holds; returns why not.
    QString remove(const QString& path) const;

private:
    QString folder_;
};

} // namespace loam::files
