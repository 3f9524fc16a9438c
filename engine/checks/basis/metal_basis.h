#pragma once
// The detail's method (ASD or LRFD) applied to strengths of metal, and how a metal's rules are named.
#include "catalog/rows.h"
#include "checks/basis/result_parts.h"
#include "checks/result.h"
#include "model/basis.h"
#include "resistance/safety.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::checks {

/// Nominal over omega under ASD, phi times nominal under LRFD, with the one line that says so.
[[nodiscard]] Adjusted available(double nominal, const resistance::Safety& safety, const model::Basis& basis,
                                 const std::string& clause);

/// What a part can carry: a usable value with its worked lines, or the sentence that says why there is none.
struct Capacity {
    double value = 0.0;
    std::string clause;
    std::vector<Step> steps;
    format::Phrase missing;  ///< empty when there is a value
};

/// Gives the result the capacity's clause, steps and value. False where there is no value: the result then lacks
/// evidence.
[[nodiscard]] bool take_capacity(CheckResult& result, const Capacity& capacity);

/// How a part is welded, as far as the strength of its metal depends on it.
struct Welding {
    bool welded = false;
    const catalog::Filler* filler = nullptr;  ///< nullptr: not described, and the one that softens most counts
    double thickness_in = 0.0;                ///< of the part
};

/// Strengths to use beside a weld: aluminum's welded ones, any other metal's own. `missing` when aluminum has none, and
/// for a metal whose strengths a certificate must give.
struct BesideWeld {
    double yield_psi = 0.0;
    double ultimate_psi = 0.0;
    bool reduced = false;  ///< by the weld's heat
    format::Phrase missing;
    std::optional<catalog::SofterWeld> softer = std::nullopt;  ///< the yield is that of this filler in a thick part
};
[[nodiscard]] BesideWeld strengths(const catalog::Metal& metal, const Welding& welding);

/// `Fy` and `Fu` as steps.
[[nodiscard]] Step yield_step(const catalog::Metal& metal, const BesideWeld& used);
[[nodiscard]] Step ultimate_step(const catalog::Metal& metal, const BesideWeld& used);

/// The clause, marked where AISC 360 is only read across: it does not cover stainless steel.
[[nodiscard]] std::string steel_clause(const catalog::Metal& metal, const std::string& clause);

}  // namespace toehold::checks
