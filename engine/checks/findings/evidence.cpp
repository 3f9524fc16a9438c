// What the file leaves open: values without a source, and parts it does not describe.
#include "checks/registry.h"

namespace toehold::checks {
namespace {

// Values a user enters must say where they come from, or nobody can check them.

void look_at_fasteners(std::vector<Finding>& findings, const model::BaseDetail& detail) {
    for (const model::AnchorGroup& group : anchor_groups(detail)) {
        const auto* reported = std::get_if<model::ReportedFastener>(&group.fastener);
        if (reported == nullptr || !reported->report.empty()) continue;
        findings.push_back({"", Severity::missing, "fastener " + reported->name, "",
                            "Allowable values are entered for the fastener " + reported->name +
                                " without saying where they come from. Name the evaluation report, its edition and "
                                "table."});
    }
}

/// `place`: `block B1 at joist J1`; `between`: the same in a sentence.
void look_at_connector(std::vector<Finding>& findings, const model::EndConnection& connection, const std::string& place,
                       const std::string& between) {
    const auto* connector = std::get_if<model::ReportedConnector>(&connection);
    if (connector == nullptr || !connector->report.empty()) return;
    findings.push_back({"", Severity::missing, place, "",
                        "Allowable values are entered for the connector between " + between +
                            " without saying where they come from. Name the report, its edition and table."});
}

void look_at_block_end(std::vector<Finding>& findings, const model::Block& block, const model::BlockEnd& end) {
    look_at_connector(findings, end.connection, "block " + block.id + " at joist " + end.joist,
                      "block " + block.id + " and joist " + end.joist);
}

void look_at_framing(std::vector<Finding>& findings, const model::Framing& framing) {
    for (const model::Block& block : framing.blocks) {
        look_at_block_end(findings, block, block.from_end);
        look_at_block_end(findings, block, block.to_end);
    }
    for (const model::JoistSupport& support : framing.supports) {
        const bool beam = support.kind == model::JoistSupport::Kind::beam;
        const std::string to = (beam ? "beam " : "ledger ") + support.id;
        look_at_connector(findings, support.connection, "joists at " + to, "the joists and " + to);
    }
    for (const model::Rim& rim : framing.rims)
        look_at_connector(findings, rim.connection, "joists at rim " + rim.id, "the joists and rim " + rim.id);
}

void look_at_boards(std::vector<Finding>& findings, const model::Decking* boards) {
    if (boards == nullptr || !boards->fastening) return;
    const model::DeckingFastening& fastening = *boards->fastening;
    if (!(fastening.lateral_lb > 0.0) || !fastening.report.empty()) return;
    findings.push_back({"", Severity::missing, "boards", "",
                        "An allowable lateral force is entered for the boards' fasteners without saying where it comes "
                        "from. Name the report, its edition and table."});
}

void look_at_shoe(std::vector<Finding>& findings, const model::Post& post) {
    const auto* wood = std::get_if<model::WoodPost>(&post);
    if (wood == nullptr) return;
    if (!wood->shoe.allowable_moment_lb_in) {
        findings.push_back({"", Severity::missing, "shoe", "",
                            "Nothing says what moment the shoe passes from the wood post to the plate. State its "
                            "allowable moment from a test or evaluation report."});
    } else if (wood->shoe.moment_source.empty()) {
        findings.push_back(
            {"", Severity::missing, "shoe", "",
             "The shoe's allowable moment is entered without saying where it comes from. Name the test or "
             "evaluation report."});
    }
}

void look_at_stiffness(std::vector<Finding>& findings, const model::Basis& basis) {
    if (!basis.stiffness || !basis.stiffness->reason.empty()) return;
    findings.push_back(
        {"", Severity::missing, "stiffness", "",
         "The stiffness of bed and anchors is fixed without a reason, which turns off the range the demand "
         "is otherwise found over. State the test or the reasoning."});
}

std::vector<Finding> missing_evidence(const catalog::Resolved& resolved) {
    std::vector<Finding> findings;
    look_at_fasteners(findings, resolved.detail);
    look_at_framing(findings, resolved.detail.framing);
    look_at_boards(findings, model::deck_boards(resolved.detail));
    look_at_shoe(findings, resolved.detail.post);
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
    if (!decking->evidence.empty()) return {};
    return {
        {"", Severity::missing, "decking", "",
         "The decking is a plastic composite and nothing says what it is labelled and installed to. State the "
         "standard (ASTM D7032), the evaluation report or the manufacturer's instructions, and whether they allow a "
         "guard post on the boards."}};
}

// A detail that takes its plate from another file is judged on the plate found there now, which may not be the plate it
// was drawn with.

std::vector<Finding> plate_changed(const catalog::Resolved& resolved) {
    const auto& reference = on_deck(resolved.detail).plate_reference;
    if (!reference) return {};
    const std::string plate = "plate " + reference->id;
    if (reference->sha256.empty()) {
        return {{"", Severity::caution, plate, "",
                 "The detail takes its plate from " + reference->file +
                     " without pinning it: should that file change, the detail changes unseen. State the plate's "
                     "sha256 in the detail."}};
    }
    if (reference->sha256 == reference->found_sha256) return {};
    return {{"", Severity::missing, plate, "",
             "The plate in " + reference->file +
                 " is not the one this detail was made with: its sha256 differs. Compare the two, then pin the plate "
                 "that is meant."}};
}

// Where joists end and what holds them up decides whether they bend, roll or lift under a guard post. Without it the
// blocks are checked between joists that are taken to stand still, and nothing below them is.

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

const RegisterFinding source_rule{{"missing-evidence", "Values without a source", "common practice", missing_evidence}};
const RegisterFinding composite_rule{
    {"composite-evidence", "Evidence for composite decking",
     "IRC 2021 R507.2.2; ASTM D7032 (from memory, to be confirmed)", composite_evidence},
    {model::MountKind::plate_on_deck}};
const RegisterFinding plate_rule{{"plate-changed", "Plate taken from another file", "common practice", plate_changed},
                                 {model::MountKind::plate_on_deck}};
const RegisterFinding joists_rule{{"joists-not-described", "Joists' lengths and supports not described",
                                   "IRC 2021 R507.10.1; common practice", joists_not_described}};

}  // namespace
}  // namespace toehold::checks
