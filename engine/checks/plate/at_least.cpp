// What plate bending asks for at least, whatever further states there are. The check chooses a state by its strips and
// judges it by the better of strip and moment field: under more states another may be chosen, that needs less, so its
// own results are no bound. The straight yield lines are one:
//
//   1. The check also judges the state whose tensions need the most of any straight line, and keeps the worse of the
//      two (needs.cpp). Under more states that most is no smaller.
//   2. It never asks less of that state than the worst yield pattern needs under the same loads, and the straight lines
//      are some of the patterns.
#include "checks/at_least.h"
#include "catalog/resolve.h"
#include "checks/plate/bending_steps.h"
#include "checks/plate/limit.h"
#include "checks/post/filler.h"
#include "checks/post/foot.h"

namespace toehold::checks {
namespace {

std::vector<CheckResult> plate_bending_at_least(const CheckInput& input) {
    const PostFoot foot = post_foot(input.resolved.detail.post);
    const PlateGeometry geometry = plate_geometry(input.resolved, foot);
    const double thickness_in = on_deck(input.resolved.detail).plate.thickness_in;
    const Capacity per_width =
        plate_moment(on_deck(input.resolved).plate_metal, 1.0, {foot.welded, weld_filler(input.resolved), thickness_in},
                     input.resolved.detail.basis);
    CheckResult result;
    result.part = {model::PartKind::plate, {}, model::PartPiece::at_anchors};
    result.unit = "lb";
    result.demand =
        most_needed_of_a_line(input.demand, geometry, mechanics::yield_lines(geometry.foot, geometry.plate)).moment_lb;
    if (take_capacity(result, per_width)) conclude(result);
    return {result};
}

const RegisterAtLeast of_plate_bending{"plate-bending", plate_bending_at_least};

}  // namespace
}  // namespace toehold::checks
