#pragma once
// The words for where the threads of a bolt lie, of an anchor as of an angle.
#include "editing/fields/form.h"
#include "model/threads.h"

#include <array>

namespace toehold::editing {

inline const std::array<Word<model::Threads>, 2> threads_words{
    {{model::Threads::included, "included", phrase("In the shear plane")},
     {model::Threads::excluded, "excluded", phrase("Out of the shear plane and the bearing")}}};

}  // namespace toehold::editing
