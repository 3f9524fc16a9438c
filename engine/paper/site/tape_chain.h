#pragma once
// A chain of dimensions to build by: level figures large enough to read at arm's length, which never overlap each
// other. Figures too large for what they measure step out, on leaders, and stand there side by side.
#include "drawing/annotation/dimension.h"
#include "units/quantity.h"

#include <vector>

namespace toehold::paper::site {

struct TapeChain {
    drawing::Measure measure = drawing::Measure::across;
    bool beyond_high = false;  ///< the chain stands right of, or above, the drawing; else left of it, or below
    double beside_in = 0.0;    ///< edge of the drawing it stands beside
    std::vector<drawing::DimensionEnd> ends = {};  ///< in rising order
};

struct ChainRow {
    double offset_mm = 0.0;  ///< from the edge to where the row may begin, > 0
    double mm_per_in = 0.0;
    units::System system = units::System::us;
};

/// Returns how far from the edge the row reaches, mm. Fewer than two ends: nothing is added.
double add_tape_chain(drawing::Scene& scene, const TapeChain& chain, const ChainRow& row);

}  // namespace toehold::paper::site
