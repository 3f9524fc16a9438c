#include "model/validate_anchors.h"

#include "model/validate_side.h"

#include <algorithm>
#include <map>

namespace toehold::model {
namespace {

using format::phrase;
using format::verbatim;

void check_fastener(ProblemList& problems, const LagScrew& screw) {
    problems.positive(phrase("length (in)"), screw.length_in, 36.0);
    if (screw.thread_length_in)
        problems.between(phrase("thread length (in)"), *screw.thread_length_in, 0.0, screw.length_in);
}

void check_fastener(ProblemList& problems, const WoodScrew& screw) {
    problems.positive(phrase("length (in)"), screw.length_in, 36.0);
    if (screw.thread_length_in)
        problems.between(phrase("thread length (in)"), *screw.thread_length_in, 0.0, screw.length_in);
}

void check_fastener(ProblemList& problems, const LowerPlate& plate) {
    problems.between(phrase("lower plate x (in)"), plate.center.x_in, -largest_length_in, largest_length_in);
    problems.between(phrase("lower plate y (in)"), plate.center.y_in, -largest_length_in, largest_length_in);
    problems.positive(phrase("lower plate width (in)"), plate.width_in, 120.0);
    problems.positive(phrase("lower plate depth (in)"), plate.depth_in, 120.0);
    problems.positive(phrase("lower plate thickness (in)"), plate.thickness_in, 12.0);
    if (plate.shape == LowerShape::plate) return;
    problems.positive(phrase("lower plate leg (in)"), plate.leg_in, 24.0);
    const double across_in = std::min(plate.width_in, plate.depth_in);
    const double legs = plate.shape == LowerShape::channel ? 2.0 : 1.0;
    if (!(plate.leg_in > plate.thickness_in) || !(across_in > legs * plate.thickness_in)) {
        problems.add(phrase("the legs of the lower plate are thicker than they are long"),
                     phrase("a leg, and a face across it, longer than the thickness of the legs"));
    }
}

void check_fastener(ProblemList& problems, const ThroughBolt& bolt) {
    if (bolt.length_in) problems.positive(phrase("length (in)"), *bolt.length_in, 48.0);
    if (bolt.thread_length_in)
        problems.between(phrase("thread length (in)"), *bolt.thread_length_in, 0.0, bolt.length_in.value_or(48.0));
    if (const auto* const lower = std::get_if<LowerPlate>(&bolt.below)) check_fastener(problems, *lower);
    const auto* backing = std::get_if<BackingPlate>(&bolt.below);
    if (backing == nullptr) return;
    problems.positive(phrase("backing plate width (in)"), backing->width_in, 48.0);
    problems.positive(phrase("backing plate depth (in)"), backing->depth_in, 48.0);
    problems.positive(phrase("backing plate thickness (in)"), backing->thickness_in, 12.0);
}

void check_fastener(ProblemList& problems, const ReportedFastener& fastener) {
    problems.positive(phrase("diameter (in)"), fastener.diameter_in, 4.0);
    problems.positive(phrase("length (in)"), fastener.length_in, 36.0);
    problems.between(phrase("thread length (in)"), fastener.thread_length_in, 0.0, fastener.length_in);
    problems.between(phrase("withdrawal (lb/in)"), fastener.withdrawal_lb_per_in, 0.0, 1e5);
    problems.between(phrase("tension (lb)"), fastener.tension_lb, 0.0, 1e6);
    problems.between(phrase("lateral (lb)"), fastener.lateral_lb, 0.0, 1e6);
    problems.between(phrase("minimum penetration (in)"), fastener.minimum_penetration_in, 0.0, 36.0);
    problems.between(phrase("minimum edge (in)"), fastener.minimum_edge_in, 0.0, 36.0);
    problems.between(phrase("minimum end (in)"), fastener.minimum_end_in, 0.0, 36.0);
    problems.between(phrase("minimum spacing (in)"), fastener.minimum_spacing_in, 0.0, 36.0);
}

bool up_a_face(const BaseDetail& detail) { return kind(detail.mount) == MountKind::side_fastened; }

void check_holes(ProblemList& problems, const BaseDetail& detail, const AnchorGroup& group,
                 std::map<std::string, int>& uses) {
    const std::vector<std::string> places = anchor_place_ids(detail);
    const bool up = up_a_face(detail);
    for (const std::string& hole : group.holes) {
        if (std::find(places.begin(), places.end(), hole) == places.end()) {
            problems.add(up ? phrase("an anchor without a place") : phrase("an anchor without a hole"),
                         up ? phrase("ids of places up the post's side") : phrase("ids of holes in the plate"),
                         verbatim(hole));
        }
        if (++uses[hole] == 1) continue;
        problems.add(up ? phrase("two anchors at one place") : phrase("two anchors in one hole"),
                     up ? phrase("each place named once") : phrase("each hole named once"), verbatim(hole));
    }
}

/// What only an anchor on a post's side may have.
void check_through_plate(ProblemList& problems, const AnchorGroup& group) {
    if (group.head_plate) {
        problems.add(phrase("a head plate belongs to a post fastened by its side"),
                     phrase("a washer between head and plate"));
    }
    if (!group.into.empty()) {
        problems.add(phrase("an anchor through a plate goes into the member under its hole"),
                     phrase("into left out, and a member under the hole"), verbatim(group.into));
    }
}

void check_group(ProblemList& problems, const BaseDetail& detail, const AnchorGroup& group) {
    if (group.preload_lb) problems.positive(phrase("preload (lb)"), *group.preload_lb, 1e5);
    if (up_a_face(detail)) {
        check_anchors_on_side(problems, detail, group);
    } else {
        check_through_plate(problems, group);
    }
}

void check_number_of_groups(ProblemList& problems, const BaseDetail& detail) {
    const std::vector<AnchorGroup>& groups = anchor_groups(detail);
    // Ties may hold a post's side alone.
    const bool needed = !up_a_face(detail) || !anchor_place_ids(detail).empty();
    problems.at("anchors");
    if (groups.empty() && needed)
        problems.add(phrase("no anchors are described"), phrase("one or more anchors elements"));
    const auto for_all_others =
        std::count_if(groups.begin(), groups.end(), [](const AnchorGroup& group) { return group.holes.empty(); });
    if (for_all_others <= 1) return;
    problems.add(up_a_face(detail)
                     ? phrase("two anchors elements name no places, so each would stand in every place left")
                     : phrase("two anchors elements name no holes, so each would fill every hole left"),
                 phrase("at most one without holes"));
}

}  // namespace

void check_anchors(ProblemList& problems, const BaseDetail& detail) {
    const std::vector<AnchorGroup>& groups = anchor_groups(detail);
    std::map<std::string, int> uses;
    for (std::size_t index = 0; index < groups.size(); ++index) {
        problems.at("anchors[" + std::to_string(index + 1) + "]");
        check_group(problems, detail, groups[index]);
        check_holes(problems, detail, groups[index], uses);
        std::visit([&](const auto& fastener) { check_fastener(problems, fastener); }, groups[index].fastener);
    }
    check_number_of_groups(problems, detail);
}

}  // namespace toehold::model
