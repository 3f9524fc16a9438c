#pragma once
// A load test foretold as JSON, schema `toehold.proof/1`: lb, in, rad; shares from 0 to 1.
#include <string>

namespace toehold::study {
struct Compared;
struct ComputedMovement;
struct ProofLoad;
}  // namespace toehold::study

namespace toehold::exporting {

struct Proven {
    const study::ProofLoad& proof;
    std::string detail;  ///< its name
    std::string input_sha256;
    const study::ComputedMovement* computed = nullptr;  ///< nullptr: nothing was measured
    const study::Compared* compared = nullptr;          ///< the same
};

[[nodiscard]] std::string proof_json(const Proven& proven);

}  // namespace toehold::exporting
