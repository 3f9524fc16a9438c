#include "drawing/render/palette.h"

#include <algorithm>
#include <array>
#include <cstddef>

namespace toehold::drawing {
namespace {

constexpr Colour rgb(unsigned hex, double opacity = 1.0) {
    return {((hex >> 16U) & 0xFFU) / 255.0, ((hex >> 8U) & 0xFFU) / 255.0, (hex & 0xFFU) / 255.0, opacity};
}

/// What a ground is made of; every pen and fill is mixed from these.
struct Inks {
    Colour ground;
    Colour ink;        ///< edges and words
    Colour quiet;      ///< dimensions, axes, hidden edges: still fit for words
    Colour grid;       ///< lines of the paper
    Colour demand;     ///< the one deep hue
    Colour capacity;   ///< neutral
    Colour selection;  ///< a highlighter's wash
    Colour handle;     ///< what can be taken
    Colour plate, metal, decking, wood_side, wood_end, wood_cut;
    double pale;   ///< opacity of pale demand
    double stale;  ///< opacity of the wash over what is no longer true
};

// Buff paper with blue-black ink, and madder for demand.
constexpr Inks paper_inks = {
    .ground = rgb(0xF5F1E3),
    .ink = rgb(0x1A2740),
    .quiet = rgb(0x3A475C),
    .grid = rgb(0xD8D5C4),
    .demand = rgb(0x8F1D30),
    .capacity = rgb(0x6C7C8D),
    .selection = rgb(0xE3A92B, 0.75),
    .handle = rgb(0x1F5C86),
    .plate = rgb(0xE1E5E2),
    .metal = rgb(0xD3DADB),
    .decking = rgb(0xE9E0C9),
    .wood_side = rgb(0xF0E5C9),
    .wood_end = rgb(0xE6D4AE),
    .wood_cut = rgb(0xECDDBB),
    .pale = 0.15,
    .stale = 0.60,
};

// Its negative: ink for a ground, chalk for a line, and the warm light that madder turns to.
constexpr Inks night_inks = {
    .ground = rgb(0x111C2E),
    .ink = rgb(0xE4E6DE),
    .quiet = rgb(0xB4BDC6),
    .grid = rgb(0x2A3A53),
    .demand = rgb(0xF29C86),
    .capacity = rgb(0x71859B),
    .selection = rgb(0xD9A441, 0.75),
    .handle = rgb(0x86C1E8),
    .plate = rgb(0x22324A),
    .metal = rgb(0x2C3D56),
    .decking = rgb(0x2A2D37),
    .wood_side = rgb(0x262A35),
    .wood_end = rgb(0x37342F),
    .wood_cut = rgb(0x2F2F33),
    .pale = 0.18,
    .stale = 0.60,
};

// For a printer that may have black alone: grey does what hue does on the other grounds.
constexpr Inks print_inks = {
    .ground = rgb(0xFFFFFF),
    .ink = rgb(0x000000),
    .quiet = rgb(0x2B2B2B),
    .grid = rgb(0xCECECE),
    .demand = rgb(0x7C1527),
    .capacity = rgb(0x7A828A),
    .selection = rgb(0xE3A92B, 0.75),
    .handle = rgb(0x1F5C86),
    .plate = rgb(0xF3F4F4),
    .metal = rgb(0xF3F4F4),
    .decking = rgb(0xF8F7F4),
    .wood_side = rgb(0xFCFBF8),
    .wood_end = rgb(0xF3F0E9),
    .wood_cut = rgb(0xF8F6F1),
    .pale = 0.14,
    .stale = 0.65,
};

const Inks& inks(Ground ground) {
    switch (ground) {
        case Ground::paper:
            return paper_inks;
        case Ground::night:
            return night_inks;
        case Ground::print:
            return print_inks;
    }
    return print_inks;
}

Colour with_opacity(Colour colour, double opacity) {
    colour.opacity = opacity;
    return colour;
}

}  // namespace

Colour ground_colour(Ground ground) { return inks(ground).ground; }

// Widths and dashes after ISO 128 and ASME Y14.2 (common practice; no value is copied from a table).
Stroke stroke(Pen pen, Ground ground) {
    const Inks& of = inks(ground);
    switch (pen) {
        case Pen::none:
            return {with_opacity(of.ink, 0.0), 0.13, {}};
        case Pen::outline:
            return {of.ink, 0.35, {}};
        case Pen::cut:
            return {of.ink, 0.50, {}};
        case Pen::thin:
            return {of.quiet, 0.13, {}};
        case Pen::hidden:
            return {of.quiet, 0.20, {2.2, 1.0}};
        case Pen::center:
            return {of.quiet, 0.13, {5.0, 0.9, 1.0, 0.9}};
        case Pen::dimension:
            return {of.quiet, 0.13, {}};
        case Pen::grid:
            return {of.grid, 0.13, {}};
        case Pen::demand:
            return {of.demand, 0.50, {}};
        case Pen::capacity:
            return {of.capacity, 0.35, {}};
        case Pen::selection:
            return {of.selection, 2.20, {}};
        case Pen::handle:
            return {of.handle, 0.30, {}};
        case Pen::snap:
            return {of.handle, 0.20, {0.8, 0.6}};
        case Pen::holds:
            return {of.ink, 0.20, {}};
        case Pen::fails:
            return {of.ink, 0.60, {}, true};
        case Pen::no_path:
            return {of.ink, 0.50, {2.0, 1.3}};
        case Pen::missing:
            return {of.ink, 0.50, {0.0, 1.1}};
    }
    return {of.ink, 0.35, {}};
}

Colour fill_colour(Fill fill, Ground ground) {
    const Inks& of = inks(ground);
    switch (fill) {
        case Fill::none:
            return with_opacity(of.ground, 0.0);
        case Fill::paper:
            return of.ground;
        case Fill::plate:
            return of.plate;
        case Fill::metal_cut:
            return of.metal;
        case Fill::wood_side:
            return of.wood_side;
        case Fill::wood_end:
            return of.wood_end;
        case Fill::wood_cut:
            return of.wood_cut;
        case Fill::decking:
            return of.decking;
        case Fill::demand:
            return of.demand;
        case Fill::demand_pale:
            return with_opacity(of.demand, of.pale);
        case Fill::capacity:
            return of.capacity;
        case Fill::stale:
            return with_opacity(of.ground, of.stale);
        case Fill::failing:
            return with_opacity(of.ground, 0.0);
        case Fill::holding:
            return with_opacity(of.handle, of.pale);
        case Fill::likely:
            return with_opacity(of.ground, 0.0);
    }
    return of.ground;
}

// Linear in opacity, so that a shading is as linear on paper as it is in its values, and shows what lies under it.
Colour level_colour(double level, Ground ground) {
    constexpr double opacity_of_all = 0.88;
    return with_opacity(inks(ground).demand, opacity_of_all * std::clamp(level, 0.0, 1.0));
}

double text_height_mm(TextSize size) {
    constexpr std::array<double, 5> heights_mm = {2.5, 2.9, 3.3, 4.2, 5.6};
    return heights_mm.at(static_cast<std::size_t>(size));
}

}  // namespace toehold::drawing
