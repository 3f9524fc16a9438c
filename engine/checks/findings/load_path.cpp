// Places where the load path ends: anchors that reach no framing, members joined to nothing, and connections that
// cannot take the force they are given.
#include "catalog/anchor_view.h"
#include "checks/anchor/seating.h"
#include "checks/basis/result_parts.h"
#include "checks/registry.h"
#include "demand/loads/code_loads.h"
#include "model/member.h"

#include <algorithm>

namespace toehold::checks {
namespace {

using format::phrase;
using model::PartKind;
using model::PartPiece;

std::string beside_clause(const catalog::Resolved& resolved) {
    return model::clause(model::building_code(resolved.detail.basis), model::Provision::guard_beside_framing);
}

// Anchors that reach no framing hold in decking alone.

/// Of an anchor driven into a member's side.
format::Phrase missed_from_the_side(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    if (!anchor.seat)
        return phrase(
            "Anchor {} misses the member behind the post: it passes above, below or beside it. Move it, or use a "
            "deeper member.",
            anchor.id);
    const format::Phrase member = member_name(resolved, anchor);
    if (!within_one_piece(anchor))
        return phrase(
            "Anchor {} is in a seam, an edge or an end of {} and does not count. Move the anchor or the framing so "
            "that the whole hole is in one piece of wood.",
            anchor.id, member);
    return phrase("Anchor {} is too short to reach {}. Use a longer anchor.", anchor.id, member);
}

format::Phrase missed(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    if (catalog::lies_level(anchor)) return missed_from_the_side(resolved, anchor);
    if (!anchor.seat)
        return phrase(
            "Anchor {} misses the framing: no block, joist or rim is under it. Add a block between the joists under "
            "it, "
            "and use an anchor long enough to reach well into it.",
            anchor.id);
    const format::Phrase member = member_name(resolved, anchor);
    if (!within_one_piece(anchor))
        return phrase(
            "Anchor {} is in a seam, a face or an end of {} and does not count. Move the anchor or the framing so that "
            "the whole hole is in one piece of wood.",
            anchor.id, member);
    return phrase("Anchor {} is too short to reach {} under it. Use a longer anchor.", anchor.id, member);
}

std::vector<Finding> none_lands(const catalog::Resolved& resolved) {
    if (catalog::lies_level(resolved.anchors.front())) {
        return {finding_on({PartKind::base}, Severity::fails,
                           phrase("No anchor reaches a block, joist or rim: nothing fastens the post to the framing. "
                                  "Use anchors long enough to reach well into the member behind the post."),
                           beside_clause(resolved))};
    }
    return {finding_on({PartKind::base}, Severity::fails,
                       phrase("No anchor reaches a block, joist or rim: the base is fastened to the decking only. Add "
                              "blocking between "
                              "the joists under every anchor, and use anchors long enough to reach well into it."))};
}

std::vector<Finding> decking_only(const catalog::Resolved& resolved) {
    const auto& anchors = resolved.anchors;
    if (anchors.empty() || std::all_of(anchors.begin(), anchors.end(), lands)) return {};
    const auto passes_by = [](const catalog::Anchor& anchor) { return !anchor.seat || !(anchor.embedment_in > 0.0); };
    if (std::all_of(anchors.begin(), anchors.end(), passes_by)) return none_lands(resolved);
    std::vector<Finding> findings;
    for (const catalog::Anchor& anchor : anchors) {
        if (lands(anchor)) continue;
        findings.push_back(finding_on(part_of(anchor), Severity::fails, missed(resolved, anchor),
                                      catalog::lies_level(anchor) ? beside_clause(resolved) : std::string()));
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
             const model::BlockEnd& end, PartPiece piece) {
    const model::PartId part{PartKind::block, block.id, piece};
    if (end.joist.empty()) {
        findings.push_back(finding_on(part, Severity::fails,
                                      piece == PartPiece::lower_end
                                          ? phrase("No load path: nothing supports the lower end of block {}. Name the "
                                                   "joist it meets, or extend the "
                                                   "block to one.",
                                                   block.id)
                                          : phrase("No load path: nothing supports the upper end of block {}. Name the "
                                                   "joist it meets, or extend the "
                                                   "block to one.",
                                                   block.id)));
        return;
    }
    if (!nothing_in(end.connection)) return;
    const auto holder = model::find_member(framing, end.joist);
    const model::PartId to =
        holder ? model::part_of(model::member(framing, *holder)) : model::PartId{PartKind::joist, end.joist};
    findings.push_back(finding_on(
        part, Severity::fails,
        piece == PartPiece::lower_end
            ? phrase(
                  "No load path: the lower end of block {} is not connected to {}. Specify the hardware or fasteners.",
                  block.id, model::part_name(to))
            : phrase(
                  "No load path: the upper end of block {} is not connected to {}. Specify the hardware or fasteners.",
                  block.id, model::part_name(to))));
}

void look_at(std::vector<Finding>& findings, const model::JoistSupport& support) {
    if (support.kind != model::JoistSupport::Kind::ledger || !nothing_in(support.connection)) return;
    findings.push_back(
        finding_on({PartKind::ledger, support.id}, Severity::fails,
                   phrase("No load path: the joists are not connected to ledger {}. Specify the hangers or fasteners.",
                          support.id)));
}

std::vector<Finding> no_path_to_joists(const catalog::Resolved& resolved) {
    const model::Framing& framing = resolved.detail.framing;
    std::vector<Finding> findings;
    for (const model::Block& block : framing.blocks) {
        look_at(findings, framing, block, block.from_end, PartPiece::lower_end);
        look_at(findings, framing, block, block.to_end, PartPiece::upper_end);
    }
    for (const model::JoistSupport& support : framing.supports) look_at(findings, support);
    for (const model::Rim* rim : loaded_rims(resolved)) {
        if (!nothing_in(rim->connection)) continue;
        findings.push_back(
            finding_on({PartKind::rim, rim->id}, Severity::fails,
                       phrase("No load path: rim {} is not connected to the joists. Specify the hardware or fasteners.",
                              rim->id)));
    }
    return findings;
}

// Nails or screws through a joist into a block's end grain. Uplift loads them across their axis, which the standard
// allows with a reduced value. A push along the block draws them out of the end it leaves, which it does not; that push
// then rests on the joist at the other end alone, and nothing ties that joist back. A rim nailed to the joists' ends is
// drawn off in the same way. Screws whose report gives withdrawal from end grain are checked for it instead.

/// Structural screws whose report gives a withdrawal value from end grain.
bool drawn_by_report(const model::EndConnection& connection) {
    const auto* fasteners = std::get_if<model::EndGrainFasteners>(&connection);
    return fasteners != nullptr && fasteners->kind == model::EndGrainFasteners::Kind::structural_screw &&
           fasteners->reported.withdrawal_lb > 0.0;
}

bool end_grain_only(const model::EndConnection& connection) {
    return std::holds_alternative<model::EndGrainFasteners>(connection) && !drawn_by_report(connection);
}

bool end_grain_only(const model::BlockEnd& end) { return end_grain_only(end.connection); }

/// Whether some push considered runs along the axis. Outward is along y.
bool pushed_along(const model::BaseDetail& detail, model::PlanAxis axis) {
    return demand::code_directions(detail) == model::Directions::all_round || axis == model::PlanAxis::y;
}

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

/// The code's prescriptive text refuses withdrawal from end grain as the only hold; a report that gives a value for it
/// is an alternative the building official may accept (IRC R104.11), so it is said and does not turn the verdict.
void look_at_reported_screws(std::vector<Finding>& findings, const model::Framing& framing) {
    for (const model::Block& block : framing.blocks) {
        if (!drawn_by_report(block.from_end.connection) && !drawn_by_report(block.to_end.connection)) continue;
        findings.push_back(finding_on(
            {PartKind::block, block.id}, Severity::caution,
            phrase(
                "Block {} is held by screws in end grain with withdrawal values from their report. The code's own text "
                "does not count withdrawal from end grain; the building official must accept the report.",
                block.id)));
    }
}

/// A push across a rim that carries load, away from the joists, draws it off them. Of a post on a rim's side the rules
/// of that mount speak.
void look_at_rims(std::vector<Finding>& findings, const catalog::Resolved& resolved) {
    if (kind(resolved.detail.mount) != model::MountKind::plate_on_deck) return;
    const auto& joists = resolved.detail.framing.joists;
    if (!joists || !pushed_along(resolved.detail, joists->along)) return;
    for (const model::Rim* rim : loaded_rims(resolved)) {
        if (!end_grain_only(rim->connection)) continue;
        findings.push_back(finding_on({PartKind::rim, rim->id}, Severity::fails,
                                      phrase("Rim {} carries the base and is connected to the joists by fasteners in "
                                             "their end grain only: a load away "
                                             "from the deck pulls it off. Add hardware that ties it to the joists.",
                                             rim->id)));
    }
}

std::vector<Finding> end_grain_withdrawal(const catalog::Resolved& resolved) {
    const model::Framing& framing = resolved.detail.framing;
    std::vector<Finding> findings;
    for (const model::PlanAxis axis : {model::PlanAxis::x, model::PlanAxis::y}) {
        if (!all_rely_on_it(framing, axis) || !pushed_along(resolved.detail, axis)) continue;
        const bool along_rail = axis == model::PlanAxis::x;
        findings.push_back(finding_on(
            {PartKind::block, {}, along_rail ? PartPiece::along_x : PartPiece::along_y}, Severity::fails,
            along_rail
                ? phrase(
                      "A load along the rail withdraws fasteners from end grain: every block end in that direction has "
                      "nothing else. Add hardware that ties the block to the joist at one end at least.")
                : phrase(
                      "A load outward or inward withdraws fasteners from end grain: every block end in that direction "
                      "has nothing else. Add hardware that ties the block to the joist at one end at least.")));
    }
    look_at_reported_screws(findings, framing);
    for (const model::Block& block : framing.blocks) {
        if (!end_grain_only(block.from_end) && !end_grain_only(block.to_end)) continue;
        findings.push_back(finding_on(
            {PartKind::block, block.id}, Severity::caution,
            phrase("Block {} is connected by fasteners in end grain. They are checked for lateral load only, at two "
                   "thirds of the side grain value, and end grain splits and dries open. Hardware on both sides of the "
                   "block is better.",
                   block.id)));
    }
    look_at_rims(findings, resolved);
    return findings;
}

const RegisterFinding anchors_rule{{"decking-only",
                                    phrase("Anchors that miss the framing"),
                                    "",
                                    decking_only,
                                    {},
                                    {},
                                    model::Provision::guard_on_decking},
                                   {},
                                   Cause::load_path};
const RegisterFinding ends_rule{{"no-path-to-joists",
                                 phrase("Member ends not connected"),
                                 "",
                                 no_path_to_joists,
                                 {},
                                 {},
                                 model::Provision::deck_guard},
                                {},
                                Cause::load_path};
const RegisterFinding end_grain_rule{{"end-grain-withdrawal",
                                      phrase("Fasteners in end grain"),
                                      "NDS 2018 12.2.3, 12.5.2 (from memory, to be confirmed)",
                                      end_grain_withdrawal,
                                      {},
                                      {},
                                      model::Provision::guard_beside_framing}};

}  // namespace
}  // namespace toehold::checks
