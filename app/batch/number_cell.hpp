// A number as people type it into a list.
#pragma once

#include <QString>
#include <string>
#include <string_view>
#include <variant>

namespace loam::batch {

// With a point and nothing else, to be read anywhere; or a sentence that says why it can't be one. Point and comma both
// count as the decimal mark where they can mean nothing else: in a list separated by semicolons 1.500 may be one and a
// half or fifteen hundred, elsewhere 1,500 may, and is refused. No exponents, no units, at most nine digits before the
// mark and nine after it.
std::variant<std::string, QString> plain_number(std::string_view cell, char separator);

} // namespace loam::batch
