#pragma once
// Checks and finding rules register themselves; nothing lists them by hand. A check is one file:
//
//     std::vector<CheckResult> withdrawal(const CheckInput& input) { ... }
//     const RegisterCheck registered{{"anchor-withdrawal", phrase("Anchor withdrawal"), "NDS 2018 12.2.1",
//                                     phrase("One sentence on what it covers."), withdrawal}};
//
// A check that does not apply returns nothing.
#include "checks/prepared.h"
#include "checks/result.h"
#include "format/phrase.h"
#include "model/building_code.h"
#include "model/mount.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace toehold::catalog {
struct Resolved;
}
namespace toehold::demand {
struct Demand;
}

namespace toehold::checks {

struct CheckInput {
    const catalog::Resolved& resolved;
    const demand::Demand& demand;
    /// Of this demand on this detail, whatever its basis; null: nothing is shared with another run.
    Prepared* prepared = nullptr;
    Asked asked = Asked::numbers;

    /// The value of this type and key, from `prepared` where there is one; `find()` is asked only where it is not there
    /// yet.
    template <class Value, class Find>
    [[nodiscard]] std::shared_ptr<const Value> once(Find&& find, int key = 0) const {
        if (prepared == nullptr) return std::make_shared<const Value>(std::forward<Find>(find)());
        return prepared->once<Value>(std::forward<Find>(find), key);
    }
};

struct Check {
    std::string id;         ///< unique, lower case with hyphens
    format::Phrase title;   ///< a few words for a table
    std::string clause;     ///< with edition
    format::Phrase covers;  ///< one sentence
    std::function<std::vector<CheckResult>(const CheckInput&)> function;
    /// Ids of the checks whose failure on a part follows from this one's failing there: mend this first.
    std::vector<std::string> causes = {};
    std::vector<model::MountKind> mounts = {};  ///< it is for; empty: every mount, whose anchors and members it reads
    /// Of the code in force, whose clause then stands before `clause`.
    std::optional<model::Provision> provision = std::nullopt;
};

struct FindingRule {
    std::string id;
    format::Phrase title;
    std::string clause;
    /// Looks at the detail alone, so that it speaks even where no demand can be found; may be empty.
    std::function<std::vector<Finding>(const catalog::Resolved&)> function;
    std::vector<model::MountKind> mounts = {};  ///< as of a check
    /// Looks at the demand too; mostly empty.
    std::function<std::vector<Finding>(const CheckInput&)> under_load = {};
    std::optional<model::Provision> provision = std::nullopt;  ///< as of a check
    Cause cause = Cause::beside;                               ///< of what it finds
};

/// In order of id. A second registration of an id replaces nothing and throws std::logic_error.
[[nodiscard]] const std::vector<Check>& registered_checks();
[[nodiscard]] const std::vector<FindingRule>& registered_findings();
void add_check(Check check);
void add_finding_rule(FindingRule rule);

[[nodiscard]] bool applies(const Check& check, model::MountKind mount);
[[nodiscard]] bool applies(const FindingRule& rule, model::MountKind mount);
/// The clause under this code.
[[nodiscard]] std::string clause_of(const Check& check, model::BuildingCode code);
[[nodiscard]] std::string clause_of(const FindingRule& rule, model::BuildingCode code);
/// What a mount of this kind is checked for, in order of id.
[[nodiscard]] std::vector<const Check*> checks_of(model::MountKind mount);

/// `mounts`: the kinds it is for; without them, every kind. `cause`: where what a rule finds stands among causes.
struct RegisterCheck {
    explicit RegisterCheck(Check check, std::vector<model::MountKind> mounts = {}) {
        check.mounts = std::move(mounts);
        add_check(std::move(check));
    }
};
struct RegisterFinding {
    explicit RegisterFinding(FindingRule rule, std::vector<model::MountKind> mounts = {}, Cause cause = Cause::beside) {
        rule.mounts = std::move(mounts);
        rule.cause = cause;
        add_finding_rule(std::move(rule));
    }
};

/// Nothing for a mount it is not for. Runs one, filling in id, title and clause, and checking that every number is
/// finite (ratio may be infinite).
[[nodiscard]] std::vector<CheckResult> run(const Check& check, const CheckInput& input);
[[nodiscard]] std::vector<Finding> run(const FindingRule& rule, const catalog::Resolved& resolved);
/// What the rule finds under load.
[[nodiscard]] std::vector<Finding> run(const FindingRule& rule, const CheckInput& input);

}  // namespace toehold::checks
