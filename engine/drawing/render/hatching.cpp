#include "drawing/render/fills.h"

#include "drawing/render/strokes.h"

#include <cairo.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numbers>

namespace toehold::drawing::render {
namespace {

/// Between 0 and 1, always the same for the same number: wood is irregular, a drawing is not to flicker.
double scatter(std::uint32_t number) {
    std::uint32_t bits = number * 2654435769U + 0x9E3779B9U;
    bits = (bits ^ (bits >> 15U)) * 2246822519U;
    bits = (bits ^ (bits >> 13U)) * 3266489917U;
    return static_cast<double>(bits ^ (bits >> 16U)) / 4294967295.0;
}

Point turned(Point point, double cosine, double sine) {
    return {point.x * cosine - point.y * sine, point.x * sine + point.y * cosine};
}

std::vector<Contour> turned(const std::vector<Contour>& contours, double cosine, double sine) {
    std::vector<Contour> result = contours;
    for (Contour& contour : result) {
        for (Point& point : contour) point = turned(point, cosine, sine);
    }
    return result;
}

/// Where the level line at y enters and leaves the area, in order.
std::vector<double> crossings(const std::vector<Contour>& contours, double y) {
    std::vector<double> met;
    for (const Contour& contour : contours) {
        for (std::size_t i = 0; i < contour.size(); ++i) {
            const Point a = contour[i], b = contour[(i + 1) % contour.size()];
            if ((a.y > y) != (b.y > y)) met.push_back(a.x + (y - a.y) * (b.x - a.x) / (b.y - a.y));
        }
    }
    std::sort(met.begin(), met.end());
    return met;
}

/// Adds the parts inside the area of the level line at y to the path.
void trace_level(const Canvas& canvas, const std::vector<Contour>& contours, double y) {
    const double left = canvas.visible.low.x - 1.0, right = canvas.visible.high.x + 1.0;
    const std::vector<double> met = crossings(contours, y);
    for (std::size_t i = 0; i + 1 < met.size(); i += 2) {
        if (met[i] > right || met[i + 1] < left) continue;
        cairo_move_to(canvas.cairo, std::max(met[i], left), y);
        cairo_line_to(canvas.cairo, std::min(met[i + 1], right), y);
    }
}

/// A canvas turned so that lines at `angle` (counter-clockwise as seen) lie level, and the area as it lies there.
struct Turned {
    Canvas canvas;
    std::vector<Contour> contours;
    Box box;
};

Turned begin_turned(const Canvas& canvas, const std::vector<Contour>& contours, double angle) {
    cairo_save(canvas.cairo);
    cairo_rotate(canvas.cairo, -angle);
    Turned made{canvas, turned(contours, std::cos(angle), std::sin(angle)), {}};
    made.box = bounds(made.contours);
    cairo_clip_extents(canvas.cairo, &made.canvas.visible.low.x, &made.canvas.visible.low.y,
                       &made.canvas.visible.high.x, &made.canvas.visible.high.y);
    return made;
}

void use_faint(const Canvas& canvas, double opacity, double width_mm) {
    Colour colour = stroke(Pen::thin, canvas.ground).colour;
    colour.opacity *= opacity;
    use_colour(canvas, colour);
    cairo_set_line_width(canvas.cairo, line_width(canvas, width_mm));
    cairo_set_line_cap(canvas.cairo, CAIRO_LINE_CAP_BUTT);
    cairo_set_dash(canvas.cairo, nullptr, 0, 0.0);
    cairo_set_antialias(canvas.cairo, CAIRO_ANTIALIAS_FAST);
}

/// Lines at 45 degrees.
void hatch_aslant(const Canvas& canvas, const std::vector<Contour>& contours, double spacing_mm, double opacity) {
    const Turned area = begin_turned(canvas, contours, std::numbers::pi / 4.0);
    use_faint(canvas, opacity, 0.13);
    cairo_new_path(canvas.cairo);
    const double spacing = units(canvas, spacing_mm);
    const Box& seen = area.canvas.visible;
    const double first = std::max(1.0, std::ceil((seen.low.y - area.box.low.y) / spacing));
    const double end = std::min(area.box.high.y, seen.high.y);
    for (double i = first; area.box.low.y + i * spacing < end; i += 1.0)
        trace_level(area.canvas, area.contours, area.box.low.y + i * spacing);
    cairo_stroke(canvas.cairo);
    cairo_restore(canvas.cairo);
}

struct Grain {
    double spacing_mm = 1.0;  ///< mean of the lines' distances
    int most_lines = 12;      ///< a wide board gets wider ones rather than more
    double line_mm = 12.0;    ///< mean length of a line ...
    double gap_mm = 3.0;      ///< ... and of the gap after it
    double opacity = 0.4;
};

void break_line(const Canvas& canvas, const Grain& grain, std::uint32_t line) {
    const double lengths[] = {units(canvas, grain.line_mm * (0.6 + 0.8 * scatter(7 * line + 1))),
                              units(canvas, grain.gap_mm * (0.5 + scatter(7 * line + 2))),
                              units(canvas, grain.line_mm * (0.2 + 0.6 * scatter(7 * line + 3))),
                              units(canvas, grain.gap_mm * (0.5 + scatter(7 * line + 4)))};
    cairo_set_dash(canvas.cairo, lengths, 4, units(canvas, 2.0 * grain.line_mm * scatter(7 * line + 5)));
}

void hatch_grain(const Canvas& canvas, const std::vector<Contour>& contours, const Grain& grain) {
    const Box whole = bounds(contours);
    const bool upright = whole.high.y - whole.low.y > whole.high.x - whole.low.x;
    const Turned area = begin_turned(canvas, contours, upright ? std::numbers::pi / 2.0 : 0.0);
    use_faint(canvas, grain.opacity, 0.13);
    const double high = area.box.high.y - area.box.low.y;
    const double wanted = std::floor(high / units(canvas, grain.spacing_mm));
    const int lines = static_cast<int>(std::clamp(wanted, 0.0, static_cast<double>(grain.most_lines)));
    for (int line = 1; line < lines; ++line) {
        const auto number = static_cast<std::uint32_t>(line);
        const double y = area.box.low.y + high * (line + 0.6 * (scatter(number) - 0.5)) / lines;
        if (y < area.canvas.visible.low.y || y > area.canvas.visible.high.y) continue;
        break_line(canvas, grain, number);
        cairo_new_path(canvas.cairo);
        trace_level(area.canvas, area.contours, y);
        cairo_stroke(canvas.cairo);
    }
    cairo_restore(canvas.cairo);
}

/// A box on whole pixels clips many times faster than a shape, and its line covers the difference.
void clip_to(const Canvas& canvas, const std::vector<Contour>& contours, const Box& box) {
    const bool is_box = contours.size() == 1 && contours.front().size() == 4 && canvas.pixel > 0.0 &&
                        std::all_of(contours.front().begin(), contours.front().end(), [&box](Point corner) {
                            return (corner.x == box.low.x || corner.x == box.high.x) &&
                                   (corner.y == box.low.y || corner.y == box.high.y);
                        });
    if (is_box) {
        const auto whole = [&canvas](double value) { return std::round(value / canvas.pixel) * canvas.pixel; };
        const Point low{whole(box.low.x), whole(box.low.y)};
        cairo_rectangle(canvas.cairo, low.x, low.y, whole(box.high.x) - low.x, whole(box.high.y) - low.y);
    } else {
        trace(canvas, contours, true);
        cairo_set_fill_rule(canvas.cairo, CAIRO_FILL_RULE_EVEN_ODD);
    }
    cairo_clip(canvas.cairo);
}

/// Rings about a heart, each seen between two directions.
struct Rings {
    Point heart;
    double nearest = 0.0, farthest = 0.0;
    double from = 0.0, to = 0.0;
};

/// The heart lies below the piece and a little aside, as in a board sawn beside it; a tall one is sawn around it.
Rings rings_in(const Box& box) {
    const double wide = box.high.x - box.low.x, high = box.high.y - box.low.y;
    Rings rings;
    if (high > 1.3 * wide) {
        rings.heart = {box.low.x + 0.42 * wide, box.low.y + 0.61 * high};
        rings.farthest = std::hypot(0.58 * wide, 0.61 * high);
        rings.to = 2.0 * std::numbers::pi;
        return rings;
    }
    rings.heart = {box.low.x + 0.36 * wide, box.high.y + 0.30 * std::max(high, 0.6 * wide)};
    rings.nearest = rings.heart.y - box.high.y;
    rings.farthest =
        std::hypot(std::max(rings.heart.x - box.low.x, box.high.x - rings.heart.x), rings.heart.y - box.low.y);
    rings.from = std::atan2(box.high.y - rings.heart.y, box.low.x - rings.heart.x);
    rings.to = std::atan2(box.high.y - rings.heart.y, box.high.x - rings.heart.x);
    return rings;
}

void hatch_rings(const Canvas& canvas, const std::vector<Contour>& contours) {
    constexpr double spacing_mm = 1.5;
    constexpr double most_rings = 24.0;
    const Box box = bounds(contours);
    const Rings rings = rings_in(box);
    const double spacing = std::max(units(canvas, spacing_mm), (rings.farthest - rings.nearest) / most_rings);
    cairo_save(canvas.cairo);
    cairo_new_path(canvas.cairo);
    clip_to(canvas, contours, box);
    use_faint(canvas, 0.55, 0.13);
    if (canvas.pixel > 0.0) cairo_set_tolerance(canvas.cairo, 0.35);  // of a pixel: faint arcs need no more
    std::uint32_t ring = 0;
    for (double radius = rings.nearest + 0.4 * spacing; radius < rings.farthest;) {
        cairo_arc(canvas.cairo, rings.heart.x, rings.heart.y, radius, rings.from, rings.to);
        cairo_stroke(canvas.cairo);
        radius += spacing * (0.65 + 0.7 * scatter(ring++));
    }
    cairo_restore(canvas.cairo);
}

}  // namespace

void hatch(const Canvas& canvas, const std::vector<Contour>& contours, Fill fill) {
    switch (fill) {
        case Fill::metal_cut:
            hatch_aslant(canvas, contours, 1.3, 0.75);
            break;
        case Fill::failing:
            hatch_aslant(canvas, contours, 2.4, 0.6);
            break;
        case Fill::likely:
            hatch_aslant(canvas, contours, 1.6, 0.5);
            break;
        case Fill::wood_end:
            hatch_rings(canvas, contours);
            break;
        case Fill::wood_cut:
            hatch_grain(canvas, contours, {1.3, 16, 26.0, 1.6, 0.55});
            break;
        case Fill::wood_side:
            hatch_grain(canvas, contours, {2.6, 9, 13.0, 9.0, 0.38});
            break;
        case Fill::decking:
            hatch_grain(canvas, contours, {1.5, 8, 4.0, 4.5, 0.45});
            break;
        default:
            break;
    }
}

}  // namespace toehold::drawing::render
