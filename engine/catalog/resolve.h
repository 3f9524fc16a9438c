#pragma once
// A detail with every catalog id looked up: what demand and checks read. A plain value; nothing points elsewhere.
#include "catalog/rows.h"
#include "model/base_detail.h"
#include "model/placement.h"
#include "model/problem.h"

#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace toehold::catalog {

struct Catalog;

enum class FastenerKind { lag_screw, wood_screw, through_bolt, reported };

/// One anchor, in one hole or at one place up a face.
struct Anchor {
    std::string id;                                ///< its hole's or place's id
    model::Place at;                               ///< where its axis crosses the mount's bearing plane or face
    model::Direction axis = model::straight_down;  ///< from head to tip
    std::size_t group = 0;                         ///< number of its group in the mount
    FastenerKind kind = FastenerKind::lag_screw;
    std::string name;               ///< for people, for instance `3/8 in lag screw x 6 in`
    double diameter_in = 0.0;       ///< nominal
    double root_diameter_in = 0.0;  ///< of the thread; a reported fastener without one: its diameter
    double length_in = 0.0;         ///< 0 for a through-bolt (as long as it must be)
    double thread_length_in = 0.0;  ///< tip included; 0 for a through-bolt
    double tip_length_in = 0.0;
    double head_width_in = 0.0;  ///< across flats, or head diameter of a wood screw
    double bending_yield_psi = 0.0;
    Source size_source;  ///< of its size's row; of a reported fastener: empty
    Metal metal;         ///< of the fastener (lag and wood screws)
    std::optional<BoltGrade> bolt_grade;
    std::optional<model::ThroughBolt> bolt;  ///< as the file describes it
    std::optional<WasherSize> washer;        ///< under the head, on the plate
    std::optional<WasherSize> washer_below;  ///< through-bolt
    std::optional<model::BackingPlate> backing;
    std::optional<model::LowerPlate> lower;         ///< the one under all bolts of its group
    std::optional<model::BackingPlate> head_plate;  ///< under the head, on a post's side
    std::optional<Metal> head_plate_metal;
    std::optional<Metal> backing_metal;  ///< of the backing plate or of the lower plate
    std::optional<model::ReportedFastener> reported;
    double hole_diameter_in = 0.0;  ///< round hole's diameter, slot's width
    /// Where it lands: the member under or behind it (block, joist or rim), absent when there is none.
    std::optional<model::Seat> seat;
    /// Of a fastener that goes through the member a post lies against into one behind it: where it crosses that member,
    /// which takes its shear; the seat's member takes its pull.
    std::optional<model::Seat> crossed;
    /// Number of the tie it hangs on the post, in the mount: it draws on that and not on the member of its seat.
    std::optional<std::size_t> tie;
    /// Fastener length beyond the member's near face (tip included), limited to the member's size along the anchor; 0
    /// when it misses or does not reach. Side member, head washer and layers are deducted.
    double embedment_in = 0.0;
    /// Part of `embedment_in` that is effective thread in the member: tip excluded, unthreaded shank excluded.
    double thread_in_block_in = 0.0;

    // Out of line: large, and copied in many files.
    Anchor();
    Anchor(const Anchor&);
    Anchor(Anchor&&) noexcept;
    Anchor& operator=(const Anchor&);
    Anchor& operator=(Anchor&&) noexcept;
    ~Anchor();
};

/// Where its shear goes; the anchor must have a seat.
[[nodiscard]] const model::Seat& shear_seat(const Anchor& anchor);
/// Whether its pull goes to the member of its seat.
[[nodiscard]] inline bool pulls_on_member(const Anchor& anchor) { return !anchor.tie; }

/// Radius of what the anchor presses on the plate with, in: its washer, else its head, else its shank.
[[nodiscard]] double footprint_radius_in(const Anchor& anchor);

/// The wood of a piece of framing.
struct MemberMaterial {
    Species species;
    LumberGrade grade;
};

/// What a plate on the deck is made of.
struct PlateOnDeck {
    Metal plate_metal;
    std::optional<Filler> filler;  ///< of the weld
    std::optional<DeckingMaterial> decking;
    std::vector<DeckingMaterial> shims;
    std::optional<DeckingMaterial> packing = std::nullopt;
};

/// What a post on a member's side is fastened with.
struct SideFastened {
    std::vector<DeckingMaterial> layers;  ///< from the member to the post, as the model's
    std::optional<DeckingMaterial> decking;
    std::optional<Metal> bracket_metal;
    std::optional<Filler> filler;  ///< of the bracket's weld
};

/// The mount's own materials: the same alternatives as `model::Mount`.
using Mount = std::variant<PlateOnDeck, SideFastened>;

struct Resolved {
    model::BaseDetail detail;
    Mount mount;
    std::vector<Anchor> anchors;          ///< one for every place of the mount that has one, in the mount's order
    Metal post_metal;                     ///< tube's or bar's, or the shoe's; its certificate's strengths put in
    std::optional<Metal> stub_metal;      ///< of the stub a tube post slides over
    std::optional<Species> post_species;  ///< wood post
    std::optional<LumberGrade> post_grade;
    std::vector<MemberMaterial> blocks;  ///< one for every block, same order
    std::optional<MemberMaterial> joists;
    std::vector<MemberMaterial> rims;           ///< one for every rim, same order
    std::map<std::string, Metal> angle_metals;  ///< of the angles at member ends, by id

    // Out of line: large, and copied in many files.
    Resolved();
    Resolved(const Resolved&);
    Resolved(Resolved&&) noexcept;
    Resolved& operator=(const Resolved&);
    Resolved& operator=(Resolved&&) noexcept;
    ~Resolved();
};

/// The same detail with every anchor that crosses a member seated in that one, for what its shear does there.
[[nodiscard]] Resolved as_sheared(Resolved resolved);

/// Of what is joined to the mount: the stub's metal where the post slides over one, else the post's or the shoe's.
[[nodiscard]] const Metal& foot_metal(const Resolved& resolved);

/// The wood of the member with this number in `model::members`; throws std::out_of_range.
[[nodiscard]] const MemberMaterial& wood(const Resolved& resolved, std::size_t member);

/// The materials of a detail whose mount is a plate on the deck. Throws std::logic_error when it has another mount.
[[nodiscard]] const PlateOnDeck& on_deck(const Resolved& resolved);
[[nodiscard]] PlateOnDeck& on_deck(Resolved& resolved);

/// The materials of a detail whose post is on a member's side. Throws std::logic_error when it has another mount.
[[nodiscard]] const SideFastened& on_side(const Resolved& resolved);

struct Resolution {
    std::optional<Resolved> resolved;  ///< absent when there are problems
    model::Problems problems;          ///< an id no catalog knows, with the ids that come nearest
};

[[nodiscard]] Resolution resolve(const model::BaseDetail& detail, const Catalog& catalog);

}  // namespace toehold::catalog
