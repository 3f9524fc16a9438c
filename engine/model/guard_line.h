#pragma once
// A line of guard: posts in order along one rail, and what the rail is. Which post stands at a corner or an end follows
// from the posts' places: `model/line_geometry.h`.
#include "model/post.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace toehold::model {

/// A rail of sawn wood.
struct WoodRail {
    double width_in = 0.0;  ///< actual, level across the rail, > 0
    double depth_in = 0.0;  ///< actual, upright (square to the rail where it slopes), > 0
    std::string species;    ///< catalog id, or the id of one of `Framing::materials`
    std::string grade;      ///< catalog id; empty with a material of the file's own
    std::string size = {};  ///< its name where the file has one, `2x6`; see lumber_size.h
    friend bool operator==(const WoodRail&, const WoodRail&) = default;
};

/// A section lying along the rail: its width is level across the rail, its depth upright. A tube as a rail has no stub.
using RailSection = std::variant<RectangularTube, RoundTube, SolidBar, WoodRail>;

enum class RailRun {
    continuous,  ///< in one piece over or past its posts; broken at `Rail::splices_in` alone
    broken,      ///< on top of or beside its posts, a joint at each post that carries no moment
    between      ///< let in between its posts, a joint at each face of each post that carries no moment
};

/// Of the rail to each post. Forces are allowable ones (ASD, basic load duration), of one connection, from an
/// evaluation report or the user's own design; 0: no evidence.
struct RailConnection {
    std::string name;
    std::string report;        ///< where the values come from; required as soon as one is given
    double across_lb = 0.0;    ///< level, square to the rail, either way, >= 0
    double along_lb = 0.0;     ///< level, along the rail, either way, >= 0
    double vertical_lb = 0.0;  ///< up or down, the lesser, >= 0
    /// Level, either way, lb/in, > 0; absent: taken as rigid, which whoever relies on it says.
    std::optional<double> stiffness_lb_per_in = std::nullopt;
    friend bool operator==(const RailConnection&, const RailConnection&) = default;
};

struct Rail {
    RailSection section;
    RailRun run = RailRun::broken;
    std::optional<RailConnection> connection = std::nullopt;  ///< absent: no evidence
    /// Welded, or mitered and joined, so that the rail carries moment in plan round its corners. Only of a continuous
    /// rail; false: every corner is a hinge.
    bool corners_rigid = false;
    /// Joints that carry force and no moment, in inches along the rail's centerline in plan from the line's first post,
    /// rising, each within the line. Only of a continuous rail.
    std::vector<double> splices_in = {};
    friend bool operator==(const Rail&, const Rail&) = default;
};

/// A rail that goes on beyond its first or last post to a wall, which holds it. Straight on in the last span's
/// direction.
struct WallEnd {
    double reach_in = 0.0;  ///< from the post's axis to the wall, along the rail in plan, > 0
    /// Of the rail to the wall; absent: no evidence, and the wall holds nothing.
    std::optional<RailConnection> connection = std::nullopt;
    friend bool operator==(const WallEnd&, const WallEnd&) = default;
};

enum class InfillKind { none, pickets, panels, glass, cables };

/// What fills the guard below the rail; for the wind on it and for the papers.
struct Infill {
    InfillKind kind = InfillKind::none;
    /// Solid area over gross area, 0 to 1; absent: not stated.
    std::optional<double> solid_ratio = std::nullopt;
    friend bool operator==(const Infill&, const Infill&) = default;
};

/// Posts in order along one rail.
struct GuardLine {
    std::string id;
    std::vector<std::string> posts;                    ///< ids of posts, two or more, each once
    std::optional<Rail> rail = std::nullopt;           ///< absent: not stated, every post is reviewed alone
    std::optional<WallEnd> first_wall = std::nullopt;  ///< beyond the first post; absent: the rail ends there
    std::optional<WallEnd> last_wall = std::nullopt;   ///< beyond the last post; absent: the rail ends there
    std::optional<Infill> infill = std::nullopt;       ///< absent: not stated
    /// Whether neighbors may be counted on for a push at one post. Only with a rail.
    bool sharing = false;
    friend bool operator==(const GuardLine&, const GuardLine&) = default;
};

}  // namespace toehold::model
