#pragma once
// The floor framing: joists with their supports, rim, blocks, and the connection at each member's end. Plan axes as the
// mount's (x along the rail, y outward), so that a base stands where its framing is.
#include "model/connection.h"
#include "model/own_wood.h"
#include "model/place.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::model {

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
    std::string species;           ///< catalog id, or the id of one of `Framing::materials`
    std::string grade;             ///< catalog id; empty with a material of the file's own
    std::vector<Joist> members;
    std::optional<double> from_in = std::nullopt;  ///< where they end, along `along`; absent: not described
    std::optional<double> to_in = std::nullopt;    ///< > from
    std::string size = {};                         ///< its name where the file has one, `2x10`; see lumber_size.h
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
    std::string size = {};     ///< as of Joists
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
    double depth_in = 0.0;         ///< actual, vertical, of one piece
    std::string species;
    std::string grade;
    BlockEnd from_end;
    BlockEnd to_end;
    int plies = 1;          ///< pieces side by side, nailed together; 1 to `most_block_plies`: solid infill has many
    std::string size = {};  ///< as of Joists; a flat block's wide face is its width
    int stack = 1;          ///< pieces one on another, 1 to 4; they never count as one deeper piece
    bool stack_fastened = false;  ///< the pieces are screwed or nailed to each other, so that one lifts all
    friend bool operator==(const Block&, const Block&) = default;
};

/// Solid infill of a joist bay under a plate.
inline constexpr int most_block_plies = 12;

/// What the deck itself puts on its joists, per area of plan; absent: the code's, which `deck_load` chooses.
struct DeckLoad {
    std::optional<double> dead_psf = std::nullopt;  ///< >= 0
    std::optional<double> live_psf = std::nullopt;  ///< >= 0
    friend bool operator==(const DeckLoad&, const DeckLoad&) = default;
};

struct Framing {
    std::optional<Joists> joists;
    std::vector<Block> blocks;
    bool preservative_treated = true;  ///< treated lumber: drives the corrosion finding
    std::vector<Rim> rims;
    std::vector<JoistSupport> supports;
    /// Wood whose values the file brings: a member or a wood post names one as its species, and has no grade.
    std::vector<OwnWood> materials = {};
    DeckLoad deck = {};
    friend bool operator==(const Framing&, const Framing&) = default;
};

}  // namespace toehold::model
