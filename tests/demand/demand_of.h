#pragma once
#include "demand/demand.h"

#include <catch2/catch.hpp>

namespace toehold::test {

/// What the detail demands; the case ends where nothing balances it.
inline demand::Demand demand_of(const catalog::Resolved& resolved) {
    demand::Outcome outcome = demand::find_demand(resolved);
    INFO(format::english(outcome.failure));
    REQUIRE(outcome.demand);
    return *outcome.demand;
}

}  // namespace toehold::test
