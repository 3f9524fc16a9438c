#pragma once
// Pressure across the width of the post and the edge of contact along it.
//
// At one height the closing of the joint (how far bearing is pressed) is linear across the width, from `left` at x_min
// to `right` at x_max; along a piece of the post it is cubic.
#include <array>
#include <vector>

namespace toehold::mechanics::side_post {

/// The integral of max(0, closing)^2/2 over a width of 1, with its derivatives to `left` and `right`, in closed form.
struct StripEnergy {
    double value = 0.0;
    double by_left = 0.0, by_right = 0.0;
    double by_left_left = 0.0, by_left_right = 0.0, by_right_right = 0.0;
};
/// `two_way`: as though the bearing could pull, which makes it quadratic.
[[nodiscard]] StripEnergy strip_energy(double left, double right, bool two_way);

/// The part of a width of 1 that is pressed, the integral of the closing over it and the closing's center.
struct StripPressure {
    double pressed = 0.0;  ///< 0 to 1
    double force = 0.0;    ///< >= 0
    double center = 0.5;   ///< from 0 at the left to 1 at the right
};
[[nodiscard]] StripPressure strip_pressure(double left, double right);

/// A cubic over 0 to 1 by its values at 0, 1/3, 2/3 and 1.
class Cubic {
  public:
    explicit Cubic(const std::array<double, 4>& at_thirds);
    [[nodiscard]] double at(double part) const;
    /// Where it changes sign strictly between `from` and `to`, upward; at most three.
    [[nodiscard]] std::vector<double> sign_changes(double from, double to) const;

  private:
    std::array<double, 4> coefficients_;  ///< of 1, s, s^2, s^3
};

/// A place of Gauss's rule.
struct RulePoint {
    double at = 0.0, weight = 0.0;
};
/// Eight points a stretch between `from`, every sign change of either edge, and `to`.
[[nodiscard]] std::vector<RulePoint> rule_points(const Cubic& left, const Cubic& right, double from, double to);

}  // namespace toehold::mechanics::side_post
