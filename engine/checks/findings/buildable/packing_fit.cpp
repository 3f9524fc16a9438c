// Packing through the boards that hangs over the plate's edge or over the framing, overlaps, leaves its anchor no wall
// or stands too tall for its width.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/findings/buildable/fit.h"
#include "checks/registry.h"
#include "demand/plate_on_deck/packing.h"
#include "model/placement.h"
#include "units/limit.h"

#include <algorithm>

namespace toehold::checks {
namespace {

using demand::PackingPiece;
using format::Dimension;
using format::phrase;

const model::PartId packing_part{model::PartKind::packing};
constexpr double flush_in = 1e-6;  // of a size that two doubles may differ by

std::vector<model::Position> corners(const model::PlanRectangle& box) {
    return {{box.x_min_in, box.y_min_in},
            {box.x_max_in, box.y_min_in},
            {box.x_max_in, box.y_max_in},
            {box.x_min_in, box.y_max_in}};
}

/// The part of the piece on members, as a share of its area.
double on_framing(const catalog::Resolved& resolved, const model::PlanRectangle& box) {
    double sum = 0.0;
    for (const model::Member& member : model::members(resolved.detail.framing)) {
        const model::PlanRectangle place = model::plan(member);
        const double x = std::min(box.x_max_in, place.x_max_in) - std::max(box.x_min_in, place.x_min_in);
        const double y = std::min(box.y_max_in, place.y_max_in) - std::max(box.y_min_in, place.y_min_in);
        if (x > 0.0 && y > 0.0) sum += x * y;
    }
    return sum / ((box.x_max_in - box.x_min_in) * (box.y_max_in - box.y_min_in));
}

void look_at_place(std::vector<Finding>& findings, const catalog::Resolved& resolved, const PackingPiece& piece) {
    const model::Outline& outline = on_deck(resolved.detail).plate.outline;
    const std::vector<model::Position> all = corners(piece.covers);
    const bool beyond = std::any_of(all.begin(), all.end(), [&](model::Position corner) {
        return model::edge_distance_in(outline, corner) < -flush_in;
    });
    if (beyond) {
        findings.push_back(
            finding_on(packing_part, Severity::caution,
                       phrase("The packing at x = {}, y = {} reaches past the plate's edge. Only what lies "
                              "under the plate is counted.",
                              Dimension{piece.center.x_in}, Dimension{piece.center.y_in})));
    }
    constexpr double all_of_it = 0.999;
    const double share = on_framing(resolved, piece.covers);
    if (share >= all_of_it) return;
    findings.push_back(finding_on(
        packing_part, Severity::fails,
        phrase("The packing at x = {}, y = {} is not wholly on the framing: {:.0f} % of it has wood below. Move "
               "it, or add a block under it.",
               Dimension{piece.center.x_in}, Dimension{piece.center.y_in}, 100.0 * share)));
}

/// A short post of a height over its least width above this is no packing any more.
constexpr double tallest = 1.5;

void look_at_shape(std::vector<Finding>& findings, const model::Packing& packing, double height_in) {
    const bool round = packing.shape == model::PackingShape::round;
    const double least_in = round ? packing.width_in : std::min(packing.width_in, packing.depth_in);
    if (units::at_most(height_in, tallest * least_in)) return;
    findings.push_back(finding_on(packing_part, Severity::fails,
                                  phrase("The packing is {} high and {} wide: it can tip over. Use pieces at least {} "
                                         "wide.",
                                         Dimension{height_in}, Dimension{least_in}, Dimension{height_in / tallest}),
                                  "common practice"));
}

void look_at_wall(std::vector<Finding>& findings, const PackingPiece& piece) {
    constexpr double least_solid = 0.5;
    if (piece.solid >= least_solid) return;
    findings.push_back(finding_on(
        packing_part, Severity::fails,
        phrase("The anchor's hole takes more than half of the packing at x = {}, y = {}. Use larger packing.",
               Dimension{piece.center.x_in}, Dimension{piece.center.y_in})));
}

bool overlap(const model::PlanRectangle& one, const model::PlanRectangle& other) {
    const auto meet = [](double end_in, double begin_in) { return !units::at_most(end_in, begin_in); };
    return meet(std::min(one.x_max_in, other.x_max_in), std::max(one.x_min_in, other.x_min_in)) &&
           meet(std::min(one.y_max_in, other.y_max_in), std::max(one.y_min_in, other.y_min_in));
}

std::vector<Finding> packing_fit(const catalog::Resolved& resolved) {
    std::vector<Finding> findings;
    const model::Layers& layers = on_deck(resolved.detail).layers;
    if (!layers.packing || !layers.decking) return findings;
    look_at_shape(findings, *layers.packing, layers.decking->thickness_in);
    const std::vector<PackingPiece> pieces = demand::packing_pieces(resolved);
    for (std::size_t index = 0; index < pieces.size(); ++index) {
        look_at_place(findings, resolved, pieces[index]);
        look_at_wall(findings, pieces[index]);
        for (std::size_t other = index + 1; other < pieces.size(); ++other) {
            if (!overlap(pieces[index].covers, pieces[other].covers)) continue;
            findings.push_back(
                finding_on(packing_part, Severity::fails,
                           phrase("Two pieces of packing overlap at x = {}, y = {}. Use smaller pieces or "
                                  "fewer places.",
                                  Dimension{pieces[other].center.x_in}, Dimension{pieces[other].center.y_in})));
        }
    }
    return findings;
}

const RegisterFinding registered{{"packing-fit", phrase("Packing that does not fit"), "geometry", packing_fit},
                                 {model::MountKind::plate_on_deck},
                                 Cause::geometry};

}  // namespace
}  // namespace toehold::checks
