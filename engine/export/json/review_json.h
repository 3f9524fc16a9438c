#pragma once
// A review as JSON, schema `toehold.review/1`: names are only ever added. An infinite ratio is null.
#include <string>
#include <string_view>

namespace toehold::review {
struct Review;
}

namespace toehold::exporting {

/// `file`: as the user named it; empty: the document names none.
[[nodiscard]] std::string review_json(const review::Review& review, std::string_view file = {});

}  // namespace toehold::exporting
