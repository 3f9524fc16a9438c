#pragma once
// Paints a scene on any Cairo surface, and finds what stands under a point.
#include "drawing/render/palette.h"
#include "drawing/scene/view.h"

#include <set>

typedef struct _cairo cairo_t;  // so that who only includes this needs no Cairo header

namespace toehold::drawing {

struct Emphasis {
    std::set<model::PartId> selected;  ///< parts with the selection's outline around them
    model::PartId pointed;             ///< part under the pointer; drawn a little heavier
};

/// A text stands at its place by its capitals: what hangs below the line does not move it. Lines on screens are never
/// thinner than can be seen. Throws std::runtime_error when the surface is in error.
void paint(cairo_t* cairo, const Scene& scene, const View& view, Ground ground, const Emphasis& emphasis = {});
/// Fills the area with the ground's colour.
void paint_ground(cairo_t* cairo, const Area& area, Ground ground);

/// The part under a point of the surface, the last painted first: inside a filled area or any circle, within `reach` of
/// a line, or on a text as wide as it is likely to be. Of no kind: none.
[[nodiscard]] model::PartId part_at(const Scene& scene, const View& view, Point on_surface, double reach);

}  // namespace toehold::drawing
