#pragma once
// Painting kept inside a part of the sheet.
#include "drawing/scene/view.h"

#include <cairo/cairo.h>

namespace toehold::window {

/// Nothing is painted outside the area while this lives.
class Clip {
  public:
    Clip(cairo_t* cairo, const drawing::Area& area) : cairo_(cairo) {
        cairo_save(cairo_);
        cairo_rectangle(cairo_, area.left, area.top, area.width, area.height);
        cairo_clip(cairo_);
    }
    ~Clip() { cairo_restore(cairo_); }
    Clip(const Clip&) = delete;
    Clip& operator=(const Clip&) = delete;

  private:
    cairo_t* cairo_;
};

}  // namespace toehold::window
