#pragma once
// What every state of the demand puts on the framing below the plate: along each member, at each place where one member
// or a support holds another, and how far the guard's top moves for it. Forces lb, moments lb in, from a grillage.
#include "format/phrase.h"
#include "model/connection.h"
#include "model/part.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace toehold::demand {

enum class MemberSupportKind {
    block_end,      ///< a block's end to the joist, rim or block it meets
    joist_to_rim,   ///< a joist's end to the rim across it
    joist_support,  ///< a joist to a ledger or a beam
};

/// Springs at one support, in the held member's own axes; 0: free.
struct SupportStiffness {
    double vertical_lb_per_in = 0.0;
    double torque_lb_in = 0.0;  ///< per rad, about the member's axis: what keeps it from rolling
    double moment_lb_in = 0.0;  ///< per rad, in the member's upright plane: what keeps it square to its holder
    format::Phrase source;
    /// Nothing described resists that motion of the member anywhere: the stiffness is nominal, so that the force
    /// arrives here, where nothing takes it.
    bool vertical_is_nominal = false, torque_is_nominal = false, moment_is_nominal = false;
};

/// One place where a member is held.
struct MemberSupport {
    MemberSupportKind kind = MemberSupportKind::block_end;
    std::size_t member = 0;  ///< the held one: number in `model::members`
    bool upper = false;      ///< which end; of no meaning at a support
    std::optional<std::size_t> holder =
        std::nullopt;  ///< member that holds it; absent: a support, or nothing described
    std::optional<std::size_t> joist_support = std::nullopt;  ///< index in framing.supports
    model::PartId holder_part;  ///< joist, rim, block, ledger or beam; a joist not described where there is nothing
    model::EndConnection connection;
    SupportStiffness stiffness;
};

/// What the member puts on its holder, in the member's own axes.
struct SupportReaction {
    double up_lb = 0.0;         ///< > 0: the member is pulled up here and must be held down
    double across_lb = 0.0;     ///< horizontal, across the member
    double along_lb = 0.0;      ///< horizontal, along it; > 0: drawn away from the holder, < 0: pressed against it
    double torque_lb_in = 0.0;  ///< about the member's axis
    double moment_lb_in = 0.0;  ///< in the member's upright plane
    /// Pressed down onto what holds it, with all of the deck's load; 0 in a state: `checks::forces_at` puts it in.
    double down_lb = 0.0;
};

/// Largest along one member, by size.
struct MemberActions {
    double vertical_moment_lb_in = 0.0, horizontal_moment_lb_in = 0.0;
    double vertical_shear_lb = 0.0, horizontal_shear_lb = 0.0;
    double torque_lb_in = 0.0;
};

struct FramingState {
    std::vector<MemberActions> members;  ///< one for every member, in order, from the guard's load alone
    /// The same with the deck's own load, the largest with all of it and with the least; empty where none is counted.
    std::vector<MemberActions> with_deck = {};
    std::vector<SupportReaction> reactions;  ///< one for every support, in order
    double top_in = 0.0;    ///< movement of the guard's top along the push from the framing's give alone
    double residual = 0.0;  ///< of the grillage's balance, relative
};

/// What the deck's own load does to its joists, factored for the combinations with the guard's load.
struct DeckActions {
    double dead_psf = 0.0, live_psf = 0.0;  ///< unfactored
    std::vector<MemberActions> members;     ///< of each member, from all of it
    /// On each support, in order: the least of it, which counters an uplift, and all of it.
    std::vector<double> holds_down_lb, most_down_lb;
};

struct FramingDemand {
    std::vector<MemberSupport> supports;
    /// Why the framing cannot carry the load at all: what can move, and what would hold it. Then `states` is empty.
    format::Phrase unstable;
    std::vector<FramingState> states;  ///< same order as Demand::states
    std::optional<DeckActions> deck;   ///< absent: the joists' lengths or supports are not described
    bool joists_described = false;     ///< lengths and supports are in the file, so that joists bend and may roll
    double residual = 0.0;             ///< largest of the grillage's balance over the states, relative
    std::vector<format::Phrase> assumptions;
};

}  // namespace toehold::demand
