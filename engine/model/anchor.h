#pragma once
// The fasteners through the plate. A group gives one fastener to the holes it names; each hole has one anchor.
#include "model/place.h"
#include "model/threads.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace toehold::model {

/// Lag screw per ASME B18.2.1, driven from above into the blocking.
struct LagScrew {
    std::string size;                        ///< catalog id, for instance `lag-3/8`
    double length_in = 0.0;                  ///< under the head, tip included
    std::optional<double> thread_length_in;  ///< tip included; absent: the standard's minimum for the length
    friend bool operator==(const LagScrew&, const LagScrew&) = default;
};

/// Wood screw with cut thread, driven from above.
struct WoodScrew {
    std::string size;  ///< catalog id, for instance `wood-screw-14`
    double length_in = 0.0;
    std::optional<double> thread_length_in;  ///< absent: two thirds of the length
    friend bool operator==(const WoodScrew&, const WoodScrew&) = default;
};

/// A round washer by catalog id.
struct Washer {
    std::string size;
    friend bool operator==(const Washer&, const Washer&) = default;
};

/// One metal plate under the nut or the head of one bolt.
struct BackingPlate {
    double width_in = 0.0;  ///< along x
    double depth_in = 0.0;  ///< along y; of a bolt that lies level, up the face
    double thickness_in = 0.0;
    std::string metal;
    friend bool operator==(const BackingPlate&, const BackingPlate&) = default;
};

enum class LowerShape { plate, angle, channel };

/// One plate, angle or channel under the wood, below every bolt of its group. Its face lies against the wood from
/// below: the plate's, a leg of the angle, the web of the channel; what stands off that face points down. An angle or a
/// channel runs along the longer side of its face.
struct LowerPlate {
    LowerShape shape = LowerShape::plate;
    Position center;            ///< of its face, seen from above
    double width_in = 0.0;      ///< of its face along x
    double depth_in = 0.0;      ///< of its face along y
    double thickness_in = 0.0;  ///< of face and legs
    double leg_in = 0.0;        ///< from the face to the tip of the standing leg or flanges, overall; 0: a plate
    std::string metal;
    friend bool operator==(const LowerPlate&, const LowerPlate&) = default;
};

/// Which way an angle or a channel runs, or a plate is longer.
[[nodiscard]] PlanAxis runs_along(const LowerPlate& plate);

/// Bolt through plate, layers and block, nut below.
struct ThroughBolt {
    std::string size;   ///< catalog id, for instance `bolt-1/2`
    std::string grade;  ///< catalog id of the bolt grade, for instance `a307`
    /// What the nut bears on below; monostate: the nut bears on the wood itself.
    std::variant<std::monostate, Washer, BackingPlate, LowerPlate> below;
    std::optional<double> length_in = std::nullopt;         ///< under the head, > 0; absent: as long as it must be
    std::optional<double> thread_length_in = std::nullopt;  ///< absent: the standard's for the length
    /// Where the threads lie; counts where no length says it. Absent: included.
    std::optional<Threads> threads = std::nullopt;
    friend bool operator==(const ThroughBolt&, const ThroughBolt&) = default;
};

/// A fastener whose allowable values the user enters from an evaluation report. ASD values, for the report's
/// own conditions; Toehold applies to them only the factors the user states the report allows (none by default).
struct ReportedFastener {
    std::string name;          ///< the user's own name for it
    std::string report;        ///< which report, edition and table the values come from
    double diameter_in = 0.0;  ///< outside thread diameter
    double length_in = 0.0;
    double thread_length_in = 0.0;
    double withdrawal_lb_per_in = 0.0;  ///< allowable, per inch of thread in the block; 0: not given
    double tension_lb = 0.0;            ///< allowable of the fastener itself (steel, head); 0: not given
    double lateral_lb = 0.0;            ///< allowable, as installed with its gap; 0: not given
    double minimum_penetration_in = 0.0;
    double minimum_edge_in = 0.0;     ///< 0: not given
    double minimum_end_in = 0.0;      ///< 0: not given
    double minimum_spacing_in = 0.0;  ///< 0: not given
    friend bool operator==(const ReportedFastener&, const ReportedFastener&) = default;
};

using Fastener = std::variant<LagScrew, WoodScrew, ThroughBolt, ReportedFastener>;

struct AnchorGroup {
    std::vector<std::string> holes;  ///< ids of the plate's holes; empty: every hole no other group names
    Fastener fastener;
    std::optional<Washer> washer;      ///< between head and plate
    std::string corrosion_protection;  ///< as the user states it, for instance `hot-dip galvanized, ASTM A153`, read
                                       ///< by `protection`; empty: not stated
    std::optional<double> preload_lb =
        std::nullopt;  ///< pull each anchor is set to and keeps, > 0; absent: none, since wood lets go
    /// One metal plate under the head of each anchor on a post's side, in place of a washer: its width along the rail,
    /// its depth up the face.
    std::optional<BackingPlate> head_plate = std::nullopt;
    /// On a post's side: through the member it lies against into this block or joist behind, whose id this is, which
    /// then takes the force. Empty: into the member itself.
    std::string into = {};
    friend bool operator==(const AnchorGroup&, const AnchorGroup&) = default;
};

/// Below the group's bolts; nullptr when it has none.
[[nodiscard]] const LowerPlate* lower_plate(const AnchorGroup& group);

}  // namespace toehold::model
