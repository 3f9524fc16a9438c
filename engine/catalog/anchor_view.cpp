#include "catalog/anchor_view.h"

namespace toehold::catalog {

bool lies_level(const Anchor& anchor) { return anchor.axis.z == 0.0; }

model::Position seen(const Anchor& anchor) { return seen(anchor, anchor.at); }

model::Position seen(const Anchor& anchor, const model::Place& place) {
    return {place.x_in, lies_level(anchor) ? place.z_in : place.y_in};
}

model::Member seen_member(const Resolved& resolved, const Anchor& anchor, std::size_t member) {
    model::Member from_above = model::member(resolved.detail.framing, member);
    if (!lies_level(anchor)) return from_above;
    model::Member on_its_side = from_above;
    on_its_side.across_in = -0.5 * from_above.depth_in;
    on_its_side.width_in = from_above.depth_in;
    on_its_side.depth_in = from_above.width_in;
    on_its_side.plies = from_above.stack;
    on_its_side.stack = from_above.plies;
    on_its_side.stack_fastened = true;
    return on_its_side;
}

model::Member seen_member(const Resolved& resolved, const Anchor& anchor) {
    return seen_member(resolved, anchor, anchor.seat.value().member);
}

}  // namespace toehold::catalog
