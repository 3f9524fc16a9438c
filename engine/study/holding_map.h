#pragma once
// What holds over two inputs, customarily the tributary length (post spacing) across and the guard's height up, for one
// plate and its anchors. The border between what holds and what does not is looked for along every line of the grid:
// between two neighbors of which one holds it is bisected. That finds a border for certain; that there is no other
// between the grid's points follows only where the governing ratio rises or falls steadily, which is tested and said.
#include "study/judged.h"

namespace toehold::study {

/// How closely a border is found, in the fields' units where those are in.
inline constexpr double border_within_in = 0.25;

struct MapNode {
    double across = 0.0, up = 0.0;
    Judged judged;
};

enum class MapAxis { across, up };

/// Between two neighbors on a line of the grid.
struct MapBorder {
    MapAxis axis = MapAxis::up;       ///< along which the line runs
    std::size_t column = 0, row = 0;  ///< of the neighbor with the lesser value
    double holds = 0.0, fails = 0.0;  ///< values along the axis, no further apart than `within`
    Limit limit;                      ///< what stops the detail on the failing side
    std::string detail;               ///< the last that holds
    bool steady = true;               ///< false: the ratio does not rise or fall steadily here; not bisected
    [[nodiscard]] double at() const { return 0.5 * (holds + fails); }
};

/// Where the governing ratio does not rise or fall steadily along a line, so that other borders may lie between.
struct NotSteady {
    MapAxis axis = MapAxis::up;
    double line = 0.0;            ///< value of the other field
    double from = 0.0, to = 0.0;  ///< the neighbors about the turn
};

struct HoldingMap {
    Field across, up;
    std::vector<double> across_values, up_values;
    std::vector<MapNode> nodes;  ///< row by row from the lowest: column + row * columns
    std::vector<MapBorder> borders;
    std::vector<NotSteady> not_steady;
    double within = border_within_in;  ///< how closely borders are found
    bool stopped = false;              ///< then nodes not reached have a refusal, and borders are missing
    [[nodiscard]] const MapNode& at(std::size_t column, std::size_t row) const;
};

/// Tributary length of rail across, guard height up, in steps coarse enough for a first look.
struct MapAsked {
    Asked across, up;
};
[[nodiscard]] MapAsked customary_map(const std::vector<Field>& fields);

/// Each axis with at least two values in rising order; two different fields.
[[nodiscard]] HoldingMap holding_map(const Subject& subject, const Asked& across, const Asked& up, const Run& run = {});

}  // namespace toehold::study
