// What the words in the window mean, for a newcomer.
#pragma once

#include <QString>
#include <vector>

namespace loam::desk {

struct Term {
    QString word;
    QString meaning;
};

std::vector<Term> terms(); // in the reader's language, by the alphabet

} // namespace loam::desk
