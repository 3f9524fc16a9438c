#pragma once
// The sheet a load test of one guard post is made by: what to do before it, the steps by clause with their loads, and
// boxes for what is measured beside the movement that is computed.
#include "paper/document.h"

#include <string>

namespace toehold::catalog {
struct Resolved;
}
namespace toehold::study {
struct ComputedMovement;
}

namespace toehold::paper {

struct Issue;

struct TestedGuard {
    const catalog::Resolved& resolved;
    std::string input_sha256;
    const study::ComputedMovement* computed = nullptr;  ///< nullptr: no movement can be computed
};

[[nodiscard]] Document test_sheet(const TestedGuard& guard, const Issue& issue);

}  // namespace toehold::paper
