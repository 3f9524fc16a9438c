#pragma once
// Reviews of the details in data/demo, by their file's name without `.xml`.
#include "review/review.h"
#include "support/shipped.h"

#include <string>

namespace toehold::test {

inline review::Review shipped_review(const std::string& name) { return review::review(shipped_detail(name), ""); }

}  // namespace toehold::test
