#pragma once
// Words that several papers have in common.
#include "paper/papers.h"

#include <string>
#include <vector>

namespace toehold::paper {

/// `A, B and C`.
[[nodiscard]] std::string listed(const std::vector<std::string>& names);
/// Project of the issue, or the detail's own; may be empty.
[[nodiscard]] std::string project_of(const Issue& issue, const model::BaseDetail& detail);

}  // namespace toehold::paper
