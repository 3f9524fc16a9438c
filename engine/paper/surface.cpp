#include "paper/surface.h"

#include "drawing/render/painter.h"

namespace toehold::paper {
namespace {

constexpr double mm_per_in = 25.4;

drawing::View view_of(const Placed& placed, double units_per_mm) {
    return {placed.center_in,
            {placed.at_mm.x * units_per_mm, placed.at_mm.y * units_per_mm},
            placed.scale * mm_per_in * units_per_mm,
            placed.lettering * units_per_mm};
}

}  // namespace

void paint(cairo_t* cairo, const Sheet& sheet, double units_per_mm) {
    for (const Placed& placed : sheet.placed) {
        drawing::paint(cairo, placed.scene, view_of(placed, units_per_mm), drawing::Ground::print);
    }
}

}  // namespace toehold::paper
