// The drawings of the detail, and those of what the governing push does to it.
#include "drawing/drawings.h"
#include "paper/report/overlay.h"
#include "paper/report/sections.h"

namespace toehold::paper::report {
namespace {

using drawing::SectionPlane;
using format::phrase;

/// The drawings letter for a large sheet; smaller here, and still legible.
constexpr double lettering = 0.68;

/// Through the first anchor, square to the other section.
SectionPlane square_to(const SectionPlane& plane, const model::BaseDetail& detail) {
    const model::PlanAxis along = plane.along == model::PlanAxis::x ? model::PlanAxis::y : model::PlanAxis::x;
    if (on_deck(detail).plate.holes.empty()) return {along, 0.0};
    const model::Position at = on_deck(detail).plate.holes.front().center;
    return {along, along == model::PlanAxis::y ? at.x_in : at.y_in};
}

format::Phrase section_title(const SectionPlane& plane) {
    const format::Dimension at{plane.at_in};
    return plane.along == model::PlanAxis::y ? format::phrase("Section at x = {}, seen along x", at)
                                             : format::phrase("Section at y = {}, seen along y", at);
}

void add_side_figures(Blocks& blocks, const Source& source) {
    const catalog::Resolved& resolved = source.review.resolved;
    const drawing::Subject subject{resolved.detail, &resolved, nullptr, source.locale()};
    Figure above, below;
    above.height_mm = 102.0;
    above.lettering = lettering;
    above.parts = {{drawing::plan(subject, {}), 0.5, true, source.text(phrase("Face"))},
                   {drawing::section(subject, {}), 0.5, true, source.text(phrase("Section through the post"))}};
    below.height_mm = 78.0;
    below.lettering = lettering;
    below.parts = {{drawing::elevation(subject), 0.46, true, source.text(phrase("Elevation, seen along the rail"))},
                   {drawing::from_above(subject), 0.54, true, source.text(phrase("From above, boards off"))}};
    blocks.emplace_back(std::move(above));
    blocks.emplace_back(std::move(below));
}

/// The section with every fastener's pull and what the face presses.
void add_side_demand_figure(Blocks& blocks, const Source& source, const drawing::Subject& subject) {
    Figure figure;
    figure.height_mm = 78.0;
    figure.lettering = lettering;
    figure.parts = {{drawing::section(subject, {}), 1.0, true,
                     source.text(phrase("The same state: pull of each fastener, pressure of the member's face"))}};
    blocks.emplace_back(std::move(figure));
}

bool is_on_side(const catalog::Resolved& resolved) {
    return kind(resolved.detail.mount) == model::MountKind::side_fastened;
}

}  // namespace

void add_detail_figures(Blocks& blocks, const Source& source) {
    const catalog::Resolved& resolved = source.review.resolved;
    if (is_on_side(resolved)) return add_side_figures(blocks, source);
    const drawing::Subject subject{resolved.detail, &resolved, nullptr, source.locale()};
    const SectionPlane first = drawing::section_plane(resolved.detail, {});
    const SectionPlane second = square_to(first, resolved.detail);
    Figure above, below;
    above.height_mm = 73.0;
    above.lettering = lettering;
    above.parts = {{drawing::plan(subject, {}), 0.5, true, source.text(phrase("Plan"))},
                   {drawing::section(subject, first), 0.5, true, source.text(section_title(first))}};
    below.height_mm = 84.5;
    below.lettering = lettering;
    below.parts = {{drawing::elevation(subject), 0.42, true, source.text(phrase("Elevation, seen along the rail"))},
                   {drawing::section(subject, second), 0.58, true, source.text(section_title(second))}};
    blocks.emplace_back(std::move(above));
    blocks.emplace_back(std::move(below));
}

void add_demand_figures(Blocks& blocks, const Source& source) {
    const catalog::Resolved& resolved = source.review.resolved;
    const drawing::Overlay shown = overlay(source.review, source.locale());
    if (!shown.push) return;
    const drawing::Subject subject{resolved.detail, &resolved, &shown, source.locale()};
    drawing::PlanOptions options;
    options.dimensions = false;
    Figure figure;
    figure.height_mm = is_on_side(resolved) ? 76.0 : 64.0;
    figure.lettering = lettering;
    figure.parts = {{drawing::polar_envelope(polar_curves(source.review), shown, {}), 0.42, false,
                     source.text(phrase("Tension by the direction of the push, stiffness as computed"))},
                    {drawing::plan(subject, options), 0.58, true,
                     source.text(shown.field ? phrase("Tension, shear and pressure in the state of the largest tension")
                                             : phrase("Tension and shear in the state of the largest tension"))}};
    blocks.emplace_back(std::move(figure));
    if (is_on_side(resolved)) add_side_demand_figure(blocks, source, subject);
}

}  // namespace toehold::paper::report
