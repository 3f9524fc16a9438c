#include "resistance/ultimate/wood.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace toehold::resistance::ultimate {

double share_left_after(double seconds) {
    if (!(seconds > 0.0)) throw std::invalid_argument("a load is held for more than no time");
    return std::min((18.3 + 108.4 * std::pow(seconds, -0.0464)) / 100.0, 1.0);
}

double strength_at_moisture(double at_12_percent, double green, double moisture_percent) {
    constexpr double dry = 12.0, intersection = 25.0;
    if (!(at_12_percent > 0.0 && green > 0.0 && moisture_percent >= dry))
        throw std::invalid_argument("a strength by moisture needs strengths above 0 and 12 percent or more");
    const double moisture = std::min(moisture_percent, intersection);
    return at_12_percent * std::pow(at_12_percent / green, (dry - moisture) / (intersection - dry));
}

}  // namespace toehold::resistance::ultimate
