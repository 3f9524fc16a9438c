// Nails or screws through a joist into a block's end grain. Uplift loads them across their axis, which the standard
// allows with a reduced value. A push along the block draws them out of the end it leaves, which it does not; that push
// then rests on the joist at the other end alone, and nothing ties that joist back. A rim nailed to the joists' ends is
// drawn off in the same way.
#include "checks/findings/loaded_rims.h"
#include "checks/registry.h"

namespace toehold::checks {
namespace {

bool end_grain_only(const model::EndConnection& connection) {
    return std::holds_alternative<model::EndGrainFasteners>(connection);
}

bool end_grain_only(const model::BlockEnd& end) { return end_grain_only(end.connection); }

/// Whether some push considered runs along the axis. Outward is along y.
bool pushed_along(const model::Loads& loads, model::PlanAxis axis) {
    return loads.directions == model::Directions::all_round || axis == model::PlanAxis::y;
}

const char* name(model::PlanAxis axis) { return axis == model::PlanAxis::x ? "along the rail" : "outward and inward"; }

/// There are blocks along the axis, and none has an end with anything but fasteners in end grain.
bool all_rely_on_it(const model::Framing& framing, model::PlanAxis axis) {
    bool any = false;
    for (const model::Block& block : framing.blocks) {
        if (block.along != axis) continue;
        if (!end_grain_only(block.from_end) || !end_grain_only(block.to_end)) return false;
        any = true;
    }
    return any;
}

/// A push across a rim that carries load, away from the joists, draws it off them.
void look_at_rims(std::vector<Finding>& findings, const catalog::Resolved& resolved) {
    const auto& joists = resolved.detail.framing.joists;
    if (!joists || !pushed_along(resolved.detail.loads, joists->along)) return;
    for (const model::Rim* rim : loaded_rims(resolved)) {
        if (!end_grain_only(rim->connection)) continue;
        findings.push_back(
            {"", Severity::fails, "rim " + rim->id, "",
             "Rim " + rim->id +
                 " carries the base and is joined to the joists by fasteners in their end grain alone: "
                 "a push away from the deck draws it off. Add hardware that ties it back to the joists."});
    }
}

std::vector<Finding> end_grain_withdrawal(const catalog::Resolved& resolved) {
    const model::Framing& framing = resolved.detail.framing;
    std::vector<Finding> findings;
    for (const model::PlanAxis axis : {model::PlanAxis::x, model::PlanAxis::y}) {
        if (!all_rely_on_it(framing, axis) || !pushed_along(resolved.detail.loads, axis)) continue;
        findings.push_back({"", Severity::fails, std::string("blocks ") + name(axis), "",
                            std::string("A push ") + name(axis) +
                                " draws fasteners out of end grain: every end of every block in that direction has "
                                "nothing else. Add hardware that holds the block to the joist at one end at least."});
    }
    for (const model::Block& block : framing.blocks) {
        if (!end_grain_only(block.from_end) && !end_grain_only(block.to_end)) continue;
        findings.push_back(
            {"", Severity::caution, "block " + block.id, "",
             "Block " + block.id +
                 " is joined by fasteners in end grain. They are checked for load across their axis only, "
                 "at two thirds of the side grain value; end grain splits and dries open. Hardware on "
                 "both sides of the block holds better."});
    }
    look_at_rims(findings, resolved);
    return findings;
}

const RegisterFinding registered{{"end-grain-withdrawal", "Fasteners in end grain",
                                  "IRC 2021 R507.10.1.1; NDS 2018 12.2.3, 12.5.2 (from memory, to be confirmed)",
                                  end_grain_withdrawal}};

}  // namespace
}  // namespace toehold::checks
