#include "drawing/render/painter.h"

#include "drawing/scene/shapes.h"

#include "drawing/render/fills.h"
#include "drawing/render/strokes.h"
#include "drawing/render/text.h"

#include <cairo.h>

#include <algorithm>
#include <stdexcept>

namespace toehold::drawing {
namespace {

using render::Canvas;
using render::Contour;

/// Room around an item for its line and for the halo of a selected one.
constexpr double around_mm = 2.5;

struct Painting {
    const Canvas& canvas;
    const Emphasis& emphasis;
    render::TextPainter& text;
};

bool of_matter(Fill fill) {
    switch (fill) {
        case Fill::plate:
        case Fill::metal_cut:
        case Fill::wood_side:
        case Fill::wood_end:
        case Fill::wood_cut:
        case Fill::decking:
            return true;
        default:
            return false;
    }
}

/// Lines and figures about a thing are not the thing: a selected anchor is not to set its dimensions or its bar aglow.
bool of_the_thing(Pen pen, Fill fill) {
    switch (pen) {
        case Pen::outline:
        case Pen::cut:
        case Pen::hidden:
            return fill != Fill::demand && fill != Fill::demand_pale && fill != Fill::capacity;
        case Pen::none:
            return of_matter(fill);
        default:
            return false;
    }
}

bool selected(const Painting& painting, const model::PartId& part) {
    return part.kind != model::PartKind::none && painting.emphasis.selected.contains(part);
}

Stroke line_of(const Painting& painting, Pen pen, const model::PartId& part) {
    constexpr double heavier = 1.7;
    Stroke line = stroke(pen, painting.canvas.ground);
    if (part.kind != model::PartKind::none && part == painting.emphasis.pointed) line.width_mm *= heavier;
    return line;
}

/// The halo stands half under the thing it surrounds.
Stroke halo(const Painting& painting) { return stroke(Pen::selection, painting.canvas.ground); }

void fill_traced(const Canvas& canvas, Fill fill) {
    use_colour(canvas, fill_colour(fill, canvas.ground));
    cairo_set_fill_rule(canvas.cairo, CAIRO_FILL_RULE_EVEN_ODD);
    cairo_fill(canvas.cairo);
}

void sharpen(const Canvas& canvas, std::vector<Contour>& contours, bool closed) {
    if (canvas.pixel <= 0.0) return;
    for (Contour& contour : contours) contour = render::sharpened(contour, closed, canvas.pixel);
}

void paint_item(const Painting& painting, const Path& path) {
    const Canvas& canvas = painting.canvas;
    std::vector<Contour> contours = render::on_surface(path, canvas.view);
    if (!render::meet(grown(render::bounds(contours), render::units(canvas, around_mm)), canvas.visible)) return;
    sharpen(canvas, contours, path.closed);
    if (selected(painting, path.part) && of_the_thing(path.pen, path.fill))
        render::draw_line(canvas, contours, path.closed, halo(painting));
    if (path.fill != Fill::none) {
        render::trace(canvas, contours, true);
        fill_traced(canvas, path.fill);
        render::hatch(canvas, contours, path.fill);
    }
    if (path.pen != Pen::none) render::draw_line(canvas, contours, path.closed, line_of(painting, path.pen, path.part));
}

void paint_item(const Painting& painting, const Circle& circle) {
    const Canvas& canvas = painting.canvas;
    const render::Disc disc{to_surface(canvas.view, circle.center),
                            circle.radius_in * canvas.view.units_per_in + render::units(canvas, circle.radius_mm)};
    const Box box = grown({disc.center, disc.center}, disc.radius + render::units(canvas, around_mm));
    if (!render::meet(box, canvas.visible)) return;
    if (selected(painting, circle.part) && of_the_thing(circle.pen, circle.fill))
        render::draw_line(canvas, disc, halo(painting));
    if (circle.fill != Fill::none) {
        render::trace(canvas, disc);
        fill_traced(canvas, circle.fill);
    }
    if (circle.pen != Pen::none) render::draw_line(canvas, disc, line_of(painting, circle.pen, circle.part));
}

void paint_item(const Painting& painting, const Text& text) {
    if (!text.words.empty()) painting.text.paint(text);
}

void paint_item(const Painting& painting, const Shading& shading) { render::shade(painting.canvas, shading); }

void refuse_errors(cairo_t* cairo) {
    const cairo_status_t status = cairo_status(cairo);
    if (status != CAIRO_STATUS_SUCCESS)
        throw std::runtime_error(std::string("the drawing could not be painted: ") + cairo_status_to_string(status));
}

}  // namespace

void paint(cairo_t* cairo, const Scene& scene, const View& view, Ground ground, const Emphasis& emphasis) {
    refuse_errors(cairo);
    cairo_save(cairo);
    const Canvas canvas = render::canvas(cairo, view, ground);
    render::TextPainter text(canvas);
    const Painting painting{canvas, emphasis, text};
    for (const Item& item : scene.items) std::visit([&painting](const auto& one) { paint_item(painting, one); }, item);
    cairo_restore(cairo);
    refuse_errors(cairo);
}

void paint_ground(cairo_t* cairo, const Area& area, Ground ground) {
    const Colour colour = ground_colour(ground);
    cairo_save(cairo);
    cairo_set_source_rgb(cairo, colour.red, colour.green, colour.blue);
    cairo_rectangle(cairo, area.left, area.top, area.width, area.height);
    cairo_fill(cairo);
    cairo_restore(cairo);
    refuse_errors(cairo);
}

}  // namespace toehold::drawing
