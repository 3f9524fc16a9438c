#include "model/follow_joint.h"

#include <algorithm>

namespace toehold::model {
namespace {

double along(Position by, PlanAxis axis) { return axis == PlanAxis::x ? by.x_in : by.y_in; }
PlanAxis square_to(PlanAxis axis) { return axis == PlanAxis::x ? PlanAxis::y : PlanAxis::x; }

void move_joists(Joists& joists, Position by) {
    for (Joist& joist : joists.members) joist.offset_in += along(by, square_to(joists.along));
    if (joists.from_in) *joists.from_in += along(by, joists.along);
    if (joists.to_in) *joists.to_in += along(by, joists.along);
}

/// Across the joists, at a place along them.
void move_rim(Rim& rim, PlanAxis joists_along, Position by) {
    rim.at_in += along(by, joists_along);
    rim.from_in += along(by, square_to(joists_along));
    rim.to_in += along(by, square_to(joists_along));
}

void move_block(Block& block, Position by) {
    block.from_in += along(by, block.along);
    block.to_in += along(by, block.along);
    block.across_in += along(by, square_to(block.along));
}

/// The member's center, and its pieces.
struct Pieces {
    double* center_in;
    int* plies;
    double each_in;
};

std::optional<Pieces> pieces_of(Framing& framing, const std::string& id) {
    for (Rim& rim : framing.rims)
        if (rim.id == id) return Pieces{&rim.at_in, &rim.plies, rim.width_in};
    if (!framing.joists) return std::nullopt;
    for (Joist& joist : framing.joists->members)
        if (joist.id == id) return Pieces{&joist.offset_in, &joist.plies, framing.joists->width_in};
    return std::nullopt;
}

}  // namespace

void move_framing(Framing& framing, Position by) {
    const PlanAxis joists_along = framing.joists ? framing.joists->along : PlanAxis::y;
    if (framing.joists) move_joists(*framing.joists, by);
    for (Rim& rim : framing.rims) move_rim(rim, joists_along, by);
    for (Block& block : framing.blocks) move_block(block, by);
    for (JoistSupport& support : framing.supports) support.at_in += along(by, joists_along);
}

void framing_follows(BaseDetail& detail, const SideJoint& before) {
    const SideJoint after = side_joint(detail);
    const double further_in = after.to_member_face_in - before.to_member_face_in;
    if (further_in != 0.0) move_framing(detail.framing, {0.0, after.towards_y * further_in});
}

bool set_plies(BaseDetail& detail, int plies) {
    const std::string id = on_side(detail).member;
    const std::optional<Pieces> now = pieces_of(detail.framing, id);
    if (!now || plies < 1 || plies > most_plies) return false;
    const SideJoint joint = side_joint(detail);
    const double further_in = (plies - *now->plies) * now->each_in;
    // Outside the deck the post stands before the whole framing; inside it only the member is beyond.
    if (on_side(detail).face == MemberFace::outside) move_framing(detail.framing, {0.0, joint.towards_y * further_in});
    *now->plies = plies;
    *now->center_in = member_center_in(joint, plies * now->each_in);
    return true;
}

}  // namespace toehold::model
