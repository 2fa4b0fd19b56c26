// What foreign code leaves behind in the processor.
#pragma once

namespace loam::desk {

// Clears the upper halves of the vector registers, where the processor has such. Code that leaves them in use makes
// every scalar instruction after it wait for them: an assessment on a thread of Qt's took three times as long.
void clear_vector_registers();

} // namespace loam::desk
