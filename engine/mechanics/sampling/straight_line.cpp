#include "mechanics/sampling/straight_line.h"

#include <cmath>
#include <stdexcept>

namespace toehold::mechanics {
namespace {

void require_sound(std::span<const Reading> readings) {
    if (readings.empty()) throw std::invalid_argument("a stiffness needs a reading");
    for (const Reading& one : readings) {
        if (!(one.movement >= 0.0 && one.push >= 0.0) || !std::isfinite(one.movement) || !std::isfinite(one.push))
            throw std::invalid_argument("a reading's push and movement are 0 or more");
    }
}

/// Standard error of the slope, from what the line leaves and the spread of the movements about its pivot.
double slope_error(std::span<const Reading> readings, const StraightLine& line, double spread, std::size_t parameters) {
    if (readings.size() <= parameters) return 0.0;
    double left = 0.0;
    for (const Reading& one : readings) {
        const double miss = one.push - line.stiffness * (one.movement - line.play);
        left += miss * miss;
    }
    return std::sqrt(left / static_cast<double>(readings.size() - parameters) / spread);
}

}  // namespace

StraightLine line_through_origin(std::span<const Reading> readings) {
    require_sound(readings);
    double product = 0.0, square = 0.0;
    for (const Reading& one : readings) {
        product += one.push * one.movement;
        square += one.movement * one.movement;
    }
    if (!(square > 0.0)) throw std::invalid_argument("a stiffness needs a movement above 0");
    StraightLine line{product / square};
    line.stiffness_error = slope_error(readings, line, square, 1);
    return line;
}

StraightLine line_with_play(std::span<const Reading> readings) {
    require_sound(readings);
    const double count = static_cast<double>(readings.size());
    double movement = 0.0, push = 0.0, product = 0.0, square = 0.0;
    for (const Reading& one : readings) {
        movement += one.movement / count;
        push += one.push / count;
    }
    for (const Reading& one : readings) {
        product += (one.push - push) * (one.movement - movement);
        square += (one.movement - movement) * (one.movement - movement);
    }
    if (!(square > 0.0) || !(product > 0.0))
        throw std::invalid_argument("a stiffness with play needs a push that grows with the movement");
    StraightLine line{product / square};
    line.play = movement - push / line.stiffness;
    line.stiffness_error = slope_error(readings, line, square, 2);
    return line;
}

}  // namespace toehold::mechanics
