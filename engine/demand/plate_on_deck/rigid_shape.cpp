#include "demand/plate_on_deck/rigid_shape.h"

#include "demand/plate_on_deck/mesh_input.h"
#include "mechanics/plane/geometry.h"

#include <algorithm>
#include <cmath>

namespace toehold::demand {
namespace {

constexpr int fewest_cells = 16;
constexpr double no_width_in = 1e-9;
// A circle's hundreds of chords need no lines of their own.
constexpr std::size_t most_corners = 24;

/// Where cells end along one axis: equal steps, every corner of the plate and every side of a support, so that a cell
/// holds no corner and lies on one support or none.
class GridLines {
  public:
    GridLines(double low, double high) : low_(low), high_(high) {
        for (int i = 0; i <= fewest_cells; ++i) lines_.push_back(low + (high - low) * i / fewest_cells);
    }
    void add(double line) {
        if (line > low_ && line < high_) lines_.push_back(line);
    }
    [[nodiscard]] std::vector<double> sorted() const {
        std::vector<double> lines = lines_;
        std::sort(lines.begin(), lines.end());
        lines.erase(std::unique(lines.begin(), lines.end(), [](double a, double b) { return b - a < no_width_in; }),
                    lines.end());
        return lines;
    }

  private:
    double low_, high_;
    std::vector<double> lines_;
};

struct Grid {
    std::vector<double> x, y;
};

Grid grid_of(const mechanics::Polygon& plate, const std::vector<mechanics::BedRectangle>& bed) {
    const auto [left, right] =
        std::minmax_element(plate.begin(), plate.end(), [](const auto& a, const auto& b) { return a.x < b.x; });
    const auto [inner, outer] =
        std::minmax_element(plate.begin(), plate.end(), [](const auto& a, const auto& b) { return a.y < b.y; });
    GridLines x(left->x, right->x), y(inner->y, outer->y);
    if (plate.size() <= most_corners) {
        for (const mechanics::Point corner : plate) {
            x.add(corner.x);
            y.add(corner.y);
        }
    }
    for (const mechanics::BedRectangle& support : bed) {
        x.add(support.x_min);
        x.add(support.x_max);
        y.add(support.y_min);
        y.add(support.y_max);
    }
    return {x.sorted(), y.sorted()};
}

mechanics::Polygon down_part(const mechanics::Polygon& cell, const mechanics::LinearField& lift) {
    return mechanics::clip_half_plane(cell, lift.at_origin, lift.slope_x, lift.slope_y);
}

mechanics::Polygon up_part(const mechanics::Polygon& cell, const mechanics::LinearField& lift) {
    return mechanics::clip_half_plane(cell, -lift.at_origin, -lift.slope_x, -lift.slope_y);
}

void add_cell(DeflectedShape& field, const mechanics::Polygon& cell, const mechanics::LinearField& lift,
              double stiffness_psi_per_in) {
    const int first = static_cast<int>(field.nodes.size());
    for (const mechanics::Point corner : cell) {
        const double up = lift.at(corner);
        field.nodes.push_back({{corner.x, corner.y}, up, std::max(0.0, -stiffness_psi_per_in * up)});
    }
    const int corners = static_cast<int>(cell.size());
    for (int i = 2; i < corners; ++i) field.triangles.push_back({first, first + i - 1, first + i});
}

}  // namespace

DeflectedShape rigid_shape(const catalog::Resolved& resolved, const Bed& bed,
                           const mechanics::RigidPlateSolution& solution) {
    const mechanics::Polygon plate = outline(on_deck(resolved.detail).plate);
    const std::vector<mechanics::BedRectangle> supports = bed_rectangles(resolved, bed);
    const mechanics::LinearField lift{solution.lift_in, -solution.tilt_y_rad, solution.tilt_x_rad};
    const Grid grid = grid_of(plate, supports);
    DeflectedShape field;
    for (std::size_t column = 1; column < grid.x.size(); ++column) {
        const double left = grid.x[column - 1], right = grid.x[column];
        const mechanics::Polygon strip =
            mechanics::clip_half_plane(mechanics::clip_half_plane(plate, left, -1.0, 0.0), -right, 1.0, 0.0);
        for (std::size_t row = 1; row < grid.y.size(); ++row) {
            const double low = grid.y[row - 1], high = grid.y[row];
            const mechanics::Polygon cell =
                mechanics::clip_half_plane(mechanics::clip_half_plane(strip, low, 0.0, -1.0), -high, 0.0, 1.0);
            const double stiffness = bed_stiffness_at(supports, {0.5 * (left + right), 0.5 * (low + high)});
            add_cell(field, down_part(cell, lift), lift, stiffness);
            add_cell(field, up_part(cell, lift), lift, stiffness);
        }
    }
    return field;
}

}  // namespace toehold::demand
