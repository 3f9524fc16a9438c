#pragma once
// The first check that fails, and no check after it: where it matters that a detail fails, and not how.
#include "checks/result.h"
#include "demand/sampling.h"

#include <optional>
#include <string>

namespace toehold::checks {
class Prepared;
}

namespace toehold::catalog {
struct Resolved;
}
namespace toehold::demand {
struct Demand;
}

namespace toehold::review {

/// What the demand holds of the states there are.
enum class States {
    all,     ///< the whole demand: what fails here fails, and what does not is for `evaluate` to say
    sampled  ///< a part of it (demand/sampling.h): what is given here fails under the whole too
};

/// From which ratio on a failure under sampled states counts. Where the whole demand keeps the mesh it begins with,
/// each sampled state is one of its own, and the bound is exact. Where it refines that mesh, its forces differ by no
/// more than `demand::probe_margin` (measured on 604 changed bases: by 0.001), and near its limit a ratio grows with
/// the square of the forces at most.
inline constexpr double least_sampled_ratio = (1.0 + demand::probe_margin) * (1.0 + demand::probe_margin);

struct FirstFailure {
    std::string check;  ///< id
    model::PartId part = {};
    checks::Status status = checks::Status::fails;
    double ratio = 0.0;  ///< demand over capacity; infinite without a load path; 0 where something is not specified
};

/// In the order of the registry; of one check the worst result, first by status. A check that lacks what it needs fails
/// too: no detail with one is adequate.
///
/// Why a failure under some states is one under all: nearly every check takes the largest of one quantity over the
/// states, so its ratio under more states is no smaller. The few of which that is not so say in `checks/at_least.h`
/// what is so of them, and that is asked in their place. A force that meets no capacity at all counts from 1 (lb, psi,
/// lb in) on, so that it is no noise of the mesh. `prepared`: what the checks found of this demand before; nullptr:
/// nothing is shared.
[[nodiscard]] std::optional<FirstFailure> first_failure(const catalog::Resolved& resolved, const demand::Demand& demand,
                                                        States states = States::all,
                                                        checks::Prepared* prepared = nullptr);

}  // namespace toehold::review
