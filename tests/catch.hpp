// Catch2 2 (Debian 12) and 3 differ in their headers and in where Approx lives; tests include this instead.
#pragma once

#if __has_include(<catch2/catch_all.hpp>)
#include <catch2/catch_all.hpp>
using Catch::Approx;
#else
#include <catch2/catch.hpp> // puts Approx into the global namespace itself
#endif
