#pragma once
// Where the parts of a post on a member's side stand, for all of its drawings. x along the rail, y outward, z up with 0
// at the member's top edge at the post's axis.
#include "drawing/drawings.h"
#include "drawing/section/fastener.h"
#include "model/base_detail.h"
#include "model/member.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::drawing::side {

/// From one coordinate to another, low <= high.
struct Span {
    double low_in = 0.0, high_in = 0.0;
};
[[nodiscard]] Span span(double one_in, double other_in);

struct Shape {
    const model::SideFastened& mount;
    model::Footprint post;        ///< the post's section
    double towards_y = -1.0;      ///< the member lies this way from the post
    double back_in = 0.0;         ///< y of the post's face away from the member
    double post_face_in = 0.0;    ///< y of its face towards the member; the notch's where there is one
    double member_face_in = 0.0;  ///< y of the member's face that the post lies against
    double post_low_in = 0.0;     ///< z of the post's lower end
    double bears_low_in = 0.0;    ///< z of the lowest place where the post can bear on the member
    double slope = 0.0;           ///< rise over run of a stringer's edges, 0 of a level member
    double depth_in = 0.0;        ///< of the member, plumb: below z = 0 at the axis; 0: not described
    double cut_away_in = 0.0;     ///< of a stringer, plumb: above its edge, cut for treads and risers
    std::optional<model::Member> member;
};
[[nodiscard]] Shape shape(const model::BaseDetail& detail);

/// y of the member's outward face, where the deck's boards end; of the post's axis where no member is described.
[[nodiscard]] double outward_face_in(const Shape& shape);
/// z of the member's top edge at this x.
[[nodiscard]] double top_edge_in(const Shape& shape, double x_in);
/// z of the bracket plate's lower and upper edge; of the post's overlap without one.
[[nodiscard]] Span seat_heights_in(const Shape& shape);
/// Half the width, along x, of what lies against the member: the bracket plate or the post.
[[nodiscard]] double seat_half_width_in(const Shape& shape);
/// y of a layer's two faces, by its number in the mount, and the heights it covers.
[[nodiscard]] Span layer_y_in(const Shape& shape, std::size_t layer);
[[nodiscard]] Span layer_heights_in(const Shape& shape, std::size_t layer);

/// A place up the face with what fastens there, where it is resolved.
struct Fixing {
    std::string id;
    double x_in = 0.0, z_in = 0.0;
    const catalog::Anchor* anchor = nullptr;
};
/// In the mount's order.
[[nodiscard]] std::vector<Fixing> fixings(const Subject& subject);

/// Stations of a level anchor from the near face of the member the post lies against: out of the member is up.
[[nodiscard]] AnchorStations level_stations(const catalog::Resolved& resolved, const catalog::Anchor& anchor);
/// y of such a station.
[[nodiscard]] double station_y_in(const Shape& shape, double station_in);
/// What is under head and nut as seen along the rail, its size up the face.
[[nodiscard]] Bearer under_head_upright(const catalog::Anchor& anchor);
[[nodiscard]] Bearer under_nut_upright(const catalog::Anchor& anchor);
/// The same as seen from above, its size along the rail.
[[nodiscard]] Bearer under_head_across(const catalog::Anchor& anchor);
[[nodiscard]] Bearer under_nut_across(const catalog::Anchor& anchor);

/// The joist or block a tie goes back to; absent where the framing has none of that id.
[[nodiscard]] std::optional<model::Member> holder(const model::BaseDetail& detail, const model::TensionTie& tie);
[[nodiscard]] model::PartId tie_part(const model::TensionTie& tie);

/// The member the post lies against.
[[nodiscard]] model::PartId member_part(const Shape& shape);

}  // namespace toehold::drawing::side
