#include "job/layout.h"

#include <algorithm>

namespace toehold::job {
namespace {

/// A block against the rim, or this far from it.
constexpr double block_to_rim_in = 4.0;

void place_joists(Layout& layout, const std::vector<double>& offsets_in) {
    for (const double offset_in : offsets_in)
        layout.joists.push_back({"J" + std::to_string(layout.joists.size() + 1), offset_in});
}

/// Between two joists of the layout, by their number.
Bay bay_between(const Layout& layout, std::size_t lower, std::size_t upper, double width_in) {
    const model::Joist& from = layout.joists.at(lower);
    const model::Joist& to = layout.joists.at(upper);
    return {from.id, to.id, from.offset_in + 0.5 * width_in * from.plies, to.offset_in - 0.5 * width_in * to.plies};
}

/// Of a post on the rim: with ties between two joists, so that they lie along their sides; else in front of one.
void lay_behind_rim(Layout& layout, const SideDesign& side, double spacing_in, double width_in) {
    const double beside_in = tie_at_in + tie_off_joist_in + 0.5 * width_in;
    if (side.tie_lb > 0.0) {
        place_joists(layout, {-beside_in - spacing_in, -beside_in, beside_in, beside_in + spacing_in});
    } else {
        place_joists(layout, {-2.0 * spacing_in, -spacing_in, 0.0, spacing_in, 2.0 * spacing_in});
    }
}

void lay_joists(Layout& layout, const Job& job, const Design& design) {
    const double spacing_in = job.joist_spacing_in, width_in = design.joist_width_in;
    if (design.side) {
        lay_behind_rim(layout, *design.side, spacing_in, width_in);
    } else if (job.place == Place::over_a_joist) {
        place_joists(layout, {-spacing_in, 0.0, spacing_in});
        layout.bays = {bay_between(layout, 0, 1, width_in), bay_between(layout, 1, 2, width_in)};
    } else if (job.place == Place::corner) {
        place_joists(layout, {-2.5 * spacing_in, -1.5 * spacing_in, -0.5 * spacing_in});
        // Its inner piece stands in the row of the others.
        layout.joists.push_back({"J4", 0.5 * (spacing_in + width_in), 2});
        layout.bays = {bay_between(layout, 2, 3, width_in)};
    } else {
        place_joists(layout, {-1.5 * spacing_in, -0.5 * spacing_in, 0.5 * spacing_in, 1.5 * spacing_in});
        layout.bays = {bay_between(layout, 1, 2, width_in)};
    }
    const model::Joist& last = layout.joists.back();
    layout.rim_from_in = layout.joists.front().offset_in - 0.5 * width_in;
    layout.rim_to_in = last.offset_in + 0.5 * width_in * last.plies;
}

/// Nuts hang below the blocks: the beam stands clear of them, beyond the outer block or behind the inner one.
double beam_at(const Job& job, const Design& design, double joists_end_in, double span_in) {
    constexpr double nut_to_beam_in = 2.0, usual_setback_in = 12.0, past_beam_in = 2.0;
    const double behind_in = -(design.row_y_in + 0.5 * design.block_width_in + nut_to_beam_in + 0.5 * beam_bearing_in);
    switch (job.place) {
        case Place::between_joists:
        case Place::over_a_joist:
            return joists_end_in - past_beam_in;
        case Place::beside_the_rim:
        case Place::corner:
            return std::min(-usual_setback_in, behind_in);
        case Place::deck_side:
            return joists_end_in - usual_setback_in;
        case Place::cantilever:
            break;
    }
    // A quarter of the span is the usual limit of an overhang.
    return std::min(joists_end_in - 0.25 * span_in, behind_in);
}

}  // namespace

Layout lay_out(const Job& job, const Design& design, double span_in) {
    Layout layout;
    lay_joists(layout, job, design);
    const bool at_rim = job.place == Place::beside_the_rim || job.place == Place::corner;
    layout.joists_end_in = design.side
                               ? -(design.side->to_rim_in + design.side->rim_width_in)
                               : design.row_y_in + 0.5 * design.block_width_in + (at_rim ? 0.0 : block_to_rim_in);
    layout.beam_at_in = beam_at(job, design, layout.joists_end_in, span_in);
    layout.ledger_at_in = layout.beam_at_in - span_in;
    return layout;
}

}  // namespace toehold::job
