// Where joists end and what holds them up decides whether they bend, roll or lift under a guard post. Without it the
// blocks are checked between joists that are taken to stand still, and nothing below them is.
#include "checks/registry.h"

namespace toehold::checks {
namespace {

std::string missing(const model::Framing& framing) {
    if (!framing.joists) return "Describe the joists: section, species, grade, places, ends and supports.";
    std::string what;
    if (!framing.joists->from_in || !framing.joists->to_in)
        what = "State where the joists begin and end (`from` and `to`).";
    if (framing.supports.empty()) {
        if (!what.empty()) what += " ";
        what +=
            "State every line that supports them: ledger or beam, its place along the joists, the length of bearing on "
            "a beam, and what joins the joists to it.";
    }
    return what;
}

std::vector<Finding> joists_not_described(const catalog::Resolved& resolved) {
    const model::Framing& framing = resolved.detail.framing;
    if (framing.blocks.empty() && !framing.joists) return {};
    const std::string what = missing(framing);
    if (what.empty()) return {};
    return {{"", Severity::missing, "joists", "",
             "The push is followed to the ends of the blocks only: what holds the joists is not described. " + what}};
}

const RegisterFinding registered{{"joists-not-described", "Joists' lengths and supports not described",
                                  "IRC 2021 R507.10.1; common practice", joists_not_described}};

}  // namespace
}  // namespace toehold::checks
