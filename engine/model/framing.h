#pragma once
// What is under the plate: layers, joists, blocks, and the connection at each block end.
// Plan axes as the plate's (x along the rail, y outward), so that a base stands where its framing is.
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace toehold::model {

/// The walking surface under the plate.
struct Decking {
    std::string material;       ///< catalog id
    double thickness_in = 0.0;  ///< > 0
    std::string evidence;  ///< standard or manufacturer's instructions the boards are installed to; empty: not stated
    friend bool operator==(const Decking&, const Decking&) = default;
};

/// Packing between decking and blocking.
struct Shim {
    std::string material;  ///< catalog id of a decking material
    double thickness_in = 0.0;
    friend bool operator==(const Shim&, const Shim&) = default;
};

/// In order from the plate down. An absent decking means the plate stands on the framing itself.
struct Layers {
    std::optional<Decking> decking;
    std::vector<Shim> shims;
    friend bool operator==(const Layers&, const Layers&) = default;
};

enum class PlanAxis { x, y };

struct Joist {
    std::string id;
    double offset_in = 0.0;  ///< of its centre line, measured along the plan axis across the joists
    friend bool operator==(const Joist&, const Joist&) = default;
};

/// The deck joists that hold the blocks: one section, several places.
struct Joists {
    PlanAxis along = PlanAxis::y;  ///< the plan axis the joists run along
    double width_in = 0.0;         ///< actual, in plan
    double depth_in = 0.0;         ///< actual, vertical
    std::string species;
    std::string grade;
    std::vector<Joist> members;
    friend bool operator==(const Joists&, const Joists&) = default;
};

/// Nails, or screws, through the joist into the block's end grain.
struct EndGrainFasteners {
    enum class Kind { nail, wood_screw };
    Kind kind = Kind::nail;
    double diameter_in = 0.0;
    double length_in = 0.0;
    int count = 0;
    double spread_in = 0.0;  ///< between the outermost two; evenly spaced on one line
    friend bool operator==(const EndGrainFasteners&, const EndGrainFasteners&) = default;
};

/// Hanger, angle or other hardware whose allowable values the user enters. ASD, adjusted as the report says.
struct ReportedConnector {
    std::string name;         ///< the user's own name for it, for instance `angle both sides`
    std::string report;       ///< where the values come from
    double uplift_lb = 0.0;   ///< allowable upward force of the block end; 0: none
    double down_lb = 0.0;     ///< allowable downward force; 0: none
    double lateral_lb = 0.0;  ///< allowable horizontal force, any direction; 0: none
    /// Distance between the two lines of connectors that share each end's couple about the block's axis
    /// (one on each side of the block); 0: the connector resists no couple.
    double couple_arm_in = 0.0;
    friend bool operator==(const ReportedConnector&, const ReportedConnector&) = default;
};

/// monostate: nothing described.
using EndConnection = std::variant<std::monostate, EndGrainFasteners, ReportedConnector>;

struct BlockEnd {
    std::string joist;  ///< id of the joist it meets; empty: no joist described
    EndConnection connection;
    friend bool operator==(const BlockEnd&, const BlockEnd&) = default;
};

/// A sawn block between two joists, its top against the underside of the layers, grain along its length.
struct Block {
    std::string id;
    PlanAxis along = PlanAxis::x;  ///< its length, and its grain
    double from_in = 0.0;          ///< coordinate of its lower end along `along`
    double to_in = 0.0;            ///< coordinate of its upper end; > from
    double across_in = 0.0;        ///< coordinate of its centre line on the other axis
    double width_in = 0.0;         ///< actual, in plan
    double depth_in = 0.0;         ///< actual, vertical
    std::string species;
    std::string grade;
    BlockEnd from_end;
    BlockEnd to_end;
    friend bool operator==(const Block&, const Block&) = default;
};

struct Framing {
    std::optional<Joists> joists;
    std::vector<Block> blocks;
    bool preservative_treated = true;  ///< treated lumber: drives the corrosion finding
    friend bool operator==(const Framing&, const Framing&) = default;
};

}  // namespace toehold::model
