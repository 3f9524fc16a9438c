#pragma once
// A place, a direction, a force or a couple in space, and the three axes of a frame of reference.

namespace toehold::mechanics {

struct SpaceVector {
    double x = 0.0, y = 0.0, z = 0.0;

    friend bool operator==(const SpaceVector&, const SpaceVector&) = default;
    friend SpaceVector operator+(const SpaceVector& a, const SpaceVector& b) {
        return {a.x + b.x, a.y + b.y, a.z + b.z};
    }
    friend SpaceVector operator-(const SpaceVector& a, const SpaceVector& b) {
        return {a.x - b.x, a.y - b.y, a.z - b.z};
    }
    friend SpaceVector operator*(double factor, const SpaceVector& a) {
        return {factor * a.x, factor * a.y, factor * a.z};
    }
};

/// Right-handed: z is x cross y. Both of length 1 and square to each other, within 1e-6.
struct SpaceAxes {
    SpaceVector x = {1.0, 0.0, 0.0};
    SpaceVector y = {0.0, 1.0, 0.0};
};

}  // namespace toehold::mechanics
