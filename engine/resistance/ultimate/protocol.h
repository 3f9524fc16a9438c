#pragma once
// The steps of a load test as their clauses have them, as a table: what a test sheet prints, in its own words.
#include "resistance/ultimate/seen.h"

#include <span>
#include <string_view>

namespace toehold::resistance::ultimate {

enum class Action {
    take_zero,       ///< zero the gauges, without load
    apply,           ///< bring the load up
    hold,            ///< leave it
    release,         ///< take it off
    wait_recovery,   ///< measure what movement is left
    reload,          ///< bring the load up again, until it breaks or reaches the stated load
    find_allowable,  ///< what it may be used for
};

struct ProtocolStep {
    Action action = Action::apply;
    std::string_view clause = {};
    double times_design = 0.0;     ///< load over the design load; 0: no load of its own
    double least_seconds = 0.0;    ///< 0: the clause names none
    double most_seconds = 0.0;     ///< 0: the clause names none
    double least_recovered = 0.0;  ///< share of the largest movement
    Seen seen = Seen::in_text;
};

enum class Procedure {
    building_code,           ///< IBC 1709.3.1: for want of a standard's own
    guard_acceptance,        ///< the acceptance criteria for guards, as public test reports carry them out
    metal_railings,          ///< ASTM E935 with the loads of E985
    metal_railing_anchorage  ///< ASTM E894
};

struct Protocol {
    Procedure procedure = Procedure::building_code;
    std::string_view standard = {};
    std::string_view seen_in = {};             ///< where its steps were read; empty: nowhere
    int withdrawn_year = 0;                    ///< of a standard it needs; 0: in force as far as seen
    std::span<const ProtocolStep> steps = {};  ///< empty: its steps were not seen, and none are made up
};

/// One a procedure, in the order above.
[[nodiscard]] std::span<const Protocol> protocols();

}  // namespace toehold::resistance::ultimate
