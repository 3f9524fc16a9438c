#pragma once
// How a post is fastened to the deck. A mount is a value of one of the kinds below; the rest of the program knows what
// it brings (anchors with a place and an axis in space, forces on members, stiffness against rotation), not its kind.
#include "model/anchor.h"
#include "model/framing.h"
#include "model/plate.h"
#include "model/post.h"

#include <optional>
#include <variant>
#include <vector>

namespace toehold::model {

struct BaseDetail;

/// A post on a base plate that stands on top of the deck, its anchors driven or bolted down through the plate.
struct PlateOnDeck {
    Plate plate;  ///< always complete: read from the reference where there is one
    std::optional<PlateReference> plate_reference;
    std::optional<Weld> weld;          ///< of the post's or its shoe's foot to the plate
    std::vector<AnchorGroup> anchors;  ///< what fills the plate's holes
    Layers layers;                     ///< between the plate and the top of the blocking
    /// Plate's underside below the walking surface, in; 0 when the plate stands on the decking. >= 0
    double plate_below_surface_in = 0.0;
    friend bool operator==(const PlateOnDeck&, const PlateOnDeck&) = default;
};

using Mount = std::variant<PlateOnDeck>;

/// The detail's mount as a plate on the deck, for code that is about plates. Throws std::logic_error when the detail
/// has another mount.
[[nodiscard]] const PlateOnDeck& on_deck(const BaseDetail& detail);
[[nodiscard]] PlateOnDeck& on_deck(BaseDetail& detail);

}  // namespace toehold::model
