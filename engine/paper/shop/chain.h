#pragma once
// Chains of dimensions whose words are known to fit: measured at the scale the view will have on paper.
#include "drawing/annotation/dimension.h"
#include "format/phrase.h"

namespace toehold::paper::shop {

/// How lengths become words, for whom, and how large they stand on paper.
struct Drafting {
    format::Locale locale = {};
    double mm_per_in = 12.7;  ///< mm of lettering for an inch of the plate
};

/// Ends in rising order. Words wider than their part of the chain step aside, to a second storey, or to the line's
/// other side where their neighbor is up there. False, and nothing is drawn, where words would still meet.
[[nodiscard]] bool add_fitting_chain(drawing::Scene& scene, const drawing::DimensionRow& row,
                                     const std::vector<drawing::DimensionEnd>& ends, const Drafting& drafting);

/// One dimension; words beyond its end where they are wider than it.
void add_measure(drawing::Scene& scene, const drawing::DimensionRow& row, const drawing::DimensionEnd& from,
                 const drawing::DimensionEnd& to, const std::string& words, const Drafting& drafting);

}  // namespace toehold::paper::shop
