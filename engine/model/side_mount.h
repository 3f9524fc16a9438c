#pragma once
// A draft, named by nothing yet: the second kind of mount, a post fastened to the side of a member. When it joins
// `Mount`, this is what the file says; `demand/side_fastened` makes `mechanics::SidePost` of it.
//
// Axes as of every mount: x along the rail, y outward, z up, inches. The origin is on the post's axis at the height of
// the top edge of the member it is fastened to, so that z = 0 is there and most of the mount lies below. Heights are
// given as the trade gives them, down from that edge: `below_top_in` is -z. On a stringer the edge is the one at the
// post's axis, and heights stay plumb.
//
// What backs the member (a second ply, blocks in its corner with a joist, blocks to the next joist) and how those are
// tied to adjacent joists is the framing's: `Rim::plies`, `Block` with both its ends, each `EndConnection`. The mount
// only names the member it is fastened to and whatever ties go back past it.
#include "model/anchor.h"
#include "model/layers.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::model {

/// Which face of the member the post lies against, as the deck sees it.
enum class MemberFace {
    outside,  ///< the post stands outside the deck; an outward push leaves the member at its top
    inside,   ///< within the deck, between joists; an outward push presses the member at its top
};

/// A place where something fastens the post to the member.
struct SidePlace {
    std::string id;             ///< unique in the mount; the fastener there carries the same id
    double x_in = 0.0;          ///< from the post's axis, within the post's or its plate's width
    double below_top_in = 0.0;  ///< down from the member's top edge, > 0; above the edge nothing can hold
    friend bool operator==(const SidePlace&, const SidePlace&) = default;
};

/// Where a fastener is driven from: its head, or the head of a bolt, lies there.
enum class DrivenFrom {
    post,    ///< through the post into, or through, the member
    member,  ///< from the member's other face into, or through, the post
};

/// How the groups of fasteners stand, one entry a group of `SideFastened::anchors`, in its order.
struct SideDriving {
    DrivenFrom from = DrivenFrom::post;
    /// One metal plate under the heads of the group's fasteners, in place of their washers: its width along x, its
    /// depth up the face. The plate or washer below a bolt's nut is `ThroughBolt::below`, read the same way.
    std::optional<BackingPlate> head_plate = std::nullopt;
    /// Fastened into the member alone, or, where named, through it into this block or joist behind (a threaded rod or
    /// a long screw): the force goes there and not into the member.
    std::string into = {};
    friend bool operator==(const SideDriving&, const SideDriving&) = default;
};

/// A tension tie, hold-down or bracket with values from its evaluation report: it hangs on the post by its own bolt or
/// screws and goes back past the member to a joist or block. Values are ASD, adjusted by the user as the report says.
struct TensionTie {
    std::string id;              ///< unique in the mount, beside the places' ids
    std::string name;            ///< the user's own name for it
    std::string report;          ///< which report, edition and table; never empty
    double x_in = 0.0;           ///< of its line of force from the post's axis
    double below_top_in = 0.0;   ///< of that line below the member's top edge; < 0: above it
    double tension_lb = 0.0;     ///< allowable along y, > 0
    double along_lb = 0.0;       ///< allowable along the rail; 0: none
    double vertical_lb = 0.0;    ///< allowable up or down; 0: none
    double deflection_in = 0.0;  ///< at `tension_lb`, as the report gives it, > 0; its stiffness follows
    double gap_in = 0.0;         ///< play before it pulls, >= 0: none where it is set tight
    std::string into;            ///< id of the joist or block that takes the force; never empty
    /// Of its line of force from that member's side face it is fastened to: bends the member sideways. >= 0
    double eccentricity_in = 0.0;
    friend bool operator==(const TensionTie&, const TensionTie&) = default;
};

/// Between post and member: siding, sheathing, a spacer block or a stack of washers. Layers are listed from the member
/// to the post; the fasteners cross them all as a gap without bearing strength.
struct SideLayer {
    std::string material;       ///< catalog id of a decking material, or of a species for wood across its grain
    double thickness_in = 0.0;  ///< > 0
    /// Heights it covers, down from the member's top edge: only there does the post bear. Absent: all of the overlap.
    std::optional<double> from_below_top_in = std::nullopt;  ///< its upper edge, >= 0
    std::optional<double> to_below_top_in = std::nullopt;    ///< its lower edge, > upper
    double gap_in = 0.0;  ///< left open however tight the fasteners (furring, drainage), >= 0
    friend bool operator==(const SideLayer&, const SideLayer&) = default;
};

/// Cut out of the post so that it sits on and against the member. The codes forbid it for nominal 4x4 guard posts at
/// their connection (IRC 2021 R507.10.2, seen in a transcription): a finding that fails, and its strength is that of
/// the section that is left.
struct PostNotch {
    double depth_in = 0.0;      ///< along y, > 0, less than the post's depth
    double below_top_in = 0.0;  ///< of the notch's shoulder below the member's top edge; < 0: above it, on the decking
    friend bool operator==(const PostNotch&, const PostNotch&) = default;
};

/// A stair stringer in place of a level member.
struct StringerSlope {
    double angle_deg = 0.0;           ///< of its run from level, > 0, < 60, rising towards +x; its grain follows it
    double depth_in = 0.0;            ///< square to its slope, actual, at the post
    double effective_depth_in = 0.0;  ///< of it below the cut of treads and risers; equal to `depth_in` where uncut
    /// What keeps it from moving sideways at the post (a tread, a block to the other stringer), as the user states it;
    /// empty: not stated, which is a finding.
    std::string braced_by = {};
    friend bool operator==(const StringerSlope&, const StringerSlope&) = default;
};

/// A post against the side of a member, held by fasteners up the face.
struct SideFastened {
    std::string member;  ///< id of the rim, joist or block the post is fastened to; the stringer's own id on a stair
    MemberFace face = MemberFace::outside;
    double post_bottom_below_top_in = 0.0;  ///< end of the post below the member's top edge, > 0; overlap ends there or
                                            ///< at the member's lower edge, whichever is higher
    std::vector<SidePlace> places;
    std::vector<AnchorGroup> anchors;  ///< what stands in the places; `AnchorGroup::holes` names places
    std::vector<SideDriving> driving;  ///< of each group of `anchors`; absent entries: from the post, washers only
    std::vector<TensionTie> ties;
    std::vector<SideLayer> layers;  ///< from the member to the post
    std::optional<PostNotch> notch;
    std::optional<StringerSlope> stringer;
    /// The boards over the framing: `below_surface_in` of the mount is their thickness, and their fasteners may hold
    /// the member's top, by choice.
    std::optional<Decking> decking;
    bool boards_brace_member = false;  ///< count the boards' fasteners against the member's rolling; else they do not
    friend bool operator==(const SideFastened&, const SideFastened&) = default;
};

}  // namespace toehold::model
