// Values a user enters must say where they come from, or nobody can check them.
#include "checks/registry.h"

namespace toehold::checks {
namespace {

void look_at_fasteners(std::vector<Finding>& findings, const model::BaseDetail& detail) {
    for (const model::AnchorGroup& group : detail.anchors) {
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

void look_at_boards(std::vector<Finding>& findings, const model::Layers& layers) {
    if (!layers.decking || !layers.decking->fastening) return;
    const model::DeckingFastening& fastening = *layers.decking->fastening;
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
    look_at_boards(findings, resolved.detail.layers);
    look_at_shoe(findings, resolved.detail.post);
    look_at_stiffness(findings, resolved.detail.basis);
    return findings;
}

const RegisterFinding registered{{"missing-evidence", "Values without a source", "common practice", missing_evidence}};

}  // namespace
}  // namespace toehold::checks
