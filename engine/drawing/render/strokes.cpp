#include "drawing/render/strokes.h"

#include "drawing/scene/shapes.h"

#include <cairo.h>

#include <algorithm>
#include <numbers>

namespace toehold::drawing::render {
namespace {

/// Cairo counts in 24.8 bits and walks dashes one by one, so a joist that runs on for ever is cut off well outside the
/// window. What slants is bent by this only when its end lies further out than any screen is wide.
Point within_reach(const Canvas& canvas, Point point) {
    constexpr double beyond = 2e4;
    const Box reach = grown(canvas.visible, beyond);
    return {std::clamp(point.x, reach.low.x, reach.high.x), std::clamp(point.y, reach.low.y, reach.high.y)};
}

void use(const Canvas& canvas, const Stroke& stroke) {
    use_colour(canvas, stroke.colour);
    cairo_set_line_width(canvas.cairo, line_width(canvas, stroke.width_mm));
    std::vector<double> dashes;
    dashes.reserve(stroke.dashes_mm.size());
    for (const double mm : stroke.dashes_mm) dashes.push_back(units(canvas, mm));
    cairo_set_dash(canvas.cairo, dashes.data(), static_cast<int>(dashes.size()), 0.0);
    // A dash without length is a dot only under a round end.
    const bool dots = !dashes.empty() && dashes.front() == 0.0;
    cairo_set_line_cap(canvas.cairo, dots ? CAIRO_LINE_CAP_ROUND : CAIRO_LINE_CAP_BUTT);
    cairo_set_line_join(canvas.cairo, CAIRO_LINE_JOIN_MITER);
}

/// How far each of two lines stands from the line between them: the gap is as wide as three fifths of a line.
double half_apart(const Canvas& canvas, const Stroke& stroke) { return 0.8 * line_width(canvas, stroke.width_mm); }

}  // namespace

void trace(const Canvas& canvas, const std::vector<Contour>& contours, bool closed) {
    cairo_new_path(canvas.cairo);
    for (const Contour& contour : contours) {
        cairo_new_sub_path(canvas.cairo);
        for (const Point& point : contour) {
            const Point near = within_reach(canvas, point);
            cairo_line_to(canvas.cairo, near.x, near.y);
        }
        if (closed && !contour.empty()) cairo_close_path(canvas.cairo);
    }
}

void trace(const Canvas& canvas, const Disc& disc) {
    cairo_new_path(canvas.cairo);
    cairo_arc(canvas.cairo, disc.center.x, disc.center.y, std::max(disc.radius, 0.0), 0.0, 2.0 * std::numbers::pi);
    cairo_close_path(canvas.cairo);
}

void draw_line(const Canvas& canvas, const std::vector<Contour>& contours, bool closed, const Stroke& stroke) {
    use(canvas, stroke);
    if (!stroke.doubled) {
        trace(canvas, contours, closed);
        cairo_stroke(canvas.cairo);
        return;
    }
    for (const double by : {half_apart(canvas, stroke), -half_apart(canvas, stroke)}) {
        std::vector<Contour> lines;
        lines.reserve(contours.size());
        for (const Contour& contour : contours) lines.push_back(beside(contour, closed, by));
        trace(canvas, lines, closed);
        cairo_stroke(canvas.cairo);
    }
}

void draw_line(const Canvas& canvas, const Disc& disc, const Stroke& stroke) {
    use(canvas, stroke);
    const double apart = stroke.doubled ? half_apart(canvas, stroke) : 0.0;
    for (const double by : {apart, -apart}) {
        trace(canvas, {disc.center, disc.radius + by});
        cairo_stroke(canvas.cairo);
        if (!stroke.doubled) return;
    }
}

}  // namespace toehold::drawing::render
