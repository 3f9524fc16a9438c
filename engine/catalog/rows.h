#pragma once
// The rows of the catalogs in data/, as plain values. Every row carries where its numbers come from.
#include "model/own_wood.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::catalog {

enum class Evidence {
    published,  ///< read in the source named
    computed,   ///< from a published equation, the table itself not seen
    common_practice,
    from_memory,  ///< of a published source, to be confirmed
    assumption,   ///< ours, with the reason in `text`
};

struct Source {
    Evidence evidence = Evidence::assumption;
    std::string text;  ///< standard, table or equation, edition; or the reason of an assumption
};

/// Species group. `id` for instance `southern-pine`.
struct Species {
    std::string id, name;
    double specific_gravity = 0.0;  ///< G, NDS Table 12.3.3A
    Source source;
    bool treated_without_incising = false;  ///< its sapwood takes preservative without
};

/// What a row of design values is of. Timbers are 5 in and thicker (nominal): posts and timbers are square or nearly
/// so, beams and stringers more than 2 in wider than thick.
enum class WoodUse { dimension_lumber, beams_and_stringers, posts_and_timbers, engineered };

/// How CF of bending is found for a row of dimension lumber; timbers have (12/d)^(1/9) over 12 in, whatever this says.
enum class SizeFactor {
    table_4a,  ///< by width and thickness, No. 3 and better
    included,  ///< in the value, as in Table 4B; but 1.1 for 4 in thick and 8 in and wider, 0.9 wider than 12 in
    stud,      ///< 1.1 to 4 in wide, else 1.0
    none,      ///< 1.0: Construction and Standard
};

/// Whether a piece is incised where the file does not say.
enum class IncisedBy {
    assumed,             ///< treated, and its species commonly needs it, or may: taken as incised
    species_needs_none,  ///< treated, and its species takes preservative without: not incised
    untreated,           ///< not incised
};

/// What a member of the file's own material needs besides its values.
struct EngineeredFactors {
    double bending_flat_psi = 0.0;  ///< Fb, load on the wide face
    model::OwnWood::Volume volume = model::OwnWood::Volume::none;
    double volume_exponent = 0.0;
    model::OwnWood::WetService wet_service = model::OwnWood::WetService::dry_only;
};

/// Reference design values of one grade of one species in a range of depths; psi.
struct LumberGrade {
    std::string species, id, name;
    double depth_min_in = 0.0, depth_max_in = 0.0;  ///< nominal-size class by actual depth (wide face)
    SizeFactor size_factor = SizeFactor::table_4a;
    double bending_psi = 0.0, tension_psi = 0.0, shear_psi = 0.0, compression_perp_psi = 0.0, compression_psi = 0.0;
    double modulus_psi = 0.0, modulus_min_psi = 0.0;
    Source source;
    WoodUse use = WoodUse::dimension_lumber;
    bool wet_included = false;     ///< the values hold in wet service as they stand
    double timber_flat_use = 1.0;  ///< Cfu of bending of beams and stringers, load on the wide face
    std::optional<EngineeredFactors> engineered = std::nullopt;
    IncisedBy incising = IncisedBy::assumed;  ///< of the piece in its detail, which tells what is treated
};

struct LagScrewSize {
    std::string id, name;
    double diameter_in = 0.0, root_diameter_in = 0.0, tip_length_in = 0.0;
    double head_width_in = 0.0;  ///< across flats
    double head_height_in = 0.0;
    double bending_yield_psi = 0.0;  ///< Fyb
    std::string metal;               ///< default metal's id
    Source source;
};

struct WoodScrewSize {
    std::string id, name;
    double diameter_in = 0.0, root_diameter_in = 0.0, head_diameter_in = 0.0;
    double bending_yield_psi = 0.0;
    std::string metal;
    Source source;
};

struct BoltSize {
    std::string id, name;
    double diameter_in = 0.0, threads_per_in = 0.0, nut_width_in = 0.0;  ///< nut across flats
    double bending_yield_psi = 0.0;
    Source source;
};

enum class MetalKind { carbon_steel, stainless_steel, aluminum };

/// What a grade has in larger bolts, whose bars are less worked.
struct LargerBolts {
    double above_in = 0.0;  ///< nominal diameter from which on, > 0
    double nominal_tension_psi = 0.0;
    double nominal_shear_psi = 0.0;
};

struct BoltGrade {
    std::string id, name;
    double nominal_tension_psi = 0.0;  ///< Fnt, AISC 360 Table J3.2
    double nominal_shear_psi = 0.0;    ///< Fnv, threads in the shear plane
    Source source;
    MetalKind kind = MetalKind::carbon_steel;
    std::optional<LargerBolts> larger = std::nullopt;
    double nominal_shear_excluded_psi = 0.0;  ///< Fnv, threads out of the shear plane; 0: as with them in it
};

struct WasherSize {
    std::string id, name;
    double outside_diameter_in = 0.0, hole_diameter_in = 0.0, thickness_in = 0.0;
    Source source;
};

/// An alloy that one filler leaves softer than the others do where it is thick.
struct SofterWeld {
    std::string filler;      ///< catalog id
    double above_in = 0.0;   ///< thickness of the part from which on, > 0
    double yield_psi = 0.0;  ///< within 1 in of such a weld; less than the metal's welded yield
};

struct Metal {
    std::string id, name;
    MetalKind kind = MetalKind::carbon_steel;
    double yield_psi = 0.0, ultimate_psi = 0.0, modulus_psi = 0.0;
    std::optional<double> welded_yield_psi, welded_ultimate_psi;  ///< aluminum, within 1 in of a weld
    Source source;
    std::optional<SofterWeld> softer_weld = std::nullopt;
    /// Its standard guarantees no strength: yield and ultimate are 0 until a detail's certificate gives them.
    bool by_certificate = false;
    bool full_wall = false;  ///< tube made to its nominal wall, which is then the one to design with: AISC 360-16 B4.2
};

struct Filler {
    std::string id, name;
    MetalKind kind = MetalKind::carbon_steel;
    double strength_psi = 0.0;  ///< FEXX for steel; filler shear ultimate for aluminum
    Source source;
};

enum class DeckingKind { wood, plastic_composite, metal };

struct DeckingMaterial {
    std::string id, name;
    DeckingKind kind = DeckingKind::wood;
    double modulus_perp_psi = 0.0;  ///< through the thickness
    bool may_bear = false;          ///< whether bearing of a plate on it is permitted at all
    double bearing_psi = 0.0;       ///< allowable (ASD, before factors for wood); 0: none known
    std::string species;            ///< wood only: for embedment where decking counts in shear
    Source source;
};

}  // namespace toehold::catalog
