#include "drawing/drawings.h"
#include "drawing/marks/shapes.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing {

double exaggeration(const demand::DeflectedShape& field) {
    constexpr double share_of_width = 0.1;
    double largest_in = 0.0;
    std::vector<Point> places;
    for (const demand::DeflectedShape::Node& node : field.nodes) {
        largest_in = std::max(largest_in, std::abs(node.lift_in));
        places.push_back({node.at.x_in, node.at.y_in});
    }
    const Box box = around(places);
    const double wanted = share_of_width * std::max(width(box), height(box)) / largest_in;
    if (!(wanted > 0.0) || !std::isfinite(wanted)) return 1.0;
    // A round factor, so that a reader can divide by it: 1, 2 or 5 and noughts, the nearest below.
    const double power = std::pow(10.0, std::floor(std::log10(wanted)));
    const double digit = wanted / power;
    return power * (digit >= 5.0 ? 5.0 : digit >= 2.0 ? 2.0 : 1.0);
}

}  // namespace toehold::drawing
