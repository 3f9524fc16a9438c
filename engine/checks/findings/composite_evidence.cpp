// Plastic composite boards are installed by a standard and the maker's instructions; without naming them nobody knows
// what the boards allow on them.
#include "checks/registry.h"

namespace toehold::checks {
namespace {

std::vector<Finding> composite_evidence(const catalog::Resolved& resolved) {
    const auto& decking = resolved.detail.layers.decking;
    if (!decking || !resolved.decking || resolved.decking->kind != catalog::DeckingKind::plastic_composite) return {};
    if (!decking->evidence.empty()) return {};
    return {
        {"", Severity::missing, "decking", "",
         "The decking is a plastic composite and nothing says what it is labelled and installed to. State the "
         "standard (ASTM D7032), the evaluation report or the manufacturer's instructions, and whether they allow a "
         "guard post on the boards."}};
}

const RegisterFinding registered{{"composite-evidence", "Evidence for composite decking",
                                  "IRC 2021 R507.2.2; ASTM D7032 (from memory, to be confirmed)", composite_evidence}};

}  // namespace
}  // namespace toehold::checks
