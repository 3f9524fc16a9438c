#pragma once
// The floor framing: joists with their supports, rim, blocks, and the connection at each member's end. Plan axes as the
// mount's (x along the rail, y outward), so that a base stands where its framing is.
#include "model/connection.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::model {

enum class PlanAxis { x, y };

struct Joist {
    std::string id;
    double offset_in = 0.0;  ///< of its centre line, measured along the plan axis across the joists
    int plies = 1;           ///< pieces side by side, nailed together; 1 to 4
    friend bool operator==(const Joist&, const Joist&) = default;
};

/// The deck joists: one section, several places.
struct Joists {
    PlanAxis along = PlanAxis::y;  ///< the plan axis the joists run along
    double width_in = 0.0;         ///< actual, in plan, of one piece
    double depth_in = 0.0;         ///< actual, vertical
    std::string species;
    std::string grade;
    std::vector<Joist> members;
    std::optional<double> from_in = std::nullopt;  ///< where they end, along `along`; absent: not described
    std::optional<double> to_in = std::nullopt;    ///< > from
    friend bool operator==(const Joists&, const Joists&) = default;
};

/// A line of support across every joist.
struct JoistSupport {
    enum class Kind { ledger, beam };  ///< hung from the face of a ledger; lying on a beam or a wall
    std::string id;
    Kind kind = Kind::beam;
    double at_in = 0.0;        ///< along the joists
    double bearing_in = 0.0;   ///< length of joist that lies on the beam, > 0; 0 for a ledger
    EndConnection connection;  ///< of each joist to it
    friend bool operator==(const JoistSupport&, const JoistSupport&) = default;
};

/// A rim joist across the ends of the joists.
struct Rim {
    std::string id;
    double at_in = 0.0;    ///< of its centre line, along the joists
    double from_in = 0.0;  ///< its ends, across the joists
    double to_in = 0.0;
    double width_in = 0.0;  ///< actual, in plan, of one piece
    double depth_in = 0.0;
    std::string species;
    std::string grade;
    int plies = 1;             ///< 1 to 4
    EndConnection connection;  ///< of each joist's end to it
    friend bool operator==(const Rim&, const Rim&) = default;
};

struct BlockEnd {
    std::string joist;  ///< id of the member it meets: a joist, a rim or a block; empty: none described
    EndConnection connection;
    friend bool operator==(const BlockEnd&, const BlockEnd&) = default;
};

/// A sawn block between two members, its top against the underside of the layers, grain along its length.
struct Block {
    std::string id;
    PlanAxis along = PlanAxis::x;  ///< its length, and its grain
    double from_in = 0.0;          ///< coordinate of its lower end along `along`
    double to_in = 0.0;            ///< coordinate of its upper end; > from
    double across_in = 0.0;        ///< coordinate of its centre line on the other axis
    double width_in = 0.0;         ///< actual, in plan, of one piece
    double depth_in = 0.0;         ///< actual, vertical
    std::string species;
    std::string grade;
    BlockEnd from_end;
    BlockEnd to_end;
    int plies = 1;  ///< pieces side by side, nailed together; 1 to 4
    friend bool operator==(const Block&, const Block&) = default;
};

struct Framing {
    std::optional<Joists> joists;
    std::vector<Block> blocks;
    bool preservative_treated = true;  ///< treated lumber: drives the corrosion finding
    std::vector<Rim> rims;
    std::vector<JoistSupport> supports;
    friend bool operator==(const Framing&, const Framing&) = default;
};

}  // namespace toehold::model
