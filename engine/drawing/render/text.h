#pragma once
// Words, in the drawings' one lettering. A text's box reaches from the foot of its last line's capitals to the head of
// its first line's: what hangs below the line does not move it, so that figures stand exactly on and under their lines.
#include "drawing/render/canvas.h"
#include "drawing/scene/scene.h"

#include <memory>
#include <string>

typedef struct _PangoLayout PangoLayout;

namespace toehold::drawing::render {

struct ReleaseLayout {
    void operator()(PangoLayout* layout) const;
};
using Layout = std::unique_ptr<PangoLayout, ReleaseLayout>;

/// Words are as wide at every scale as at any other, so that a patch fits its words and a print is what the screen was.
void keep_widths(PangoLayout* layout);
/// `height`: of the font, in the layout's own units.
void use_font(PangoLayout* layout, double height, bool bold);
void use_words(PangoLayout* layout, const std::string& words, bool math);

/// Height of capitals over the font's size: 1493/2048 in DejaVu Sans (its OS/2 table).
inline constexpr double capital_height = 0.729;

/// One for a whole drawing, since setting up fonts costs more than setting words.
class TextPainter {
  public:
    explicit TextPainter(const Canvas& canvas);
    void paint(const Text& text);

  private:
    /// Into the layout; how long they are, mm.
    double set_words(const Text& text);

    const Canvas& canvas_;
    Layout layout_;
};

}  // namespace toehold::drawing::render
