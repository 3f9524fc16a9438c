#pragma once
// What lies between a mount and the framing below it: decking and shims.
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

/// Everything between the mount and the top of the framing, in.
[[nodiscard]] double thickness_in(const Layers& layers);

}  // namespace toehold::model
