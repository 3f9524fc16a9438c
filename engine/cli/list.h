#pragma once
// The lists that `toehold list` shows.
#include <string>
#include <string_view>

namespace toehold::cli {

[[nodiscard]] bool is_list_name(std::string_view name);
/// `checks, findings, ...`
[[nodiscard]] std::string list_names_text();

}  // namespace toehold::cli
