#pragma once
// The choices a reviewer may make differently. Each default is the conservative reading; `stated` flags say
// whether the file chose it, so that every output can say which was used.
#include <optional>
#include <string>

namespace toehold::model {

enum class Method { asd, lrfd };
enum class Moisture { wet, dry, dried_in_service };  ///< last: built above 19 %, at most 19 % in service
enum class Temperature { to_100F, to_125F, to_150F };
enum class DeckingInShear { gap, bearing };  ///< bearing: decking counts as wood around the shank, so no gap
/// How the base plate is taken when anchors and bed share the push.
enum class PlateBehaviour { flexible, rigid };
enum class BuildingCode { irc_2021, ibc_2021 };
/// A limit on how far the guard's top may move that a specification or a contract invokes; neither code sets one.
enum class MovementLimit { astm_e985 };

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
    std::optional<bool> incised;                     ///< members; absent: incised
    std::optional<DeckingInShear> decking_in_shear;  ///< absent: gap
    std::optional<BuildingCode> code;                ///< absent: IBC 2021
    std::optional<MovementLimit> movement_limit;     ///< absent: none, and a large movement is a caution
    std::optional<PlateBehaviour> plate;             ///< absent: flexible
    std::optional<FixedStiffness> stiffness;
    friend bool operator==(const Basis&, const Basis&) = default;
};

// The values in force, defaults applied.
[[nodiscard]] double load_duration(const Basis& basis);
[[nodiscard]] double time_effect(const Basis& basis);
[[nodiscard]] Moisture moisture(const Basis& basis);
[[nodiscard]] Temperature temperature(const Basis& basis);
[[nodiscard]] bool incised(const Basis& basis);
[[nodiscard]] DeckingInShear decking_in_shear(const Basis& basis);
[[nodiscard]] PlateBehaviour plate_behaviour(const Basis& basis);
[[nodiscard]] BuildingCode building_code(const Basis& basis);

}  // namespace toehold::model
