// How the program ends. Scripts rely on these numbers.
#pragma once

namespace loam::cli {

enum class Exit {
    done = 0,
    falls_short = 1, // `assess --strict`: something falls short or is a danger
    wrong_usage = 2,
    bad_input = 3,   // a file was read and is not what it should be
    file_trouble = 4 // a file can't be read or written
};

} // namespace loam::cli
