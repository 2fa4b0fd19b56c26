#include "app/words/capitals.hpp"

namespace loam::words {

QString capitalised(const QString& text)
{
    return text.left(1).toUpper() + text.mid(1);
}

} // namespace loam::words
