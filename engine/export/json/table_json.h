#pragma once
// A table as JSON: an array of objects with one text for each key.
#include <string>
#include <string_view>
#include <vector>

namespace toehold::exporting {

/// Each row has as many cells as there are keys.
[[nodiscard]] std::string table_json(const std::vector<std::string_view>& keys,
                                     const std::vector<std::vector<std::string>>& rows);

}  // namespace toehold::exporting
