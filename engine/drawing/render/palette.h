#pragma once
// Colours and line widths for the roles of a scene: ink on drafting paper, its night negative, and plain print.
// Legible in grey: no two roles that may meet differ in hue alone.
#include "drawing/scene/scene.h"

#include <vector>

namespace toehold::drawing {

/// sRGB, each from 0 to 1.
struct Colour {
    double red = 0.0, green = 0.0, blue = 0.0, opacity = 1.0;
    friend bool operator==(const Colour&, const Colour&) = default;
};

struct Stroke {
    Colour colour;
    double width_mm = 0.25;         ///< > 0
    std::vector<double> dashes_mm;  ///< empty: unbroken
    bool doubled = false;           ///< two lines beside each other
};

enum class Ground { paper, night, print };

[[nodiscard]] Colour ground_colour(Ground ground);
[[nodiscard]] Stroke stroke(Pen pen, Ground ground);
/// Of a plain area; hatching is the painter's.
[[nodiscard]] Colour fill_colour(Fill fill, Ground ground);
/// Of a shading's level from 0 to 1.
[[nodiscard]] Colour level_colour(double level, Ground ground);
[[nodiscard]] double text_height_mm(TextSize size);  ///< of the capital letters' body, as a font size in mm

}  // namespace toehold::drawing
