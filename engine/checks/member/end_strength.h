#pragma once
// What the connection at a member's end resists, whatever its kind: the ways a state's forces use it, each a force or a
// couple against what it may take, and how those ways act together.
#include "checks/member/end_place.h"

#include <functional>
#include <string>
#include <vector>

namespace toehold::checks {

/// Uses of one group load the same wood or metal one instead of another; the groups add up.
enum class UseGroup { sheared, sideways, drawn };

struct EndUse {
    std::string symbol, meaning, formula;
    double force = 0.0;      ///< >= 0
    double allowable = 0.0;  ///< 0: nothing resists it
    std::string unit = "lb";
    UseGroup group = UseGroup::sheared;
    std::string why = {};  ///< where nothing resists it: the sentence that says so, and what would
};

struct EndStrength {
    std::string by;           ///< what joins the two, for the link
    std::string clause;       ///< empty: the check's own
    std::vector<Step> steps;  ///< from the connection's dimensions to its values
    std::string missing;      ///< evidence the file does not give; empty: nothing
    std::string note;
    std::function<std::vector<EndUse>(const demand::HoldForces&)> uses;
};

/// Force over allowable; infinity where nothing resists a force that counts.
[[nodiscard]] double ratio(const EndUse& use);
/// The groups' largest ratios added: linear interaction, on the safe side of NDS 2018 12.4.
[[nodiscard]] double together(const std::vector<EndUse>& uses);

[[nodiscard]] EndStrength end_strength(const catalog::Resolved& resolved, const EndPlace& place);
/// The largest of a motion's force alone, in the unit of `force`, whose fields are as large as they are to each other.
/// 0 where nothing resists it.
[[nodiscard]] double capacity_alone(const EndStrength& strength, const demand::HoldForces& force);

// One file each.
[[nodiscard]] EndStrength strength_of(const catalog::Resolved& resolved, const EndPlace& place, std::monostate nothing);
[[nodiscard]] EndStrength strength_of(const catalog::Resolved& resolved, const EndPlace& place,
                                      const model::EndGrainFasteners& fasteners);
[[nodiscard]] EndStrength strength_of(const catalog::Resolved& resolved, const EndPlace& place,
                                      const model::ToeNails& nails);
[[nodiscard]] EndStrength strength_of(const catalog::Resolved& resolved, const EndPlace& place,
                                      const model::SideAngles& angles);
[[nodiscard]] EndStrength strength_of(const catalog::Resolved& resolved, const EndPlace& place,
                                      const model::ReportedConnector& connector);

}  // namespace toehold::checks
