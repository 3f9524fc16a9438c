#include "mechanics/side_post/pressed_strip.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace toehold::mechanics::side_post {
namespace {

/// Of a strip pressed at `high` > 0 and open at `low` <= 0: high^3 / (6 (high - low)).
struct PartlyPressed {
    double value, by_high, by_low, by_high_high, by_high_low, by_low_low;
};

PartlyPressed partly_pressed(double high, double low) {
    const double pressed = high / (high - low);  // part of the width
    const double p2 = pressed * pressed, p3 = p2 * pressed;
    return {high * high * pressed / 6.0,
            (3.0 * high * pressed - high * p2) / 6.0,
            high * p2 / 6.0,
            (6.0 * pressed - 6.0 * p2 + 2.0 * p3) / 6.0,
            (3.0 * p2 - 2.0 * p3) / 6.0,
            2.0 * p3 / 6.0};
}

/// Gauss's rule of eight points on -1 to 1: M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 1964,
/// table 25.4 (from memory; a test integrates powers up to the fifteenth).
constexpr std::array<RulePoint, 4> half_rule{{{0.1834346424956498, 0.3626837833783620},
                                              {0.5255324099163290, 0.3137066458778873},
                                              {0.7966664774136267, 0.2223810344533745},
                                              {0.9602898564975363, 0.1012285362903763}}};

}  // namespace

StripEnergy strip_energy(double left, double right, bool two_way) {
    if (two_way || (left >= 0.0 && right >= 0.0)) {
        return {(left * left + left * right + right * right) / 6.0,
                (2.0 * left + right) / 6.0,
                (left + 2.0 * right) / 6.0,
                1.0 / 3.0,
                1.0 / 6.0,
                1.0 / 3.0};
    }
    if (left > 0.0) {
        const PartlyPressed of = partly_pressed(left, right);
        return {of.value, of.by_high, of.by_low, of.by_high_high, of.by_high_low, of.by_low_low};
    }
    if (right > 0.0) {
        const PartlyPressed of = partly_pressed(right, left);
        return {of.value, of.by_low, of.by_high, of.by_low_low, of.by_high_low, of.by_high_high};
    }
    return {};
}

StripPressure strip_pressure(double left, double right) {
    if (left <= 0.0 && right <= 0.0) return {};
    if (left >= 0.0 && right >= 0.0) return {1.0, 0.5 * (left + right), (left + 2.0 * right) / (3.0 * (left + right))};
    const double high = std::max(left, right), pressed = high / std::abs(left - right);
    return {pressed, 0.5 * high * pressed, left > right ? pressed / 3.0 : 1.0 - pressed / 3.0};
}

Cubic::Cubic(const std::array<double, 4>& v)
    : coefficients_{v[0], -5.5 * v[0] + 9.0 * v[1] - 4.5 * v[2] + v[3],
                    9.0 * v[0] - 22.5 * v[1] + 18.0 * v[2] - 4.5 * v[3],
                    -4.5 * v[0] + 13.5 * v[1] - 13.5 * v[2] + 4.5 * v[3]} {}

double Cubic::at(double part) const {
    const auto& [c0, c1, c2, c3] = coefficients_;
    return c0 + part * (c1 + part * (c2 + part * c3));
}

std::vector<double> Cubic::sign_changes(double from, double to) const {
    // Between its turning points a cubic only rises or only falls, and so changes sign at most once.
    std::vector<double> bounds{from};
    const double a = 3.0 * coefficients_[3], half_b = coefficients_[2], c = coefficients_[1];
    const double under_root = half_b * half_b - a * c;
    if (under_root > 0.0) {
        const double q = -(half_b + std::copysign(std::sqrt(under_root), half_b));
        for (const double turn : {a != 0.0 ? q / a : from, q != 0.0 ? c / q : from})
            if (turn > from && turn < to) bounds.push_back(turn);
    }
    bounds.push_back(to);
    std::sort(bounds.begin(), bounds.end());
    std::vector<double> changes;
    for (std::size_t i = 1; i < bounds.size(); ++i) {
        double low = bounds[i - 1], high = bounds[i];
        const bool rises = at(high) > 0.0;
        if ((at(low) > 0.0) == rises) continue;
        constexpr int halvings = 52;
        for (int halving = 0; halving < halvings && low < high; ++halving) {
            const double middle = 0.5 * (low + high);
            ((at(middle) > 0.0) == rises ? high : low) = middle;
        }
        changes.push_back(0.5 * (low + high));
    }
    return changes;
}

std::vector<RulePoint> rule_points(const Cubic& left, const Cubic& right, double from, double to) {
    std::vector<double> bounds{from, to};
    for (const Cubic* edge : {&left, &right})
        for (const double change : edge->sign_changes(from, to)) bounds.push_back(change);
    std::sort(bounds.begin(), bounds.end());
    std::vector<RulePoint> points;
    for (std::size_t i = 1; i < bounds.size(); ++i) {
        const double half = 0.5 * (bounds[i] - bounds[i - 1]), middle = 0.5 * (bounds[i] + bounds[i - 1]);
        if (half <= 0.0) continue;
        for (const RulePoint& point : half_rule) {
            points.push_back({middle - half * point.at, half * point.weight});
            points.push_back({middle + half * point.at, half * point.weight});
        }
    }
    return points;
}

}  // namespace toehold::mechanics::side_post
