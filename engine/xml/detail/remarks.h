#pragma once
// Remarks put into a document that somebody wrote by hand, whose layout and comments are theirs.
#include "model/remark.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace toehold::xml {

/// The document with these remarks in place of its own and every other byte as it was. `document` must have been read
/// as a base detail without problems; absent where the place for them is not found.
[[nodiscard]] std::optional<std::string> with_remarks(std::string_view document,
                                                      const std::vector<model::Remark>& remarks);

}  // namespace toehold::xml
