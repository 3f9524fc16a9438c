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

void look_at_connector(std::vector<Finding>& findings, const model::Block& block, const model::BlockEnd& end) {
    const auto* connector = std::get_if<model::ReportedConnector>(&end.connection);
    if (connector == nullptr || !connector->report.empty()) return;
    findings.push_back({"", Severity::missing, "block " + block.id + " at joist " + end.joist, "",
                        "Allowable values are entered for the connector between block " + block.id + " and joist " +
                            end.joist +
                            " without saying where they come from. Name the report, its edition and table."});
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
    for (const model::Block& block : resolved.detail.framing.blocks) {
        look_at_connector(findings, block, block.from_end);
        look_at_connector(findings, block, block.to_end);
    }
    look_at_shoe(findings, resolved.detail.post);
    look_at_stiffness(findings, resolved.detail.basis);
    return findings;
}

const RegisterFinding registered{{"missing-evidence", "Values without a source", "common practice", missing_evidence}};

}  // namespace
}  // namespace toehold::checks
