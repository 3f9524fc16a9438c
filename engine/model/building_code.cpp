// Every clause number of a code that the program prints, by edition.
#include "model/building_code.h"

#include <array>
#include <string_view>
#include <utility>

namespace toehold::model {
namespace {

/// A clause as each edition numbers it, in the order of `BuildingCode`. A star at its end: the number is from memory
/// and was not seen in print.
struct Clauses {
    Provision provision;
    std::array<std::string_view, 6> numbers;
};

// Seen in public copies: IBC 2018 1607.8.1 and .1.1, .1.2 (a scanned page of the 2018 collection; the 2018 code of a
// state); IBC 2021 1607.9.1, .1.1, .1.2 (the 2021 code of a state; the eighth edition of another's); IBC 2021 Table
// 1607.1 item 5, balconies and decks; IBC 2018 1709.3.1; IRC 2021 R507.10 and its parts (a transcription in a public
// repository); IRC 2021 R317.3 and IBC 2021 2304.10.6 (a trade journal's summary); footnotes of IRC Table R301.5 (a
// state's copy). IRC 2024 moved guards out of R312 and decay out of R317.
constexpr std::array<Clauses, 16> table{{
    {Provision::guard_height, {"R312.1.2*", "R312.1.2*", "R321.1.2*", "1015.3*", "1015.3", "1015.3*"}},
    {Provision::concentrated_guard_load,
     {"Table R301.5", "Table R301.5", "Table R301.5*", "1607.8.1.1", "1607.9.1.1", "1607.9.1.1*"}},
    {Provision::line_guard_load, {"", "", "", "1607.8.1", "1607.9.1", "1607.9.1*"}},
    {Provision::infill_load,
     {"Table R301.5", "Table R301.5", "Table R301.5*", "1607.8.1.2", "1607.9.1.2", "1607.9.1.2*"}},
    {Provision::guard_load_standard, {"4.5.1", "4.5.1", "4.5.1*", "4.5.1", "4.5.1", "4.5.1*"}},
    {Provision::asd_combinations, {"2.4.1", "2.4.1", "2.4.1*", "2.4.1", "2.4.1", "2.4.1*"}},
    {Provision::lrfd_combinations, {"2.3.1", "2.3.1", "2.3.1*", "2.3.1", "2.3.1", "2.3.1*"}},
    {Provision::wind, {"ch. 26-30", "ch. 26-30", "ch. 26-30*", "ch. 26-30", "ch. 26-30", "ch. 26-30*"}},
    {Provision::deck_live_load,
     {"Table R301.5", "Table R301.5", "Table R301.5*", "Table 1607.1*", "Table 1607.1", "Table 1607.1*"}},
    {Provision::load_test, {"", "", "", "1709.3.1", "1709.3.1*", "1709.3.1*"}},
    {Provision::deck_guard, {"R301.1*", "R507.10.1", "R507.10.1*", "1604.4*", "1604.4*", "1604.4*"}},
    {Provision::guard_beside_framing, {"R301.1*", "R507.10.1.1", "R507.10.1.1*", "1604.4*", "1604.4*", "1604.4*"}},
    {Provision::guard_on_decking, {"R301.1*", "R507.10.1.2", "R507.10.1.2*", "1604.4*", "1604.4*", "1604.4*"}},
    {Provision::notched_post, {"R301.1*", "R507.10.2", "R507.10.2*", "1604.4*", "1604.4*", "1604.4*"}},
    {Provision::composite_boards, {"R507.2.2*", "R507.2.2*", "R507.2.2*", "2612*", "2612*", "2612*"}},
    {Provision::treated_wood_fasteners, {"R317.3*", "R317.3", "R304.3*", "2304.10.5*", "2304.10.6", "2304.10.6*"}},
}};

bool of_load_standard(Provision provision) {
    return provision == Provision::guard_load_standard || provision == Provision::asd_combinations ||
           provision == Provision::lrfd_combinations || provision == Provision::wind;
}

/// The edition each code adopts: seen for IBC 2018 and 2021; for 2024 from memory.
std::string_view load_standard(BuildingCode code) {
    const bool latest = code == BuildingCode::irc_2024 || code == BuildingCode::ibc_2024;
    return latest ? "ASCE 7-22" : "ASCE 7-16";
}

std::string_view number(BuildingCode code, Provision provision) {
    for (const Clauses& row : table) {
        if (row.provision == provision) return row.numbers.at(static_cast<std::size_t>(code));
    }
    return {};
}

/// The IRC of 2021 and later has rules for guards on decks. Where another code is in force they are good practice.
std::string_view residential_practice(BuildingCode code, Provision provision) {
    if (code == BuildingCode::irc_2021 || code == BuildingCode::irc_2024) return {};
    const bool of_deck_guards = provision == Provision::deck_guard || provision == Provision::guard_beside_framing ||
                                provision == Provision::guard_on_decking || provision == Provision::notched_post;
    return of_deck_guards ? number(BuildingCode::irc_2021, provision) : std::string_view();
}

}  // namespace

bool residential(BuildingCode code) {
    return code == BuildingCode::irc_2018 || code == BuildingCode::irc_2021 || code == BuildingCode::irc_2024;
}

std::string edition(BuildingCode code) {
    constexpr std::array<std::string_view, 6> names{"IRC 2018", "IRC 2021", "IRC 2024",
                                                    "IBC 2018", "IBC 2021", "IBC 2024"};
    return std::string(names.at(static_cast<std::size_t>(code)));
}

BuildingCode ibc_of_the_year(BuildingCode code) {
    switch (code) {
        case BuildingCode::irc_2018:
            return BuildingCode::ibc_2018;
        case BuildingCode::irc_2021:
            return BuildingCode::ibc_2021;
        case BuildingCode::irc_2024:
            return BuildingCode::ibc_2024;
        case BuildingCode::ibc_2018:
        case BuildingCode::ibc_2021:
        case BuildingCode::ibc_2024:
            break;
    }
    return code;
}

std::string clause(BuildingCode code, Provision provision) {
    std::string_view found = number(code, provision);
    if (found.empty()) return clause(ibc_of_the_year(code), provision);
    const bool remembered = found.ends_with('*');
    if (remembered) found.remove_suffix(1);
    std::string text = of_load_standard(provision) ? std::string(load_standard(code)) : edition(code);
    text += " ";
    text += found;
    if (remembered) text += " (from memory, to be confirmed)";
    if (const std::string_view practice = residential_practice(code, provision); !practice.empty()) {
        text += "; practice of IRC 2021 ";
        text += practice;
    }
    return text;
}

// Footnote d of IRC Table R301.5. 2018: the load need not be applied along the top (seen in a state's copy; its edition
// from memory). 2021 and later: downward, and horizontally away from the walking surface, alone (seen in a public
// summary of the code; editions from memory, to be confirmed). The IBC and ASCE 7 4.5.1: any direction.
GuardDirections directions_without_handrail(BuildingCode code) {
    if (!residential(code)) return GuardDirections::any;
    return code == BuildingCode::irc_2018 ? GuardDirections::not_along : GuardDirections::outward_and_down;
}

}  // namespace toehold::model
