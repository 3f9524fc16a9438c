#pragma once
// From inches of the thing drawn to units of a surface (pixels, points), whose y grows downward.
#include "drawing/scene/scene.h"

namespace toehold::drawing {

struct View {
    Point center_in;                  ///< of the thing drawn ...
    Point center;                     ///< ... stands here on the surface
    double units_per_in = 1.0;        ///< surface units for an inch of the thing drawn, > 0
    double units_per_mm = 96 / 25.4;  ///< surface units for a millimetre of paper, > 0
};

/// On a surface: left, top, width and height in its units.
struct Area {
    double left = 0.0, top = 0.0, width = 0.0, height = 0.0;
    friend bool operator==(const Area&, const Area&) = default;
};

[[nodiscard]] Point to_surface(const View& view, const Place& place);
[[nodiscard]] Point to_surface(const View& view, Point at_in);
[[nodiscard]] Point to_drawing(const View& view, Point on_surface);

/// The text with its words aside.
[[nodiscard]] Text aside_of(const Text& text);
/// The text as it stands in this view: where its words, so many mm long, have no room with a little air, aside.
[[nodiscard]] Text placed(const Text& text, double words_mm, const View& view);

/// The largest view that shows the scene with its margin inside the area. A scene without size is shown at 1:1.
[[nodiscard]] View fit(const Scene& scene, const Area& area, double units_per_mm);
/// The largest of the customary scales (drawing over thing: 2, 1, 1/2, 1/4 ...) that is not above this one; 0: none.
[[nodiscard]] double customary_scale(double at_most);
/// The view at the largest of the customary scales (1:1, 1:2, 1:4, 1:5, 1:8, 1:10 ... and 2:1) that fits.
[[nodiscard]] View fit_to_scale(const Scene& scene, const Area& area, double units_per_mm);
/// Larger by `factor` about a point of the surface, which stays where it is; between 1/200 and 50 of full size.
[[nodiscard]] View zoomed(const View& view, double factor, Point about);
[[nodiscard]] View moved(const View& view, double right, double down);

}  // namespace toehold::drawing
