// A proof test the file asks about: every strength under its push, with the allowable values of the detail's method,
// wood at the ten minutes such a push is held. To pass says that even allowable stresses are kept during the test. That
// is more than the test asks for, which is not to break: a failure here says that the test would use what the safety
// factors hold back.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/registry.h"
#include "demand/by_duration.h"
#include "demand/demand.h"

namespace toehold::checks {
namespace {

using format::phrase;
using format::Quantity;

/// A least distance or length, not a strength.
bool is_dimension(const CheckResult& result) { return result.unit == "in"; }

struct Tested {
    std::optional<CheckResult> worst;
    std::size_t failing = 0;
};

Tested tested(const CheckInput& input, const demand::Demand& test) {
    catalog::Resolved resolved = input.resolved;
    resolved.detail.basis = demand::for_duration(resolved.detail.basis, demand::LoadDuration::proof_test);
    Tested found;
    for (const Check& check : registered_checks()) {
        for (CheckResult& result : run(check, {resolved, test})) {
            if (is_dimension(result) || result.status == Status::missing_evidence) continue;
            if (result.ratio > 1.0) ++found.failing;
            if (!found.worst || result.ratio > found.worst->ratio) found.worst = std::move(result);
        }
    }
    return found;
}

std::vector<Finding> proof_test(const CheckInput& input) {
    if (!input.demand.proof_test) return {};
    const demand::Demand& test = *input.demand.proof_test;
    const Tested found = tested(input, test);
    if (!found.worst) return {};
    const Quantity push{test.cases.front().push_lb, "lb"};
    const format::Phrase part = model::part_name(found.worst->part);
    if (found.failing == 0) {
        return {finding_on({model::PartKind::push}, Severity::caution,
                           phrase("Proof test of {} outward: every strength keeps its allowable value for ten minutes. "
                                  "Nearest its limit: {}, {}, at {:.2f}.",
                                  push, found.worst->title, part, found.worst->ratio))};
    }
    return {
        finding_on({model::PartKind::push}, Severity::fails,
                   phrase("Proof test of {} outward: {} strengths exceed their allowable value for ten minutes. The "
                          "first: {}, {}, at {:.2f}. The test itself may still pass: it asks that nothing break.",
                          push, found.failing, found.worst->title, part, found.worst->ratio))};
}

const RegisterFinding rule{{"proof-test",
                            phrase("Proof test"),
                            "NDS 2018 Table 2.3.2, Table N3",
                            {},
                            {},
                            proof_test,
                            model::Provision::load_test}};

}  // namespace
}  // namespace toehold::checks
