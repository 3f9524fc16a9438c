#pragma once
// Where a plate's holes are.
#include <optional>

namespace toehold::search {

/// Holes on a grid within the plate's edges, evenly spaced.
struct Pattern {
    int across = 2;                                     ///< holes in a row along x, >= 1
    int deep = 2;                                       ///< rows along y, >= 1; across x deep >= 2
    double edge_in = 0.0;                               ///< from the outermost holes' centers to the plate's edges, > 0
    std::optional<double> spacing_x_in = std::nullopt;  ///< between neighbors in a row, in place of `edge_in` along x
    std::optional<double> spacing_y_in = std::nullopt;  ///< between rows, in place of `edge_in` along y
    friend bool operator==(const Pattern&, const Pattern&) = default;
};

}  // namespace toehold::search
