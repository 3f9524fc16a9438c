// What openings around the post leave between it and the rest of the plate: a cut right round the post, at one distance
// from it, carries all of the push. Its metal is taken as a line, elastic (common practice), and each inch of it held
// against shear through the thickness, AISC 360-16 J4.2, and, where it is a strip between two openings no wider than
// twice their width, against bending as a beam held at both ends across the opening (statics), F11.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/plate/bending_steps.h"
#include "checks/plate/strips.h"
#include "checks/post/filler.h"
#include "checks/registry.h"
#include "demand/governing_state.h"
#include "mechanics/plate_strip/closed_cut.h"
#include "resistance/aluminum/member.h"
#include "resistance/steel/connecting_element.h"
#include "resistance/steel/weld_line.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

using format::phrase;

namespace steel = resistance::steel;

/// A cut as a line, with the bending span of each of its places: 0 where the metal there is no narrow strip.
struct CutLine {
    double offset_in = 0.0;
    double narrowest_in = 0.0;
    steel::WeldLine line;
    std::vector<double> span_in;  ///< one for every place of the line
};

CutLine line_of(const mechanics::ClosedCut& cut) {
    constexpr double narrow = 2.0;
    std::vector<steel::WeldSegment> segments;
    CutLine result{cut.offset_in, cut.pieces.front().length_in, {}, {}};
    for (const mechanics::CutPiece& piece : cut.pieces) {
        const bool beam = piece.between_openings && piece.length_in <= narrow * piece.across_in;
        for (std::size_t at = 0; at + 1 < piece.places.size(); ++at) {
            segments.push_back({piece.places[at], piece.places[at + 1]});
            result.span_in.insert(result.span_in.end(), 2, beam ? piece.across_in : 0.0);
        }
        result.narrowest_in = std::min(result.narrowest_in, piece.length_in);
    }
    result.line = steel::weld_line(segments);
    return result;
}

/// Usable, lb/in and lb.
struct Strength {
    double shear = 0.0;
    Capacity moment;  ///< per inch of width
    std::vector<Step> steps;
};

Strength strength_of(const CheckInput& input) {
    const catalog::Metal& metal = on_deck(input.resolved).plate_metal;
    const model::Basis& basis = input.resolved.detail.basis;
    const Welding welding{post_foot(input.resolved.detail.post).welded, weld_filler(input.resolved),
                          on_deck(input.resolved.detail).plate.thickness_in};
    Strength strength;
    strength.moment = plate_moment(metal, 1.0, welding, basis);
    if (!strength.moment.missing.empty()) return strength;
    const BesideWeld used = strengths(metal, welding);
    const bool in_aluminum = metal.kind == catalog::MetalKind::aluminum;
    const std::string clause =
        in_aluminum ? "Aluminum Design Manual 2020 G (from memory)" : steel_clause(metal, "AISC 360-16 J4.2");
    const double yield = steel::shear_yield_lb_per_in(welding.thickness_in, used.yield_psi);
    const double rupture = steel::shear_rupture_lb_per_in(welding.thickness_in, used.ultimate_psi);
    const Adjusted yielding =
        available(yield, in_aluminum ? resistance::aluminum::yield_safety : steel::shear_yield_safety, basis, clause);
    const Adjusted breaking = available(
        rupture, in_aluminum ? resistance::aluminum::rupture_safety : steel::element_rupture_safety, basis, clause);
    strength.shear = std::min(yielding.value, breaking.value);
    strength.steps = {
        yield_step(metal, used),
        ultimate_step(metal, used),
        {"r_vy", phrase("nominal shear yielding through the plate"), "0.60 F_y t", yield, "lb/in", clause}};
    append(strength.steps, yielding.steps);
    strength.steps.push_back(
        {"r_vu", phrase("nominal shear rupture through the plate"), "0.60 F_u t", rupture, "lb/in", clause});
    append(strength.steps, breaking.steps);
    return strength;
}

/// The share of the strength used at a place, and the force there.
struct Use {
    double share = 0.0;
    double force_lb_per_in = 0.0;
    double span_in = 0.0;
};

Use worst_use(const CutLine& cut, const Strength& strength, const demand::Demand& demand, const demand::State& state) {
    const demand::LoadCase load = load_case(demand, state);
    const std::vector<steel::WeldIntensity> forces = steel::intensities(
        cut.line, {push_moment(demand, state).total_lb_in, state.direction_rad, load.push_lb, load.down_lb});
    Use worst;
    for (std::size_t at = 0; at < forces.size(); ++at) {
        const double force = forces[at].normal();
        const double bent = strength.moment.value > 0.0 ? 0.5 * force * cut.span_in[at] / strength.moment.value : 0.0;
        const double share = std::max(force / strength.shear, bent);
        if (share > worst.share) worst = {share, force, cut.span_in[at]};
    }
    return worst;
}

CheckResult empty_result() {
    CheckResult result;
    result.part = {model::PartKind::plate};
    result.clause = "AISC 360-16 J4.2, F11; closed cut, statics";
    result.unit = "lb/in";
    return result;
}

CheckResult result_of(const CheckInput& input, const std::vector<CutLine>& cuts) {
    CheckResult result = empty_result();
    const Strength strength = strength_of(input);
    if (!strength.moment.missing.empty()) {
        lacks_evidence(result, strength.moment.missing);
        return result;
    }
    Use worst;
    const CutLine* at = &cuts.front();
    for (const CutLine& cut : cuts) {
        const demand::GoverningState governing = demand::governing_state(input.demand, [&](const demand::State& state) {
            return worst_use(cut, strength, input.demand, state).share;
        });
        const demand::State& state = input.demand.states.at(governing.state);
        const Use use = worst_use(cut, strength, input.demand, state);
        if (use.share <= worst.share) continue;
        worst = use;
        at = &cut;
        result.direction_deg = degrees(state.direction_rad);
    }
    if (!(worst.share > 0.0)) return result;
    result.demand = worst.force_lb_per_in;
    result.capacity = worst.force_lb_per_in / worst.share;
    result.note = phrase(
        "The cut runs around the post at one distance from it, through openings that no washer covers; all of the push "
        "crosses the metal between them.");
    result.steps = {from_file("c", phrase("distance of the cut from the post"), at->offset_in, "in"),
                    {"L", phrase("metal along the cut"), "measured", at->line.length_in, "in", ""},
                    {"b", phrase("narrowest piece of it"), "measured", at->narrowest_in, "in", ""},
                    {"f", phrase("force across the plate at the worst place"), "M and P on the cut as a line",
                     worst.force_lb_per_in, "lb/in", "common practice"}};
    append(result.steps, strength.steps);
    if (worst.span_in > 0.0) {
        result.steps.push_back(
            {"g", phrase("width of the openings beside it, away from the post"), "measured", worst.span_in, "in", ""});
        result.steps.push_back({"m", phrase("bending of the metal between openings"), "f g / 2",
                                0.5 * worst.force_lb_per_in * worst.span_in, "lb", "statics"});
        result.steps.push_back(
            {"m_c", phrase("available moment per unit width"), "M_c / w", strength.moment.value, "lb", ""});
    }
    result.steps.push_back({"f_c", phrase("force at which it is fully used, in shear or bending"), "least of both",
                            result.capacity, "lb/in", ""});
    conclude(result);
    return result;
}

std::vector<CheckResult> plate_ligaments(const CheckInput& input) {
    const PlateStrips strips = plate_strips(input, post_foot(input.resolved.detail.post));
    std::vector<CutLine> lines;
    for (const mechanics::ClosedCut& cut :
         mechanics::closed_cuts(strips.foot, strips.plate.outline, open_holes(strips))) {
        if (cut.pieces.empty()) {
            CheckResult result = empty_result();
            nothing_resists(result, 1.0, "lb/in", phrase("Openings cut the post off from the rest of the plate."));
            return {result};
        }
        lines.push_back(line_of(cut));
    }
    if (lines.empty()) return {};
    return {result_of(input, lines)};
}

const RegisterCheck registered{
    {"plate-ligaments", phrase("Metal between openings around the post"), "AISC 360-16 J4.2, F11; closed cut, statics",
     phrase("What slots and holes around the post leave between it and the rest of the plate, in shear and bending."),
     plate_ligaments},
    {model::MountKind::plate_on_deck}};

}  // namespace
}  // namespace toehold::checks
