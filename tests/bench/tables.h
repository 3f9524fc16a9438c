#pragma once
// The tables beside that of one plate: whole reviews against their own envelopes, and how their cost grows.
#include <cstddef>

namespace toehold::bench {

/// Reviews, reviews with remedies and the summary of the demo details, as ratios.
void print_review_table(std::size_t repetitions);
/// Demand and evaluation over the number of anchors, members, directions and corners of the outline.
void print_growth_table(std::size_t repetitions);

}  // namespace toehold::bench
