#pragma once
// Wind on what fills the guard, as load cases: alone, both ways across the rail, and beside the guard's load.
#include "demand/demand.h"

#include <optional>
#include <string_view>
#include <vector>

namespace toehold::model {
struct BaseDetail;
struct Basis;
struct WindLoad;
}  // namespace toehold::model

namespace toehold::demand {

/// Square feet of solid infill whose wind this post takes; absent: neither an area nor a tributary length is specified.
[[nodiscard]] std::optional<double> wind_area_ft2(const model::BaseDetail& detail);

/// Factors of the combinations with wind, for the basis's method (ASCE 7-16 2.4.1, 2.3.1).
struct WindFactors {
    double alone = 0.0, with_live = 0.0;  ///< on the pressure as the file gives it
    double live = 0.0;                    ///< on the guard's unfactored load beside it
    double over_service = 1.0;            ///< factored over service, of the combination: what a movement is divided by
};
[[nodiscard]] WindFactors wind_factors(const model::Basis& basis, const model::WindLoad& wind);

/// The clauses of wind and of its combinations.
[[nodiscard]] format::Phrase wind_source(const model::BaseDetail& detail);
/// Of the infill whose wind counts, above the walking surface; with wind alone.
[[nodiscard]] double infill_height_in(const model::BaseDetail& detail);

/// The load's id whichever axis its wind blows along: `wind` of `wind` and of `wind-along`. Lives as long as the case.
[[nodiscard]] std::string_view whole_load(const LoadCase& load);

/// Of the pressure on the infill, above the walking surface; with wind alone.
[[nodiscard]] double wind_center_in(const model::BaseDetail& detail);

/// None without wind in the file, or without its area. `live`: the guard's largest load at its top, for the combination
/// of the two; absent: none.
[[nodiscard]] std::vector<LoadCase> wind_cases(const model::BaseDetail& detail, const std::optional<LoadCase>& live);

}  // namespace toehold::demand
