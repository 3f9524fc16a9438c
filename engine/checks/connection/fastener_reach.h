#pragma once
// How much of a member's depth its fasteners take hold of where it is held, and how much of its holder's: the effective
// depth d_e of NDS 2018 3.4.3.3, from the edge a fastener presses towards to the farthest fastener. Tops are flush.
//
// The clause names bolts, lag screws and connectors. Screws and nails that cross the grain are read the same way, which
// is on the safe side, but for toe-nails that hold a joist down to its beam: those stand at its lower edge by nature,
// carry little, and are what the codes' own nailing schedules ask for (IRC Table R602.3(1)). What hangs on a holder's
// face loads the holder by the clause only through fasteners it speaks of, 1/4 in and thicker: thin nails and screws of
// hardware take hold of the face all over.
#include "checks/connection/connection.h"

#include <optional>

namespace toehold::checks {

struct FastenerReach {
    /// From the member's top down to its highest fastener and to its lowest, in. Absent: not known.
    std::optional<double> highest_in, lowest_in;
    bool through = true;     ///< the fasteners go through every piece of the member
    bool in_holder = false;  ///< thick ones stand in the holder too, at the same heights
    bool through_holder = true;
    format::Phrase where;  ///< in words; empty: not known
};

/// Absent where the clause has nothing to say: nothing described, or toe-nails into a beam.
[[nodiscard]] std::optional<FastenerReach> fastener_reach(const EndPlace& place);

}  // namespace toehold::checks
