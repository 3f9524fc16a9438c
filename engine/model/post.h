#pragma once
// The post on the plate, and how it is joined to it. Widths are along x, depths along y, in inches.
#include "model/place.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace toehold::model {

/// Strengths of the very metal delivered, where its standard guarantees none.
struct Certificate {
    double yield_psi = 0.0;     ///< > 0
    double ultimate_psi = 0.0;  ///< >= yield
    std::string source;         ///< of the values, for instance a mill certificate's number; required
    friend bool operator==(const Certificate&, const Certificate&) = default;
};

enum class StubFixing { none, set_screws, through_bolt };

/// A short stub welded to the plate, over which a tube post slides: stub and post bear on each other at both ends of
/// the overlap. Of the post's form: rectangular in a rectangular tube, round in a round one.
struct Stub {
    double width_in = 0.0;                 ///< outside, along x, > 0; a round one's diameter
    double depth_in = 0.0;                 ///< outside, along y, > 0; a round one's diameter
    double wall_in = 0.0;                  ///< 0: a solid bar
    double height_in = 0.0;                ///< of its top above the plate's underside, > 0
    std::string metal;                     ///< catalog id
    StubFixing fixing = StubFixing::none;  ///< what keeps the post from lifting off
    friend bool operator==(const Stub&, const Stub&) = default;
};

/// Square or rectangular tube; square when both widths are equal. Corners are taken as square.
struct RectangularTube {
    double width_in = 0.0;  ///< outside, along x, > 0
    double depth_in = 0.0;  ///< outside, along y, > 0
    double wall_in = 0.0;   ///< > 0, less than half of either
    std::string metal;      ///< catalog id
    std::optional<Certificate> certificate = std::nullopt;
    std::optional<Stub> stub = std::nullopt;  ///< absent: the tube itself is welded to the plate
    friend bool operator==(const RectangularTube&, const RectangularTube&) = default;
};

struct RoundTube {
    double diameter_in = 0.0;  ///< outside, > 0
    double wall_in = 0.0;      ///< > 0, less than half the diameter
    std::string metal;
    std::optional<Certificate> certificate = std::nullopt;
    std::optional<Stub> stub = std::nullopt;
    friend bool operator==(const RoundTube&, const RoundTube&) = default;
};

/// A bar without a hollow: square, flat or round.
struct SolidBar {
    double width_in = 0.0;  ///< along x, > 0; a round one's diameter
    double depth_in = 0.0;  ///< along y, > 0; a round one's diameter
    bool round = false;
    std::string metal;
    friend bool operator==(const SolidBar&, const SolidBar&) = default;
};

/// Two equal flat bars side by side, each welded to the plate, with a clear gap between them. They count as two bars:
/// spacers hold their distance and do not make one section of them.
struct TwinBars {
    double width_in = 0.0;         ///< of one bar, along x, > 0
    double depth_in = 0.0;         ///< of one bar, along y, > 0
    double gap_in = 0.0;           ///< clear, > 0
    PlanAxis apart = PlanAxis::x;  ///< the axis along which the gap lies
    std::string metal;
    friend bool operator==(const TwinBars&, const TwinBars&) = default;
};

enum class ShoeAttachment { welded, bolted };
/// Closed: a sleeve that encloses the post on all four sides over its whole height, as a tube does.
enum class ShoeForm { not_stated, closed };

/// A metal sleeve or saddle on the plate that holds a wood post.
struct Shoe {
    ShoeAttachment attachment = ShoeAttachment::welded;  ///< of shoe to plate
    double width_in = 0.0;                               ///< outside, along x
    double depth_in = 0.0;                               ///< outside, along y
    double wall_in = 0.0;
    double height_in = 0.0;  ///< above the plate's underside
    std::string metal;
    /// Allowable moment from post to plate through the shoe, from an evaluation report or test; absent: by the shoe's
    /// geometry where it is closed and welded, else no evidence.
    std::optional<double> allowable_moment_lb_in;
    std::string moment_source;
    ShoeForm form = ShoeForm::not_stated;
    friend bool operator==(const Shoe&, const Shoe&) = default;
};

/// Solid post of wood, standing in a shoe or fastened by its side.
struct WoodPost {
    double width_in = 0.0;  ///< actual, along x
    double depth_in = 0.0;  ///< actual, along y
    std::string species;    ///< catalog id, or the id of one of `Framing::materials`
    std::string grade;      ///< catalog id; empty with a material of the file's own
    bool notched = false;   ///< cut away at the connection
    Shoe shoe;              ///< without a metal: none, as of a post fastened by its side
    std::string size = {};  ///< its name where the file has one, `4x4`; see lumber_size.h
    friend bool operator==(const WoodPost&, const WoodPost&) = default;
};

/// Whether a wood post's shoe is described.
[[nodiscard]] inline bool is_described(const Shoe& shoe) { return !shoe.metal.empty(); }

using Post = std::variant<RectangularTube, RoundTube, WoodPost, SolidBar, TwinBars>;

/// What stands on the plate, seen from above: the tube, its stub, the bar, both twin bars with their gap, or the
/// shoe; a wood post without one by itself.
struct Footprint {
    bool round = false;
    double width_in = 0.0;  ///< outside, along x
    double depth_in = 0.0;  ///< outside, along y
    double wall_in = 0.0;   ///< of a hollow one; half the lesser side of a solid bar
    friend bool operator==(const Footprint&, const Footprint&) = default;
};
[[nodiscard]] Footprint footprint(const Post& post);
/// Whether nothing is hollow within.
[[nodiscard]] bool is_solid(const Footprint& print);
/// The post above its foot, seen from above; a wood post's own section with wall 0.
[[nodiscard]] Footprint shaft(const Post& post);
/// What of the foot is welded by itself: the whole footprint, or each of twin bars with its center.
struct FootPiece {
    Footprint print;
    Position center;
    friend bool operator==(const FootPiece&, const FootPiece&) = default;
};
[[nodiscard]] std::vector<FootPiece> foot_pieces(const Post& post);
/// The stub a tube post slides over; nullptr where it has none.
[[nodiscard]] const Stub* stub_of(const Post& post);

enum class WeldKind {
    fillet,
    complete_penetration,  ///< groove through the whole wall
    partial_penetration    ///< groove with a stated throat
};
/// Both: the tube passes through the plate and is welded above and below it.
enum class WeldFaces { top, both };

/// Sides of a rectangular foot.
struct FootSides {
    bool outward = true;  ///< +y
    bool inward = true;   ///< -y
    bool right = true;    ///< +x
    bool left = true;     ///< -x
    friend bool operator==(const FootSides&, const FootSides&) = default;
};

/// Triangular stiffeners of the plate's metal, upright on the plate, one in the middle of each named side of the foot.
struct Gussets {
    FootSides sides;
    double height_in = 0.0;     ///< up the post, > 0
    double length_in = 0.0;     ///< along the plate, from the post's face, > 0
    double thickness_in = 0.0;  ///< > 0
    double leg_in = 0.0;        ///< of the fillets on both sides of it, to the post and to the plate, > 0
    friend bool operator==(const Gussets&, const Gussets&) = default;
};

/// The weld of the post's (or the shoe's) foot to the plate.
struct Weld {
    double leg_in = 0.0;  ///< of the fillet, > 0; of a groove's reinforcing fillet, which adds no strength, >= 0
    std::string filler;   ///< catalog id of the filler metal
    WeldKind kind = WeldKind::fillet;
    double throat_in = 0.0;  ///< effective, of a partial penetration groove alone, > 0 there, else 0
    WeldFaces faces = WeldFaces::top;
    FootSides sides = {};  ///< welded; a round foot is welded all round
    std::optional<Gussets> gussets = std::nullopt;
    friend bool operator==(const Weld&, const Weld&) = default;
};

[[nodiscard]] constexpr int count(const FootSides& sides) {
    return int{sides.outward} + int{sides.inward} + int{sides.right} + int{sides.left};
}

}  // namespace toehold::model
