#include "job/framing.h"

#include "demand/loads/deck_load.h"
#include "job/hardware.h"
#include "job/layout.h"

#include <algorithm>
#include <cmath>

namespace toehold::job {
namespace {

constexpr double square_inches_per_square_foot = 144.0;

double deck_psf(const Job& job) {
    model::BaseDetail detail;
    detail.guard = guard_of(job);
    detail.basis.code = code_of(job);
    const demand::DeckLoadInForce load = demand::deck_load(detail);
    return load.dead_psf + load.live_psf;
}

/// The deck's load on a joist, per length.
double line_lb_per_in(const Job& job) { return deck_psf(job) * job.joist_spacing_in / square_inches_per_square_foot; }

/// 8 ft, or what leaves more than half of the joists' bending strength to the guard, in half feet.
double usual_span_in(const Job& job, const Design& design, const catalog::Catalog& catalog) {
    constexpr double most_in = 96.0, least_in = 48.0, step_in = 6.0, use = 0.4;
    const catalog::LumberGrade* const grade =
        catalog::find_grade(catalog, design.species, design.grade, {design.joist_width_in, design.joist_depth_in});
    const double section_in3 = design.joist_width_in * design.joist_depth_in * design.joist_depth_in / 6.0;
    const double moment_lb_in = use * grade->bending_psi * section_in3;
    const double span_in = std::sqrt(8.0 * moment_lb_in / line_lb_per_in(job));
    return std::clamp(std::floor(span_in / step_in) * step_in, least_in, most_in);
}

model::Joists joists_of(const Job& job, const Design& design, const Layout& layout) {
    model::Joists joists;
    joists.along = model::PlanAxis::y;
    joists.width_in = design.joist_width_in;
    joists.depth_in = design.joist_depth_in;
    joists.species = design.species;
    joists.grade = design.grade;
    joists.members = layout.joists;
    joists.from_in = layout.ledger_at_in;
    joists.to_in = layout.joists_end_in;
    joists.size = job.joist_size;
    return joists;
}

model::Rim rim_of(const Job& job, const Design& design, const Layout& layout) {
    const double rim_width_in = design.side ? design.side->rim_width_in : design.joist_width_in;
    model::Rim rim;
    rim.id = "R1";
    rim.at_in = layout.joists_end_in + 0.5 * rim_width_in;
    rim.from_in = layout.rim_from_in;
    rim.to_in = layout.rim_to_in;
    rim.width_in = rim_width_in;
    rim.depth_in = design.joist_depth_in;
    rim.species = design.species;
    rim.grade = design.grade;
    rim.connection = design.side ? at_rolling_rim(design, job.joist_spacing_in) : at_rim(design, job.joist_spacing_in);
    rim.size = design.side ? design.side->rim_size : job.joist_size;
    return rim;
}

std::vector<model::JoistSupport> supports_of(const Job& job, const Design& design, const Layout& layout) {
    const double span_in = layout.beam_at_in - layout.ledger_at_in;
    const double overhang = std::max(0.0, layout.joists_end_in - layout.beam_at_in) / span_in;
    const double reaction_lb = 0.5 * line_lb_per_in(job) * span_in;
    model::JoistSupport ledger{"S1", model::JoistSupport::Kind::ledger, layout.ledger_at_in, 0.0,
                               at_ledger(design, reaction_lb)};
    model::JoistSupport beam{"S2", model::JoistSupport::Kind::beam, layout.beam_at_in, beam_bearing_in,
                             design.side ? on_beam_behind_rim(design, job.joist_spacing_in)
                                         : on_beam(design, job.joist_spacing_in, overhang)};
    return {ledger, beam};
}

std::vector<model::Block> blocks_of(const Design& design, const Layout& layout) {
    std::vector<model::Block> blocks;
    if (design.side) return blocks;
    for (const double across_in : {-design.row_y_in, design.row_y_in}) {
        for (const Bay& bay : layout.bays) {
            model::Block block;
            block.id = "B" + std::to_string(blocks.size() + 1);
            block.along = model::PlanAxis::x;
            block.from_in = bay.from_in;
            block.to_in = bay.to_in;
            block.across_in = across_in;
            block.width_in = design.block_width_in;
            block.depth_in = design.block_depth_in;
            block.species = design.species;
            block.grade = design.grade;
            block.from_end = {bay.from_joist, at_block_end(design)};
            block.to_end = {bay.to_joist, at_block_end(design)};
            block.size = design.block_size;
            blocks.push_back(std::move(block));
        }
    }
    return blocks;
}

}  // namespace

model::Framing framing_of(const Job& job, const Design& design, const catalog::Catalog& catalog) {
    const double span_in = job.joist_span_in ? *job.joist_span_in : usual_span_in(job, design, catalog);
    const Layout layout = lay_out(job, design, span_in);
    model::Framing framing;
    framing.joists = joists_of(job, design, layout);
    framing.rims = {rim_of(job, design, layout)};
    framing.supports = supports_of(job, design, layout);
    framing.blocks = blocks_of(design, layout);
    framing.preservative_treated = job.treated.value_or(true);
    return framing;
}

}  // namespace toehold::job
