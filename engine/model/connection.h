#pragma once
// What joins the end of a framing member to what holds it: nails or screws into its end grain, toe-nails, angles with
// fasteners a standard gives values for, or hardware with values from its report.
#include "model/threads.h"

#include <optional>
#include <string>
#include <variant>

namespace toehold::model {

/// Values an evaluation report gives for one screw in end grain. ASD, adjusted by the user as the report says for load
/// duration and moisture; no standard gives any for screws like these.
struct ReportedEndGrain {
    double lateral_lb = 0.0;     ///< allowable across the screw; 0: none
    double withdrawal_lb = 0.0;  ///< allowable along it; 0: none
    std::string report;          ///< where they stand, never empty
    std::string conditions;      ///< what they hold for (load duration, moisture, species), never empty
    friend bool operator==(const ReportedEndGrain&, const ReportedEndGrain&) = default;
};

/// Nails, or screws, through the holding member into this one's end grain.
struct EndGrainFasteners {
    /// A structural screw is one of 1/4 in and more with values from its report.
    enum class Kind { nail, wood_screw, structural_screw };
    Kind kind = Kind::nail;
    double diameter_in = 0.0;
    double length_in = 0.0;
    int count = 0;
    double spread_in = 0.0;          ///< between the outermost two; evenly spaced on one line, upright
    ReportedEndGrain reported = {};  ///< of structural screws
    friend bool operator==(const EndGrainFasteners&, const EndGrainFasteners&) = default;
};

/// Nails driven aslant through this member's sides into what holds it (NDS 2018 12.1.6.3 geometry: at about 30 degrees,
/// started a third of the length from the end).
struct ToeNails {
    double diameter_in = 0.0;
    double length_in = 0.0;
    int count = 0;           ///< both sides together, shared evenly
    double spread_in = 0.0;  ///< between the outermost two on one side, upright; 0: one a side
    friend bool operator==(const ToeNails&, const ToeNails&) = default;
};

/// Steel angles upright in the corner between the member's side and the holding member's face, fastened into the side
/// grain of both, so that a standard gives their fasteners' values. The steel of the angle itself is not computed.
struct SideAngles {
    enum class Kind { wood_screw, lag_screw, bolt };
    int sides = 2;  ///< 1, or 2: one on each side of the member
    double thickness_in = 0.0;
    std::string metal;  ///< catalog id
    Kind kind = Kind::wood_screw;
    double diameter_in = 0.0;
    double length_in = 0.0;                         ///< under the head; 0 for a bolt, which goes through the wood
    int per_leg = 0;                                ///< fasteners in each leg of each angle, on one upright line
    double spacing_in = 0.0;                        ///< between neighbours on that line; 0 with one
    double gauge_in = 0.0;                          ///< from the corner to the line, in both legs, > 0
    std::optional<Threads> threads = std::nullopt;  ///< of bolts and lag screws; absent: included
    friend bool operator==(const SideAngles&, const SideAngles&) = default;
};

/// Hanger, angle, tie, structural screws or other hardware whose allowable values the user enters. ASD, adjusted as
/// the report says.
struct ReportedConnector {
    std::string name;         ///< the user's own name for it, for instance `angle both sides`
    std::string report;       ///< where the values come from
    double uplift_lb = 0.0;   ///< allowable upward force of the member's end; 0: none
    double down_lb = 0.0;     ///< allowable downward force; 0: none
    double lateral_lb = 0.0;  ///< allowable horizontal force across the member; 0: none
    /// Distance between the two lines of connectors that share each end's couple about the member's axis
    /// (one on each side of it); 0: the connector resists no couple.
    double couple_arm_in = 0.0;
    /// Allowable force that draws the end away along the member; 0: none.
    double pull_lb = 0.0;
    /// Height over which a pull and the pressed edge of the end form a couple that keeps the two members square to
    /// each other; 0: the end turns freely.
    double height_in = 0.0;
    /// Stiffness in the directions that have a value; absent: the value over 1/8 in.
    std::optional<double> stiffness_lb_per_in = std::nullopt;
    /// Where its fasteners stand in the held member: from the member's top down to the highest, >= 0; 0: it hooks over
    /// the top. Absent: not given.
    std::optional<double> from_top_in = std::nullopt;
    /// From the member's bottom up to the lowest, >= 0; 0: the member stands on a seat. Absent: not given.
    std::optional<double> from_bottom_in = std::nullopt;
    /// False: no hardware is chosen yet, and the values are the least that its report must give.
    bool chosen = true;
    friend bool operator==(const ReportedConnector&, const ReportedConnector&) = default;
};

/// monostate: nothing described.
using EndConnection = std::variant<std::monostate, EndGrainFasteners, ToeNails, SideAngles, ReportedConnector>;

}  // namespace toehold::model
