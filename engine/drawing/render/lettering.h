#pragma once
// How wide words are in the drawings' own lettering, and where a line of them breaks. Measured with the fonts that
// paint them, at the size they have on paper, so that what is measured is what is painted at every scale.
#include "drawing/scene/scene.h"

#include <string>
#include <vector>

namespace toehold::drawing {

struct Lettering {
    TextSize size = TextSize::normal;
    bool bold = false;
    bool math = false;  ///< as in `Text`
};

/// Of one line, mm of paper at the lettering's own size.
[[nodiscard]] double text_width_mm(const std::string& words, const Lettering& lettering);
/// Lines no wider than `width_mm`, broken at blanks, and within a word only where it alone is wider. Line feeds in the
/// words break too. At least one line, empty for empty words.
[[nodiscard]] std::vector<std::string> broken_into_lines(const std::string& words, double width_mm,
                                                         const Lettering& lettering);
/// Height of capitals, by which texts stand at their places, mm.
[[nodiscard]] double capitals_mm(TextSize size);
/// From one line's foot to the next, mm.
[[nodiscard]] double line_spacing_mm(TextSize size);

}  // namespace toehold::drawing
