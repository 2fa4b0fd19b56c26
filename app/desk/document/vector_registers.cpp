#include "app/desk/document/vector_registers.hpp"

#if defined(__x86_64__) && (defined(__GNUC__) || defined(__clang__))
#include <immintrin.h>

namespace loam::desk {

namespace {

__attribute__((target("avx"))) void clear_upper_halves()
{
    _mm256_zeroupper();
}

} // namespace

void clear_vector_registers()
{
    if (__builtin_cpu_supports("avx") != 0) {
        clear_upper_halves();
    }
}

} // namespace loam::desk
#else
namespace loam::desk {

void clear_vector_registers() {}

} // namespace loam::desk
#endif
