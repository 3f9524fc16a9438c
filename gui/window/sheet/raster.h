#pragma once
// What was painted once and is shown until it changes: an image of a part of the sheet.
#include "drawing/scene/view.h"

#include <functional>
#include <memory>

typedef struct _cairo cairo_t;
typedef struct _cairo_surface cairo_surface_t;

namespace toehold::window {

class Raster {
  public:
    /// Paints anew, with the origin of `paint` at the sheet's origin and everything outside the area cut off.
    /// `scale`: pixels of the screen for one unit.
    void repaint(const drawing::Area& area, double scale, const std::function<void(cairo_t*)>& paint);
    void show(cairo_t* cairo) const;  ///< at its area; nothing before the first painting

  private:
    struct Destroy {
        void operator()(cairo_surface_t* surface) const;
    };
    std::unique_ptr<cairo_surface_t, Destroy> image_;
    int width_ = 0, height_ = 0;  ///< px
    double left_ = 0.0, top_ = 0.0;
};

}  // namespace toehold::window
