// What openings around the post leave between it and the rest of the plate: a cut right round the post, at one distance
// from it, carries all of the push. Its metal is taken as a line, elastic (common practice), and each inch of it held
// against shear through the thickness, AISC 360-16 J4.2, and, where it is a strip between two openings no wider than
// twice their width, against bending as a beam held at both ends across the opening (statics), F11.
#include "catalog/resolve.h"
#include "checks/basis/pushes.h"
#include "checks/basis/result_parts.h"
#include "checks/plate/bending_steps.h"
#include "checks/plate/plate_geometry.h"
#include "checks/post/filler.h"
#include "checks/registry.h"
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

/// The push that is worst for all places of a cut with one bending span: 0 where the metal there is no narrow strip.
struct WorstPlace {
    double span_in = 0.0;
    double force_lb_per_in = 0.0;
    std::size_t state = 0;
};

struct CutNeed {
    double offset_in = 0.0, length_in = 0.0, narrowest_in = 0.0;
    std::vector<WorstPlace> worst;
};

/// What the pushes ask of the metal, whatever it may take.
struct LigamentNeeds {
    bool cut_off = false;  ///< openings leave nothing between the post and the rest
    std::vector<CutNeed> cuts;
};

/// A cut as a line, with the bending span of each of its places.
struct CutLine {
    steel::WeldLine line;
    std::vector<double> span_in;  ///< one for every place of the line
};

CutLine line_of(const mechanics::ClosedCut& cut) {
    constexpr double narrow = 2.0;
    std::vector<steel::WeldSegment> segments;
    CutLine result;
    for (const mechanics::CutPiece& piece : cut.pieces) {
        const bool beam = piece.between_openings && piece.length_in <= narrow * piece.across_in;
        for (std::size_t at = 0; at + 1 < piece.places.size(); ++at) {
            segments.push_back({piece.places[at], piece.places[at + 1]});
            result.span_in.insert(result.span_in.end(), 2, beam ? piece.across_in : 0.0);
        }
    }
    result.line = steel::weld_line(segments);
    return result;
}

steel::WeldForces forces_of(const demand::Demand& demand, const demand::State& state) {
    const demand::ActingLoad load = demand::acting_load(demand, state);
    return {push_moment(demand, state).total_lb_in, state.direction_rad, load.push_lb, load.down_lb};
}

CutNeed need_of(const CheckInput& input, const mechanics::ClosedCut& cut) {
    const CutLine line = line_of(cut);
    CutNeed need{cut.offset_in, line.line.length_in, cut.pieces.front().length_in, {}};
    for (const mechanics::CutPiece& piece : cut.pieces)
        need.narrowest_in = std::min(need.narrowest_in, piece.length_in);
    const std::vector<steel::NormalShare> shares = steel::normal_shares(line.line);
    const auto all = pushes(input);
    for (const std::size_t index : all->states) {
        const steel::WeldForces forces = forces_of(input.demand, input.demand.states[index]);
        for (std::size_t at = 0; at < shares.size(); ++at) {
            const double force = steel::normal(shares[at], forces);
            auto worst = std::find_if(need.worst.begin(), need.worst.end(),
                                      [&](const WorstPlace& one) { return one.span_in == line.span_in[at]; });
            if (worst == need.worst.end()) worst = need.worst.insert(worst, WorstPlace{line.span_in[at], 0.0, index});
            if (force > worst->force_lb_per_in) *worst = {line.span_in[at], force, index};
        }
    }
    return need;
}

LigamentNeeds find_needs(const CheckInput& input) {
    const PlateGeometry geometry = plate_geometry(input.resolved, post_foot(input.resolved.detail.post));
    LigamentNeeds needs;
    for (const mechanics::ClosedCut& cut :
         mechanics::closed_cuts(geometry.foot, geometry.plate.outline, open_holes(geometry))) {
        needs.cut_off = needs.cut_off || cut.pieces.empty();
        if (!cut.pieces.empty()) needs.cuts.push_back(need_of(input, cut));
    }
    return needs;
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

/// The share of the strength used at a place.
double share_used(const WorstPlace& place, const Strength& strength) {
    const double bent =
        strength.moment.value > 0.0 ? 0.5 * place.force_lb_per_in * place.span_in / strength.moment.value : 0.0;
    return std::max(place.force_lb_per_in / strength.shear, bent);
}

CheckResult empty_result() {
    CheckResult result;
    result.part = {model::PartKind::plate};
    result.clause = "AISC 360-16 J4.2, F11; closed cut, statics";
    result.unit = "lb/in";
    return result;
}

CheckResult result_of(const CheckInput& input, const std::vector<CutNeed>& cuts) {
    CheckResult result = empty_result();
    const Strength strength = strength_of(input);
    if (!strength.moment.missing.empty()) {
        lacks_evidence(result, strength.moment.missing);
        return result;
    }
    WorstPlace worst;
    double share = 0.0;
    const CutNeed* at = &cuts.front();
    for (const CutNeed& cut : cuts) {
        for (const WorstPlace& place : cut.worst) {
            if (share_used(place, strength) <= share) continue;
            share = share_used(place, strength);
            worst = place;
            at = &cut;
        }
    }
    if (!(share > 0.0)) return result;
    result.direction_deg = degrees(input.demand.states.at(worst.state).direction_rad);
    result.demand = worst.force_lb_per_in;
    result.capacity = worst.force_lb_per_in / share;
    result.note = phrase(
        "The cut runs around the post at one distance from it, through openings that no washer covers; all of the push "
        "crosses the metal between them.");
    result.steps = {from_file("c", phrase("distance of the cut from the post"), at->offset_in, "in"),
                    {"L", phrase("metal along the cut"), "measured", at->length_in, "in", ""},
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
    const auto needs = input.once<LigamentNeeds>([&] { return find_needs(input); });
    if (needs->cut_off) {
        CheckResult result = empty_result();
        nothing_resists(result, 1.0, "lb/in", phrase("Openings cut the post off from the rest of the plate."));
        return {result};
    }
    if (needs->cuts.empty()) return {};
    return {result_of(input, needs->cuts)};
}

const RegisterCheck registered{
    {"plate-ligaments", phrase("Metal between openings around the post"), "AISC 360-16 J4.2, F11; closed cut, statics",
     phrase("What slots and holes around the post leave between it and the rest of the plate, in shear and bending."),
     plate_ligaments},
    {model::MountKind::plate_on_deck}};

}  // namespace
}  // namespace toehold::checks
