#pragma once
// Wind on what fills the guard, as load cases: alone, both ways across the rail, and beside the guard's load.
#include "demand/demand.h"

#include <optional>
#include <vector>

namespace toehold::model {
struct BaseDetail;
}

namespace toehold::demand {

/// Square feet of solid infill whose wind this post takes; absent: neither an area nor a tributary length is specified.
[[nodiscard]] std::optional<double> wind_area_ft2(const model::BaseDetail& detail);

/// None without wind in the file, or without its area. `live`: the guard's largest load at its top, for the combination
/// of the two; absent: none.
[[nodiscard]] std::vector<LoadCase> wind_cases(const model::BaseDetail& detail, const std::optional<LoadCase>& live);

}  // namespace toehold::demand
