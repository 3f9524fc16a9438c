#pragma once
// How a post is fastened to the deck. A mount is a value of one of the kinds below; the rest of the program knows what
// it brings (anchors with a place and an axis in space, forces on members, stiffness against rotation), not its kind.
//
// A further kind of mount brings:
//   - here: its struct in a file beside side_mount.h, an alternative of `Mount`, a `MountKind`, its row in mount.cpp's
//   tables; its parts in part.cpp;
//     its rules in a file beside validate_side.cpp;
//   - xml/detail: its element, a file beside side_fastened.cpp; the same in data/schema/base.xsd;
//   - catalog: its anchors' places, in resolve_anchors.cpp and fastened.cpp;
//   - demand: a folder beside side_fastened, and a row in demand/mount.cpp;
//   - checks: a folder beside checks/side, each check registered with its MountKind;
//   - drawing: its plan, section and elevation, beside those of the side;
//   - paper/shop and paper/site: its shop drawing and its instructions;
//   - gui/editing: fields, handles and drags of what can be changed.
// It touches nothing in review, export, wording, paper/layout, cli and gui/solving: tests/structure/mount_rooms.sh
// refuses the name of a mount there.
#include "model/anchor.h"
#include "model/layers.h"
#include "model/part.h"
#include "model/plate.h"
#include "model/post.h"
#include "model/side_mount.h"

#include <optional>
#include <string>
#include <string_view>
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

using Mount = std::variant<PlateOnDeck, SideFastened>;

/// In the order of the variant's alternatives.
enum class MountKind { plate_on_deck, side_fastened };

[[nodiscard]] MountKind kind(const Mount& mount);
/// As JSON and the plug-in interface name it: `plate-on-deck`.
[[nodiscard]] std::string_view word(MountKind kind);

// What every mount has.

/// The groups of alike anchors; a `catalog::Anchor` names its group by its number here.
[[nodiscard]] const std::vector<AnchorGroup>& anchor_groups(const BaseDetail& detail);
[[nodiscard]] std::vector<AnchorGroup>& anchor_groups(BaseDetail& detail);
/// Whether any anchor has a stated preload.
[[nodiscard]] bool preloaded(const BaseDetail& detail);
/// The mount's bearing plane (z = 0) below the walking surface, in.
[[nodiscard]] double below_surface_in(const BaseDetail& detail);
/// Height of the guard's top above the mount's bearing plane, in.
[[nodiscard]] double lever_height_in(const BaseDetail& detail);

/// The deck boards over the framing; nullptr when the mount stands on none.
[[nodiscard]] const Decking* deck_boards(const BaseDetail& detail);

/// Ids of the places an anchor may stand in: a plate's holes, places up a face; in the file's order.
[[nodiscard]] std::vector<std::string> anchor_place_ids(const BaseDetail& detail);
/// The group that gives the place of this id (a plate's hole, a place up a face) its anchor; nullptr when none does.
[[nodiscard]] const AnchorGroup* anchor_group(const BaseDetail& detail, const std::string& place_id);

/// What the post stands on or is fastened by: the plate, or a bracket's; else the post itself.
[[nodiscard]] PartId main_part(const BaseDetail& detail);
/// That part in a few words: `HL-55, 3/8 in thick, steel-a36`.
[[nodiscard]] format::Phrase main_part_words(const BaseDetail& detail);

// For code that is about one kind.

/// The detail's mount as a plate on the deck. Throws std::logic_error when the detail has another mount.
[[nodiscard]] const PlateOnDeck& on_deck(const BaseDetail& detail);
[[nodiscard]] PlateOnDeck& on_deck(BaseDetail& detail);
/// The detail's mount as a post on a member's side. Throws std::logic_error when the detail has another mount.
[[nodiscard]] const SideFastened& on_side(const BaseDetail& detail);
[[nodiscard]] SideFastened& on_side(BaseDetail& detail);
/// Centers of the packing: as given, else every hole that has an anchor. Empty without packing.
[[nodiscard]] std::vector<Position> packing_places(const BaseDetail& detail);

}  // namespace toehold::model
