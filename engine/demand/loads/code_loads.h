#pragma once
// What the code in force asks of a guard's post, whatever the file says: a concentrated load at the top and, but in a
// one- or two-family dwelling, a load along it. Not at once. Unfactored.
#include "model/base_detail.h"

#include <optional>
#include <vector>

namespace toehold::demand {

/// IBC 2018 1607.8.1.1, IBC 2021 1607.9.1.1, IRC Table R301.5, ASCE 7-16 4.5.1.
inline constexpr double code_concentrated_lb = 200.0;

/// lb/ft; absent: the code asks for none. 50, or 20 in places of limited access (IBC 2018 1607.8.1, IBC 2021 1607.9.1).
[[nodiscard]] std::optional<double> code_line_lb_per_ft(const model::Guard& guard);

/// Over the tributary length; absent: none asked for, or that length is not specified.
[[nodiscard]] std::optional<double> code_line_lb(const model::BaseDetail& detail);

/// Where the code's loads push from: the file's directions where the code lets a guard do with those, else all round.
[[nodiscard]] model::Directions code_directions(const model::BaseDetail& detail);

/// Directions of push to look at, rad: every 5 degrees all round, both ways across the rail, or straight outward.
[[nodiscard]] std::vector<double> directions_rad(model::Directions directions);

}  // namespace toehold::demand
