#pragma once
// The choices a reviewer may make differently. Each default is the conservative reading; `stated` flags say
// whether the file chose it, so that every output can say which was used.
#include "model/building_code.h"

#include <optional>
#include <string>

namespace toehold::model {

enum class Method { asd, lrfd };
enum class Moisture { wet, dry, dried_in_service };  ///< last: built above 19 %, at most 19 % in service
enum class Temperature { to_100F, to_125F, to_150F };
enum class DeckingInShear { gap, bearing };  ///< bearing: decking counts as wood around the shank, so no gap
/// How the base plate is taken when anchors and bed share the push.
enum class PlateBehaviour { flexible, rigid };
/// How beam shear and torsion act together in a wood member. parabolic: tau/Fv' + (fv/Fv')^2. linear_two_thirds:
/// tau/(2/3 Fv') + fv/Fv', the harshest form in use.
enum class TorsionWithShear { parabolic, linear_two_thirds };
/// What is held to Fc,perp' under the plate. block: a uniform stress over the part of the contact that is symmetric
/// about the resultant. peak: the elastic pressure at the plate's edge.
enum class BearingStress { block, peak };
/// A limit on how far the guard's top may move that a specification or a contract invokes; neither code sets one.
enum class MovementLimit { astm_e985 };

/// What a compact square or rectangular steel tube carries between its axes: its own plastic moment in that direction,
/// or the linear sum of the two about its axes.
enum class TubeDiagonal { plastic, linear };
/// What a compact stainless post carries: its plastic moment (AISC 370), or no more than first yield.
enum class StainlessBending { plastic, first_yield };

/// What the verdict on the plate's bending rests on.
enum class PlateStrength {
    lower_bound,  ///< a moment field in equilibrium that nowhere passes the plate's strength
    yield_line    ///< the weakest yield-line pattern found, less a tenth
};

/// Stiffness the user fixes instead of the computed one with its range.
struct FixedStiffness {
    double bed_psi_per_in = 0.0;    ///< > 0
    double anchor_lb_per_in = 0.0;  ///< > 0, every anchor
    std::string reason;             ///< required
    friend bool operator==(const FixedStiffness&, const FixedStiffness&) = default;
};

struct Basis {
    Method method = Method::asd;
    std::optional<double> load_duration;             ///< CD, ASD; absent: 1.0. 0.9 to 1.6
    std::optional<double> time_effect;               ///< lambda, LRFD; absent: 0.8. 0.6 to 1.0
    std::optional<Moisture> moisture;                ///< absent: wet
    std::optional<Temperature> temperature;          ///< absent: to 100 F
    std::optional<bool> incised;                     ///< members; absent: by species and treatment
    std::optional<DeckingInShear> decking_in_shear;  ///< absent: gap
    std::optional<BuildingCode> code;                ///< absent: IBC 2021
    std::optional<MovementLimit> movement_limit;     ///< absent: none, and a large movement is a caution
    std::optional<PlateBehaviour> plate;             ///< absent: flexible
    std::optional<PlateStrength> plate_strength;     ///< absent: lower bound
    std::optional<FixedStiffness> stiffness;
    std::optional<TubeDiagonal> tube_diagonal = std::nullopt;          ///< absent: plastic
    std::optional<StainlessBending> stainless_bending = std::nullopt;  ///< absent: plastic
    std::optional<TorsionWithShear> torsion = std::nullopt;            ///< absent: parabolic
    std::optional<BearingStress> bearing = std::nullopt;               ///< absent: block
    /// Steel that holds rows of fasteners apart across the grain is detailed for the wood's shrinkage; absent: it is
    /// not.
    std::optional<bool> shrinkage_detailed = std::nullopt;
    friend bool operator==(const Basis&, const Basis&) = default;
};

// The values in force, defaults applied.
[[nodiscard]] double load_duration(const Basis& basis);
[[nodiscard]] double time_effect(const Basis& basis);
[[nodiscard]] Moisture moisture(const Basis& basis);
[[nodiscard]] Temperature temperature(const Basis& basis);
[[nodiscard]] DeckingInShear decking_in_shear(const Basis& basis);
[[nodiscard]] PlateBehaviour plate_behaviour(const Basis& basis);
[[nodiscard]] PlateStrength plate_strength(const Basis& basis);
[[nodiscard]] TorsionWithShear torsion_with_shear(const Basis& basis);
[[nodiscard]] BearingStress bearing_stress(const Basis& basis);
[[nodiscard]] BuildingCode building_code(const Basis& basis);
[[nodiscard]] TubeDiagonal tube_diagonal(const Basis& basis);
[[nodiscard]] StainlessBending stainless_bending(const Basis& basis);

}  // namespace toehold::model
