#pragma once
// What lies between a mount and the framing below it: decking, shims, and packing that goes through the decking.
#include "model/place.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::model {

/// Screws or nails that hold the boards to each joist they cross, and with them the joists' tops against moving
/// sideways.
struct DeckingFastening {
    double diameter_in = 0.0;
    double length_in = 0.0;
    int per_crossing = 0;         ///< fasteners where one board crosses one joist
    double board_width_in = 0.0;  ///< face width of a board
    /// Allowable lateral force of one fastener, where no standard gives it (boards that are not wood); 0: not given.
    double lateral_lb = 0.0;
    std::string report;  ///< where `lateral_lb` comes from
    friend bool operator==(const DeckingFastening&, const DeckingFastening&) = default;
};

/// The walking surface under the plate.
struct Decking {
    std::string material;       ///< catalog id
    double thickness_in = 0.0;  ///< > 0
    std::string evidence;  ///< standard or manufacturer's instructions the boards are installed to; empty: not stated
    std::optional<DeckingFastening> fastening = std::nullopt;  ///< absent: boards count as lying loose
    std::string size = {};  ///< its name where the file has one, `5/4x6`; its thickness is in `thickness_in`
    /// Allowable bearing (ASD) of a plate on the boards from their evaluation report, used as it stands; 0: not given.
    double bearing_psi = 0.0;
    double modulus_psi = 0.0;  ///< through the thickness, as the manufacturer gives it; 0: the catalog's
    std::string report = {};   ///< where `bearing_psi` and `modulus_psi` come from
    friend bool operator==(const Decking&, const Decking&) = default;
};

/// Packing between decking and blocking.
struct Shim {
    std::string material;  ///< catalog id of a decking material
    double thickness_in = 0.0;
    friend bool operator==(const Shim&, const Shim&) = default;
};

enum class PackingShape { rectangle, round };

/// Solid spacers set in holes or cut-outs through the boards. They fill the boards' thickness, so that the plate bears
/// on them and not on the boards.
struct Packing {
    PackingShape shape = PackingShape::rectangle;
    double width_in = 0.0;              ///< along x; the diameter of a round one
    double depth_in = 0.0;              ///< along y; 0 of a round one
    std::string material;               ///< catalog id of a decking material
    double hole_in = 0.0;               ///< through it for its anchor; 0: the anchor's diameter + 1/16 in
    std::vector<Position> places = {};  ///< centers, seen from above; empty: one about every anchor
    friend bool operator==(const Packing&, const Packing&) = default;
};

/// In order from the plate down. An absent decking means the plate stands on the framing itself.
struct Layers {
    std::optional<Decking> decking;
    std::vector<Shim> shims;
    std::optional<Packing> packing = std::nullopt;  ///< in place of the decking where the plate bears; needs a decking
    friend bool operator==(const Layers&, const Layers&) = default;
};

/// Everything between the mount and the top of the framing, in.
[[nodiscard]] double thickness_in(const Layers& layers);

}  // namespace toehold::model
