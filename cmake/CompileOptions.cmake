# Language level, warnings, sanitizers and the compiler cache: everything that every target shares.
option(LOAMSTEAD_BUILD_APP "Build the window, the sheets and the command line (needs Qt 6)" ON)
option(LOAMSTEAD_WERROR "Treat warnings as errors" OFF)
set(LOAMSTEAD_SANITIZE "" CACHE STRING "Sanitizers, for example address;undefined or thread")
option(LOAMSTEAD_COVERAGE "Measure test coverage" OFF)

set(CMAKE_CXX_STANDARD 20)
set(CMAKE_CXX_STANDARD_REQUIRED ON)
set(CMAKE_CXX_EXTENSIONS OFF)
set(CMAKE_EXPORT_COMPILE_COMMANDS ON)
if(NOT CMAKE_BUILD_TYPE AND NOT CMAKE_CONFIGURATION_TYPES)
  set(CMAKE_BUILD_TYPE Release CACHE STRING "" FORCE)
endif()
find_program(LOAMSTEAD_CCACHE ccache)
if(LOAMSTEAD_CCACHE AND NOT CMAKE_CXX_COMPILER_LAUNCHER)
  set(CMAKE_CXX_COMPILER_LAUNCHER ${LOAMSTEAD_CCACHE})
endif()

add_library(loamstead_options INTERFACE)
target_include_directories(loamstead_options INTERFACE ${CMAKE_CURRENT_SOURCE_DIR})
target_compile_options(loamstead_options INTERFACE
  -Wall -Wextra -Wpedantic -Wshadow -Wnon-virtual-dtor -Wold-style-cast -Woverloaded-virtual -Wimplicit-fallthrough
  $<$<BOOL:${LOAMSTEAD_WERROR}>:-Werror>)
if(LOAMSTEAD_SANITIZE)
  string(REPLACE ";" "," sanitizers "${LOAMSTEAD_SANITIZE}")
  add_compile_options(-fsanitize=${sanitizers} -fno-omit-frame-pointer -fno-sanitize-recover=all)
  # GCC warns of variables that only the instrumented code seems to leave unset (std::regex among them).
  add_compile_options(-Wno-maybe-uninitialized)
  add_link_options(-fsanitize=${sanitizers})
endif()
if(LOAMSTEAD_COVERAGE)
  add_compile_options(--coverage)
  add_link_options(--coverage)
endif()
