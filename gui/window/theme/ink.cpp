#include "window/theme/ink.h"

#include "drawing/render/painter.h"

#include <wx/dc.h>
#include <wx/graphics.h>

#include <cmath>
#include <memory>

namespace toehold::window {
namespace {

unsigned char channel(double value) { return static_cast<unsigned char>(std::lround(255.0 * value)); }

wxColour colour(const drawing::Colour& of) { return {channel(of.red), channel(of.green), channel(of.blue)}; }

wxColour pen_colour(drawing::Pen pen, drawing::Ground ground) { return colour(drawing::stroke(pen, ground).colour); }

}  // namespace

wxColour blended(const wxColour& under, const wxColour& over, double share) {
    const auto mix = [share](unsigned char from, unsigned char to) {
        return static_cast<unsigned char>(std::lround(from + share * (to - from)));
    };
    return {mix(under.Red(), over.Red()), mix(under.Green(), over.Green()), mix(under.Blue(), over.Blue())};
}

Ink ink(drawing::Ground ground) {
    Ink result;
    result.ground = colour(drawing::ground_colour(ground));
    result.text = pen_colour(drawing::Pen::outline, ground);
    result.faint = blended(result.ground, result.text, 0.72);
    result.rule = blended(result.ground, result.text, 0.16);
    result.raised = blended(result.ground, result.text, 0.07);
    result.selection = pen_colour(drawing::Pen::selection, ground);
    result.selected = blended(result.ground, result.selection, 0.16);
    result.demand = pen_colour(drawing::Pen::demand, ground);
    result.capacity = pen_colour(drawing::Pen::capacity, ground);
    return result;
}

double pixels_per_mm() { return 96.0 / 25.4; }

void paint_mark(wxDC& dc, const drawing::Scene& mark, const wxRect& area, drawing::Ground ground) {
    const std::unique_ptr<wxGraphicsContext> graphics(wxGraphicsContext::CreateFromUnknownDC(dc));
    if (!graphics) return;
    drawing::View view;
    view.center = {area.x + 0.5 * area.width, area.y + 0.5 * area.height};
    view.units_per_mm = pixels_per_mm();
    drawing::paint(static_cast<cairo_t*>(graphics->GetNativeContext()), mark, view, ground);
}

}  // namespace toehold::window
