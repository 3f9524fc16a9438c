#pragma once
// A bar of demand read against the length of its capacity, on one scale for all the bars of a drawing.
#include "drawing/annotation/overlay.h"
#include "drawing/scene/scene.h"

#include <string>

namespace toehold::drawing {

/// Millimetres of paper for a pound.
struct BarScale {
    double mm_per_lb = 0.0;
    double longest_mm = 16.0;  ///< a capacity beyond this is drawn open at its end
};
/// Such that the largest pull, and a capacity up to four times as large, are the longest bar.
[[nodiscard]] BarScale bar_scale(const Overlay& overlay);

inline constexpr double bar_height_mm = 3.0;
/// The bar begins at the place, its lower edge there, and runs to the right or to the left: frame of the capacity, the
/// pull under the push shown in it, and a stroke at the largest pull over all pushes. Pale where `stale`.
void add_force_bar(Scene& scene, const Place& start, bool to_the_right, const AnchorMark& mark, const BarScale& scale,
                   bool stale);

}  // namespace toehold::drawing
