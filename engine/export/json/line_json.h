#pragma once
// The lines of guard of a project's review as JSON: `lines` of toehold.project/1.
#include <nlohmann/json.hpp>

#include <vector>

namespace toehold::review {
struct LineReview;
}
namespace toehold::model {
struct RoleCount;
}

namespace toehold::exporting {

/// Objects of `role` and `quantity`.
[[nodiscard]] nlohmann::ordered_json roles_json(const std::vector<model::RoleCount>& counts);

/// An array, in the project's order.
[[nodiscard]] nlohmann::ordered_json lines_json(const std::vector<review::LineReview>& lines);

}  // namespace toehold::exporting
