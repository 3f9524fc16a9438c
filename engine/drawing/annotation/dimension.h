#pragma once
// Dimension lines with extension lines and oblique strokes, single or in chains.
#include "drawing/scene/scene.h"

#include <string>
#include <vector>

namespace toehold::drawing {

enum class Measure { across, upright };  ///< along x, along y

/// Where a row of dimensions stands: `offset_mm` of paper from `beside_in` on the other axis, negative: left or below.
struct DimensionRow {
    Measure measure = Measure::across;
    double beside_in = 0.0;
    double offset_mm = 0.0;
    Pen pen = Pen::dimension;
    model::PartId part;
    bool words_on_paper = false;  ///< for words longer than what they measure
};

/// One end of what is measured: its coordinate, and where on the other axis its extension line begins.
struct DimensionEnd {
    double at_in = 0.0;
    double feature_in = 0.0;
};

enum class WordsAt { line, below_line, before, after, raised };

void add_dimension(Scene& scene, const DimensionRow& row, const DimensionEnd& from, const DimensionEnd& to,
                   const std::string& words, WordsAt words_at = WordsAt::line);

/// Ends in rising order; `words[i]` between end i and i + 1. Words too long for their part of the chain step aside: the
/// first and the last outward, those between above and below the line by turns.
void add_chain(Scene& scene, const DimensionRow& row, const std::vector<DimensionEnd>& ends,
               const std::vector<std::string>& words);

/// In rising order, those closer than a ten-thousandth of an inch as one.
[[nodiscard]] std::vector<double> distinct(std::vector<double> values);

}  // namespace toehold::drawing
