#pragma once
// Words. A text's box reaches from the foot of its last line's capitals to the head of its first line's: what hangs
// below the line does not move it, so that figures stand exactly on and under their lines.
#include "drawing/ink/canvas.h"
#include "drawing/ink/font.h"

namespace toehold::drawing::ink {

/// Height of capitals over the font's size: 1493/2048 in DejaVu Sans (its OS/2 table).
inline constexpr double capital_height = 0.729;

/// One for a whole drawing, since setting up fonts costs more than setting words.
class TextPainter {
  public:
    explicit TextPainter(const Canvas& canvas);
    void paint(const Text& text);

  private:
    const Canvas& canvas_;
    Layout layout_;
};

}  // namespace toehold::drawing::ink
