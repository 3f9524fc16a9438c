#pragma once
// Details of every shape with awkward numbers, all of them buildable: the same seed gives the same detail.
#include "model/base_detail.h"

namespace toehold::test {

[[nodiscard]] model::BaseDetail random_detail(unsigned seed);

}  // namespace toehold::test
