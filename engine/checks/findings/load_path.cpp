// Places where the load path ends: anchors that reach no framing, members joined to nothing, and connections that
// cannot take the force they are given.
#include "checks/anchor/seating.h"
#include "checks/registry.h"
#include "model/member.h"

#include <algorithm>

namespace toehold::checks {
namespace {

// Anchors that reach no framing hold in decking alone.

constexpr const char* mend =
    " Put blocking between the joists under every anchor, and anchors long enough to reach well into it.";

std::string missed(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    const std::string name = "Anchor " + anchor.id;
    if (!anchor.seat) return name + " has no block, joist or rim under it." + mend;
    const std::string member = model::subject(member_of(resolved, anchor));
    if (!within_one_piece(anchor))
        return name + " stands in a seam, a face or an end of " + member + ", where it holds nothing." +
               " Move it, or the framing, so that the whole hole is in one piece of wood.";
    return name + " is too short to reach " + member + " under it." + mend;
}

std::vector<Finding> decking_only(const catalog::Resolved& resolved) {
    const auto& anchors = resolved.anchors;
    if (anchors.empty() || std::all_of(anchors.begin(), anchors.end(), lands)) return {};
    const auto passes_by = [](const catalog::Anchor& anchor) { return !anchor.seat || !(anchor.embedment_in > 0.0); };
    if (std::all_of(anchors.begin(), anchors.end(), passes_by)) {
        return {
            {"", Severity::fails, "base", "",
             std::string("No anchor reaches a block, a joist or a rim: the base is fastened to the decking only, which "
                         "can neither hold the anchors nor pass the push to the joists.") +
                 mend}};
    }
    std::vector<Finding> findings;
    for (const catalog::Anchor& anchor : anchors) {
        if (!lands(anchor)) findings.push_back({"", Severity::fails, subject(anchor), "", missed(resolved, anchor)});
    }
    return findings;
}

// The rims that a base loads: anchors stand in them, or a block's end meets them.

bool anchored(const catalog::Resolved& resolved, std::size_t rim) {
    const std::vector<model::Member> members = model::members(resolved.detail.framing);
    return std::any_of(resolved.anchors.begin(), resolved.anchors.end(), [&](const catalog::Anchor& anchor) {
        if (!anchor.seat) return false;
        const model::Member& member = members.at(anchor.seat->member);
        return member.kind == model::MemberKind::rim && member.index == rim;
    });
}

bool holds_a_block(const model::Framing& framing, const model::Rim& rim) {
    return std::any_of(framing.blocks.begin(), framing.blocks.end(), [&](const model::Block& block) {
        return block.from_end.joist == rim.id || block.to_end.joist == rim.id;
    });
}

/// Pointers into `resolved`, in the file's order.
std::vector<const model::Rim*> loaded_rims(const catalog::Resolved& resolved) {
    const model::Framing& framing = resolved.detail.framing;
    std::vector<const model::Rim*> loaded;
    for (std::size_t rim = 0; rim < framing.rims.size(); ++rim) {
        if (anchored(resolved, rim) || holds_a_block(framing, framing.rims[rim])) loaded.push_back(&framing.rims[rim]);
    }
    return loaded;
}

// Every block end must be joined to what it meets, every joist to its ledgers, and the joists to a rim that carries
// load, or the push stops there.

bool nothing_in(const model::EndConnection& connection) { return std::holds_alternative<std::monostate>(connection); }

void look_at(std::vector<Finding>& findings, const model::Framing& framing, const model::Block& block,
             const model::BlockEnd& end, const char* which) {
    const std::string place = "block " + block.id + ", " + which + " end";
    if (end.joist.empty()) {
        findings.push_back(
            {"", Severity::fails, place, "",
             "No joist holds the " + std::string(which) + " end of block " + block.id +
                 ": the load path stops there. Describe the joist it meets, or lengthen the block to one."});
        return;
    }
    if (!nothing_in(end.connection)) return;
    const auto holder = model::find_member(framing, end.joist);
    const std::string to = holder ? model::subject(model::member(framing, *holder)) : "joist " + end.joist;
    findings.push_back({"", Severity::fails, place, "",
                        "Nothing joins the " + std::string(which) + " end of block " + block.id + " to " + to +
                            ": the load path stops there. Describe the hardware or fasteners."});
}

void look_at(std::vector<Finding>& findings, const model::JoistSupport& support) {
    if (support.kind != model::JoistSupport::Kind::ledger || !nothing_in(support.connection)) return;
    findings.push_back({"", Severity::fails, "ledger " + support.id, "",
                        "Nothing joins the joists to ledger " + support.id +
                            ": the load path stops there. Describe the hangers or fasteners."});
}

std::vector<Finding> no_path_to_joists(const catalog::Resolved& resolved) {
    const model::Framing& framing = resolved.detail.framing;
    std::vector<Finding> findings;
    for (const model::Block& block : framing.blocks) {
        look_at(findings, framing, block, block.from_end, "lower");
        look_at(findings, framing, block, block.to_end, "upper");
    }
    for (const model::JoistSupport& support : framing.supports) look_at(findings, support);
    for (const model::Rim* rim : loaded_rims(resolved)) {
        if (!nothing_in(rim->connection)) continue;
        findings.push_back({"", Severity::fails, "rim " + rim->id, "",
                            "Nothing joins rim " + rim->id +
                                " to the joists: the load path stops there. Describe the hardware or fasteners."});
    }
    return findings;
}

// Nails or screws through a joist into a block's end grain. Uplift loads them across their axis, which the standard
// allows with a reduced value. A push along the block draws them out of the end it leaves, which it does not; that push
// then rests on the joist at the other end alone, and nothing ties that joist back. A rim nailed to the joists' ends is
// drawn off in the same way.

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

const RegisterFinding anchors_rule{
    {"decking-only", "Anchors that reach no framing", "IRC 2021 R507.10.1.2", decking_only}};
const RegisterFinding ends_rule{
    {"no-path-to-joists", "Member ends joined to nothing", "IRC 2021 R507.10.1", no_path_to_joists}};
const RegisterFinding end_grain_rule{{"end-grain-withdrawal", "Fasteners in end grain",
                                      "IRC 2021 R507.10.1.1; NDS 2018 12.2.3, 12.5.2 (from memory, to be confirmed)",
                                      end_grain_withdrawal}};

}  // namespace
}  // namespace toehold::checks
