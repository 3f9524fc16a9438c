#pragma once
// What a file says of a post fastened to the side of a member: a rim, an end joist, a block or a stair's stringer.
//
// Axes as of every mount: x along the rail, y outward, z up, inches. The origin is on the post's axis at the height of
// the top edge of the member it is fastened to, so that z = 0 is there and most of the mount lies below. Heights are
// given as the trade gives them, down from that edge: `below_top_in` is -z. On a stringer the edge is the one at the
// post's axis, and heights stay plumb. The member runs along the rail.
//
// What backs the member (a second ply, blocks behind it) and how those are tied to adjacent joists is the framing's:
// `Rim::plies`, `Block` with both its ends. The mount names the member it is fastened to and what ties go back to.
#include "model/anchor.h"
#include "model/layers.h"
#include "model/post.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::model {

/// Which face of the member the post lies against, as the deck sees it.
enum class MemberFace {
    outside,  ///< the post stands outside the deck; an outward push draws it off the member at its top
    inside,   ///< the post stands within the deck; an outward push presses it on the member at its top
};

/// A place where something fastens the post to the member.
struct SidePlace {
    std::string id;             ///< unique in the mount; the fastener there carries the same id
    double x_in = 0.0;          ///< from the post's axis, within the post's or its bracket's width
    double below_top_in = 0.0;  ///< down from the member's top edge, > 0; above the edge nothing can hold
    friend bool operator==(const SidePlace&, const SidePlace&) = default;
};

/// A tension tie, hold-down or angle with values from its evaluation report: it hangs on the post and goes back past
/// the member to a joist or block. ASD values, adjusted by the user as the report says. It hangs by its own fasteners,
/// or by a bolt of the mount: that bolt then draws on the tie and not on the member, which it only crosses.
struct TensionTie {
    std::string id;              ///< unique in the mount, beside the places' ids
    std::string name;            ///< the user's own name for it
    std::string report;          ///< which report, edition and table; never empty
    double x_in = 0.0;           ///< of its line of force from the post's axis
    double below_top_in = 0.0;   ///< of that line below the member's top edge; < 0: above it
    double tension_lb = 0.0;     ///< allowable along y, > 0
    double deflection_in = 0.0;  ///< at `tension_lb`, as the report gives it, > 0; its stiffness follows
    std::string into;            ///< id of the joist or block that takes the force; never empty
    /// Id of the place whose through-bolt hangs it on the post; the tie's line of force is then that bolt's. Empty:
    /// none.
    std::string bolt = {};
    /// From its line of force to the side face of the member it is fastened to: what bends that member sideways. >= 0
    double eccentricity_in = 0.0;
    /// False: no tie is chosen yet, and `tension_lb` and `deflection_in` are what its report must give at least and at
    /// most; `report` may then be empty.
    bool chosen = true;
    friend bool operator==(const TensionTie&, const TensionTie&) = default;
};

/// Between post and member: siding, sheathing or a spacer. The fasteners cross it without being held by it.
struct SideLayer {
    std::string material;       ///< catalog id of a decking material
    double thickness_in = 0.0;  ///< > 0
    /// Heights it covers, down from the member's top edge: only there does the post bear. Absent: all of the overlap.
    std::optional<double> from_below_top_in = std::nullopt;  ///< its upper edge, >= 0
    std::optional<double> to_below_top_in = std::nullopt;    ///< its lower edge, > upper
    friend bool operator==(const SideLayer&, const SideLayer&) = default;
};

/// Cut out of the post so that it sits on and against the member.
struct PostNotch {
    double depth_in = 0.0;      ///< along y, > 0, less than the post's depth
    double below_top_in = 0.0;  ///< of the notch's shoulder below the member's top edge; < 0: above it
    friend bool operator==(const PostNotch&, const PostNotch&) = default;
};

/// A stair's stringer in place of a level member. In the framing it stands as a level member of its own depth square to
/// the slope.
struct StringerSlope {
    double angle_deg = 0.0;  ///< of its run from level, > 0, <= 60, rising towards +x; its grain follows it
    double effective_depth_in =
        0.0;  ///< square to the slope, below the cut of treads and risers; > 0, at most its depth
    /// What keeps it from moving sideways at the post, as the user states it; empty: not stated, which is a finding.
    std::string braced_by = {};
    friend bool operator==(const StringerSlope&, const StringerSlope&) = default;
};

/// A metal post's plate that lies against the member in place of the post itself, which is welded to its middle.
struct BracketPlate {
    double width_in = 0.0;         ///< along x, at least the post's width
    double height_in = 0.0;        ///< up the face, > 0
    double from_top_in = 0.0;      ///< of its upper edge below the member's top edge; < 0: above it
    double thickness_in = 0.0;     ///< > 0
    std::string metal;             ///< catalog id
    double weld_leg_in = 0.0;      ///< of the fillets on both sides of the post, down the plate's height, > 0
    std::string filler;            ///< catalog id
    double hole_over_in = 0.0625;  ///< of its holes over the fasteners' diameter, > 0
    friend bool operator==(const BracketPlate&, const BracketPlate&) = default;
};

/// A post against the side of a member, held by fasteners up the face.
struct SideFastened {
    std::string member;  ///< id of the rim, joist or block the post is fastened to
    MemberFace face = MemberFace::outside;
    /// Lower end of the post below the member's top edge, > 0; overlap ends there or at the member's lower edge.
    double post_bottom_below_top_in = 0.0;
    std::vector<SidePlace> places;
    std::vector<AnchorGroup> anchors;  ///< what stands in the places; `AnchorGroup::holes` names places
    std::vector<TensionTie> ties;
    std::vector<SideLayer> layers;  ///< from the member to the post
    std::optional<BracketPlate> bracket = std::nullopt;
    std::optional<PostNotch> notch = std::nullopt;
    std::optional<StringerSlope> stringer = std::nullopt;
    std::optional<Decking> decking = std::nullopt;  ///< the boards over the framing
    bool boards_brace_member = false;  ///< count the boards' fasteners against the member's moving at its top
    friend bool operator==(const SideFastened&, const SideFastened&) = default;
};

}  // namespace toehold::model
