#pragma once
// What a check's result is in a load test: a link with a mean strength, a link that nothing published gives a mean of,
// or no link of its own. One table by the check's id; no sentence is read.
#include "checks/result.h"
#include "resistance/ultimate/links.h"
#include "study/proof_load/tested_base.h"

#include <optional>
#include <variant>

namespace toehold::study {

/// A link that may break or, where its basis says so, yield.
struct LinkStrength {
    resistance::ultimate::Link link = resistance::ultimate::Link::lag_withdrawal;
    double mean_over_capacity = 0.0;                     ///< of the capacity on the basis of `check_state`, > 0
    double calculation_power = 1.0;                      ///< of the calculation's error in it; 0: by statics alone
    bool wood = false;                                   ///< shares in the moisture's scatter
    bool fastened = false;                               ///< shares in the workmanship's
    std::optional<model::PartId> member = std::nullopt;  ///< whose density it goes with
};

enum class LeftOutFor {
    no_published_mean,
    deforms_only,   ///< pressed wood carries more: it moves, and does not break
    not_specified,  ///< the file does not give what its strength needs
};

struct NoStrength {
    LeftOutFor why = LeftOutFor::no_published_mean;
    std::optional<resistance::ultimate::Link> link = std::nullopt;  ///< absent: none of those with a basis
};

/// No link of its own: a dimension, or other links stand for it.
struct Covered {};

using InTest = std::variant<LinkStrength, NoStrength, Covered>;

/// `resolved` with the basis the result was found on.
[[nodiscard]] InTest in_test(const catalog::Resolved& resolved, const TestedState& state,
                             const checks::CheckResult& result);

}  // namespace toehold::study
