#pragma once
// Which axes bear on a check or finding: what a reader of its failure would change.
#include <string_view>
#include <vector>

namespace toehold::search {

/// Ids of axes, the most direct first; empty where none does (the post, its weld, the guard's own loads).
[[nodiscard]] std::vector<std::string_view> axes_on(std::string_view limit);

}  // namespace toehold::search
