#pragma once
// A review as JSON, schema `toehold.review/1`: names are only ever added. An infinite ratio is null.
#include <string>

namespace toehold::review {
struct Review;
}

namespace toehold::exporting {

[[nodiscard]] std::string review_json(const review::Review& review);

}  // namespace toehold::exporting
