#pragma once
// The drawings' one lettering, for whoever sets words or measures them.
#include "drawing/scene.h"

#include <memory>
#include <string>

typedef struct _PangoContext PangoContext;
typedef struct _PangoLayout PangoLayout;

namespace toehold::drawing::ink {

struct ReleaseLayout {
    void operator()(PangoLayout* layout) const;
};
using Layout = std::unique_ptr<PangoLayout, ReleaseLayout>;

/// Words are as wide at every scale as at any other, so that a patch fits its words and a print is what the screen was.
void keep_widths(PangoLayout* layout);
/// `height`: of the font, in the layout's own units.
void use_font(PangoLayout* layout, double height, bool bold);
void use_words(PangoLayout* layout, const std::string& words, bool math);

}  // namespace toehold::drawing::ink
