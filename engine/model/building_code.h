#pragma once
// The code in force, and where it says what. One table in `building_code.cpp` holds every clause number by edition; all
// that is printed of a code comes from there.
#include <string>

namespace toehold::model {

enum class BuildingCode { irc_2018, irc_2021, irc_2024, ibc_2018, ibc_2021, ibc_2024 };

/// What a code or the load standard it adopts provides for.
enum class Provision {
    guard_height,
    concentrated_guard_load,  ///< 200 lb at the top
    line_guard_load,          ///< along the top; the IRC has none, and the IBC of its year is cited
    infill_load,              ///< 50 lb on 1 sq ft
    guard_load_standard,      ///< ASCE 7 4.5.1, of the edition the code adopts
    asd_combinations,         ///< ASCE 7 2.4.1
    lrfd_combinations,        ///< ASCE 7 2.3.1
    wind,                     ///< ASCE 7 chapters 26 to 30
    deck_live_load,
    load_test,
    deck_guard,            ///< the guard's load must reach the joists
    guard_beside_framing,  ///< a member the guard hangs on is tied against rotation; not by end grain withdrawal alone
    guard_on_decking,      ///< fastened through the boards to framing or blocking
    notched_post,
    composite_boards,
    treated_wood_fasteners,
};

[[nodiscard]] bool residential(BuildingCode code);  ///< an IRC
/// `IBC 2021`.
[[nodiscard]] std::string edition(BuildingCode code);
/// The IBC of the same year.
[[nodiscard]] BuildingCode ibc_of_the_year(BuildingCode code);
/// Edition and number: `IBC 2021 1015.3`. A number not seen in print says that it is from memory.
[[nodiscard]] std::string clause(BuildingCode code, Provision provision);

/// Which pushes the edition's text lets a guard's top do without where it is no handrail.
enum class GuardDirections {
    any,               ///< in every direction
    not_along,         ///< none along the rail
    outward_and_down,  ///< none along the rail and none inward
};
[[nodiscard]] GuardDirections directions_without_handrail(BuildingCode code);

}  // namespace toehold::model
