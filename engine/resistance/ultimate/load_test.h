#pragma once
// What a load test of a guard shows, by IBC 2018 1709.3.1 (read whole in public copies, alike in 2015): a load of twice
// the design load held for a day, three quarters of the movement gone a day later, then more load until it breaks or
// has carried 2.5 times what it must. Loads lb, movements in.
#include <optional>

namespace toehold::resistance::ultimate {

inline constexpr double held_over_design = 2.0, carried_over_design = 2.5, least_recovered = 0.75;
inline constexpr double held_seconds = 24.0 * 3600.0;

/// Part of the largest movement that was gone after the load was taken off: 1 - left/largest. Throws
/// std::invalid_argument unless largest > 0 and 0 <= left <= largest.
[[nodiscard]] double recovered_share(double largest_in, double left_in);
/// At least three quarters; met exactly counts.
[[nodiscard]] bool recovers(double largest_in, double left_in);

/// How far to load after the recovery: 2.5 times the design load, or 2.5 times the load at the limit of movement (of
/// 1709.3.2, where it has one) if that is less. Throws std::invalid_argument unless the loads are > 0.
[[nodiscard]] double reload_lb(double design_lb, std::optional<double> at_movement_limit_lb = std::nullopt);

/// What the assembly may be used for: the least of the load at the limit of movement, the breaking load over 2.5 and
/// the largest load applied over 2.5.
struct TestedLoads {
    double largest_applied_lb = 0.0;  ///< > 0
    std::optional<double> breaking_lb = std::nullopt, at_movement_limit_lb = std::nullopt;
};
/// Throws std::invalid_argument unless every load is > 0.
[[nodiscard]] double allowable_lb(const TestedLoads& loads);

}  // namespace toehold::resistance::ultimate
