#pragma once
// The rules of well-formed XML that the XML library lets pass, and ours on top: one element at the top, no text, no
// DOCTYPE, no CDATA, no processing instruction, only the five named references, no line break inside a value.
#include "model/problem.h"

#include <string_view>

namespace toehold::xml {

inline constexpr std::size_t max_element_depth = 32;
/// The library looks for a doubled attribute by comparing each with all before it.
inline constexpr std::size_t max_attributes = 64;

/// Every breach with its line, up to the first that makes the rest unreadable. `text` is UTF-8 without a byte-order
/// mark.
[[nodiscard]] model::Problems check_markup(std::string_view text);

}  // namespace toehold::xml
