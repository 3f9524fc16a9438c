// What the file leaves open: values without a source, and parts it does not describe.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/registry.h"
#include "model/member.h"

#include <utility>

namespace toehold::checks {
namespace {

using format::Citation;
using format::phrase;
using model::PartId;
using model::PartKind;

// Values a user enters must say where they come from, or nobody can check them.

void look_at_fasteners(std::vector<Finding>& findings, const model::BaseDetail& detail) {
    for (const model::AnchorGroup& group : anchor_groups(detail)) {
        const auto* reported = std::get_if<model::ReportedFastener>(&group.fastener);
        if (reported == nullptr || !reported->report.empty()) continue;
        findings.push_back(
            finding_on({PartKind::fastener, reported->name}, Severity::missing,
                       phrase("The source of the allowable values of fastener {} is not specified. Name the evaluation "
                              "report, its edition and table.",
                              reported->name)));
    }
}

/// `part`: the held part at its holder.
void look_at_connector(std::vector<Finding>& findings, const model::EndConnection& connection, const PartId& part) {
    const auto* connector = std::get_if<model::ReportedConnector>(&connection);
    if (connector == nullptr || !connector->report.empty() || !connector->chosen) return;
    findings.push_back(
        finding_on(part, Severity::missing,
                   phrase("The source of the allowable values of the connector, {}, is not specified. Name "
                          "the report, its edition and table.",
                          model::part_name(part))));
}

void look_at_block_end(std::vector<Finding>& findings, const model::Framing& framing, const model::Block& block,
                       const model::BlockEnd& end) {
    const auto holder = model::find_member(framing, end.joist);
    const PartId to = holder ? model::part_of(model::member(framing, *holder)) : PartId{PartKind::joist, end.joist};
    look_at_connector(findings, end.connection, model::held_at({PartKind::block, block.id}, to));
}

void look_at_framing(std::vector<Finding>& findings, const model::Framing& framing) {
    for (const model::Block& block : framing.blocks) {
        look_at_block_end(findings, framing, block, block.from_end);
        look_at_block_end(findings, framing, block, block.to_end);
    }
    for (const model::JoistSupport& support : framing.supports) {
        const bool beam = support.kind == model::JoistSupport::Kind::beam;
        const PartId to{beam ? PartKind::beam : PartKind::ledger, support.id};
        look_at_connector(findings, support.connection, model::held_at({PartKind::joist}, to));
    }
    for (const model::Rim& rim : framing.rims)
        look_at_connector(findings, rim.connection, model::held_at({PartKind::joist}, {PartKind::rim, rim.id}));
}

void look_at_boards(std::vector<Finding>& findings, const model::Decking* boards) {
    if (boards == nullptr || !boards->fastening) return;
    const model::DeckingFastening& fastening = *boards->fastening;
    if (!(fastening.lateral_lb > 0.0) || !fastening.report.empty()) return;
    findings.push_back(finding_on({PartKind::boards}, Severity::missing,
                                  phrase("The source of the allowable lateral value of the deck-board fasteners is not "
                                         "specified. Name the report, its edition and table.")));
}

void look_at_bearing(std::vector<Finding>& findings, const model::Decking* boards) {
    if (boards == nullptr || !boards->report.empty()) return;
    if (!(boards->bearing_psi > 0.0) && !(boards->modulus_psi > 0.0)) return;
    findings.push_back(
        finding_on({PartKind::decking}, Severity::missing,
                   phrase("The source of the boards' allowable bearing or modulus is not specified. Name "
                          "the evaluation report, its edition and table.")));
}

/// A closed, welded shoe without a reported moment is judged by its geometry.
bool is_by_geometry(const model::Shoe& shoe) {
    return !shoe.allowable_moment_lb_in && shoe.form == model::ShoeForm::closed &&
           shoe.attachment == model::ShoeAttachment::welded;
}

void look_at_shoe(std::vector<Finding>& findings, const model::BaseDetail& detail) {
    const auto* wood = std::get_if<model::WoodPost>(&detail.post);
    if (kind(detail.mount) != model::MountKind::plate_on_deck) return;
    if (wood == nullptr || is_by_geometry(wood->shoe)) return;
    if (!wood->shoe.allowable_moment_lb_in) {
        findings.push_back(
            finding_on({PartKind::shoe}, Severity::missing,
                       phrase("The allowable moment of the shoe is not specified. Give it from a test or "
                              "evaluation report.")));
    } else if (wood->shoe.moment_source.empty()) {
        findings.push_back(
            finding_on({PartKind::shoe}, Severity::missing,
                       phrase("The source of the shoe's allowable moment is not specified. Name the test or "
                              "evaluation report.")));
    }
}

void look_at_ties(std::vector<Finding>& findings, const model::BaseDetail& detail) {
    const auto* const mount = std::get_if<model::SideFastened>(&detail.mount);
    if (mount == nullptr) return;
    for (const model::TensionTie& tie : mount->ties) {
        if (!tie.report.empty() || !tie.chosen) continue;
        findings.push_back(finding_on({PartKind::tie, tie.id}, Severity::missing,
                                      phrase("The source of the allowable values of tie {} is not specified. Name the "
                                             "evaluation report, its edition and table.",
                                             tie.id)));
    }
}

void look_at_stiffness(std::vector<Finding>& findings, const model::Basis& basis) {
    if (!basis.stiffness || !basis.stiffness->reason.empty()) return;
    findings.push_back(
        finding_on({PartKind::stiffness}, Severity::missing,
                   phrase("The stiffness of bed and anchors is fixed without a reason, which turns off the "
                          "range otherwise covered. Name the test or give the reason.")));
}

std::vector<Finding> missing_evidence(const catalog::Resolved& resolved) {
    std::vector<Finding> findings;
    look_at_fasteners(findings, resolved.detail);
    look_at_framing(findings, resolved.detail.framing);
    look_at_boards(findings, model::deck_boards(resolved.detail));
    look_at_bearing(findings, model::deck_boards(resolved.detail));
    look_at_shoe(findings, resolved.detail);
    look_at_ties(findings, resolved.detail);
    look_at_stiffness(findings, resolved.detail.basis);
    return findings;
}

// Plastic composite boards are installed by a standard and the maker's instructions; without naming them nobody knows
// what the boards allow on them.

std::vector<Finding> composite_evidence(const catalog::Resolved& resolved) {
    const auto& decking = on_deck(resolved.detail).layers.decking;
    if (!decking || !on_deck(resolved).decking ||
        on_deck(resolved).decking->kind != catalog::DeckingKind::plastic_composite)
        return {};
    // On packing the post does not stand on the boards; a report for their bearing is such evidence.
    if (!decking->evidence.empty() || !decking->report.empty() || on_deck(resolved.detail).layers.packing) return {};
    return {finding_on({PartKind::decking}, Severity::missing,
                       phrase("The decking is a plastic composite, and the standard it is labeled and installed to is "
                              "not specified. Name "
                              "the standard ({}), the evaluation report or the manufacturer's instructions, "
                              "and whether they allow "
                              "a guard post on the boards.",
                              Citation{"ASTM D7032"}))};
}

// A detail that takes its plate from another file is judged on the plate found there now, which may not be the plate it
// was drawn with.

std::vector<Finding> plate_changed(const catalog::Resolved& resolved) {
    const auto& reference = on_deck(resolved.detail).plate_reference;
    if (!reference) return {};
    const PartId plate{PartKind::plate, reference->id};
    if (reference->sha256.empty()) {
        return {
            finding_on(plate, Severity::caution,
                       phrase("The plate comes from {} without its sha256: if that file changes, the detail changes "
                              "unnoticed. Give the plate's sha256 in the detail.",
                              reference->file))};
    }
    if (reference->sha256 == reference->found_sha256) return {};
    return {finding_on(
        plate, Severity::missing,
        phrase("The plate in {} is not the one this detail was made with: its sha256 differs. Compare the two, "
               "then give the sha256 of the right one.",
               reference->file))};
}

// Where joists end and what supports them decides whether they bend, roll or lift under a guard post. Without it the
// blocks are checked between rigid joists, and nothing below them is.

format::Phrase missing(const model::Framing& framing) {
    if (!framing.joists) return phrase("Give their section, species, grade, places, ends and supports.");
    format::Phrase ends, supports;
    if (!framing.joists->from_in || !framing.joists->to_in)
        ends = phrase("Give where the joists begin and end (`from` and `to`).");
    if (framing.supports.empty())
        supports = phrase(
            "Give every line that supports them: ledger or beam, its place along the joists, the bearing length on a "
            "beam, "
            "and the connection of the joists to it.");
    return sentences(std::move(ends), std::move(supports));
}

std::vector<Finding> joists_not_described(const catalog::Resolved& resolved) {
    const model::Framing& framing = resolved.detail.framing;
    if (framing.blocks.empty() && !framing.joists) return {};
    format::Phrase what = missing(framing);
    if (what.empty()) return {};
    return {
        finding_on({PartKind::joist}, Severity::missing,
                   sentences(phrase("The supports of the joists are not specified: the load is followed to the block "
                                    "ends only."),
                             std::move(what)))};
}

const RegisterFinding source_rule{
    {"missing-evidence", phrase("Values without a source"), "common practice", missing_evidence}};
const RegisterFinding composite_rule{{"composite-evidence",
                                      phrase("Evidence for composite decking"),
                                      "ASTM D7032 (from memory, to be confirmed)",
                                      composite_evidence,
                                      {},
                                      {},
                                      model::Provision::composite_boards},
                                     {model::MountKind::plate_on_deck}};
const RegisterFinding plate_rule{{"plate-changed", phrase("Plate from another file"), "common practice", plate_changed},
                                 {model::MountKind::plate_on_deck}};
const RegisterFinding joists_rule{{"joists-not-described",
                                   phrase("Joist lengths and supports not specified"),
                                   "common practice",
                                   joists_not_described,
                                   {},
                                   {},
                                   model::Provision::deck_guard}};

}  // namespace
}  // namespace toehold::checks
