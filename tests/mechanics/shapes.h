#pragma once
// Outlines and whole problems that several tests share.
#include "mechanics/rigid_plate/rigid_plate.h"

#include <cmath>
#include <numbers>
#include <vector>

namespace toehold::test {

using mechanics::AnchorSpring;
using mechanics::BedPatch;
using mechanics::PlateLoad;
using mechanics::Point;
using mechanics::Polygon;

inline Polygon rectangle(double x_min, double x_max, double y_min, double y_max) {
    return {{x_min, y_min}, {x_max, y_min}, {x_max, y_max}, {x_min, y_max}};
}

inline Polygon regular_polygon(int sides, double radius) {
    Polygon result;
    for (int corner = 0; corner < sides; ++corner) {
        const double angle = 2.0 * std::numbers::pi * corner / sides;
        result.push_back({radius * std::cos(angle), radius * std::sin(angle)});
    }
    return result;
}

/// The L of 6 x 6 less its upper right 3.5 x 3.
inline Polygon l_shape() { return {{0.0, 0.0}, {6.0, 0.0}, {6.0, 3.0}, {2.5, 3.0}, {2.5, 6.0}, {0.0, 6.0}}; }

/// A push at height h in a direction from +x: the couple r x F with r = (0, 0, h).
inline PlateLoad push(double moment_lb_in, double direction_rad, double up_lb = 0.0) {
    return {up_lb, -moment_lb_in * std::sin(direction_rad), moment_lb_in * std::cos(direction_rad)};
}

/// 5.5 x 7 plate, four anchors at (+-2, +-2.5) on one bed.
struct Plate {
    std::vector<AnchorSpring> anchors;
    std::vector<BedPatch> bed;
};
inline Plate example_plate() {
    return {{{{-2.0, -2.5}, 30000.0}, {{2.0, -2.5}, 30000.0}, {{2.0, 2.5}, 30000.0}, {{-2.0, 2.5}, 30000.0}},
            {{rectangle(-2.75, 2.75, -3.5, 3.5), 25000.0}}};
}

}  // namespace toehold::test
