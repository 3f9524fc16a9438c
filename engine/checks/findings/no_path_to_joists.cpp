// Every block end must be joined to what it meets, every joist to its ledgers, and the joists to a rim that carries
// load, or the push stops there.
#include "checks/findings/loaded_rims.h"
#include "checks/registry.h"

namespace toehold::checks {
namespace {

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

const RegisterFinding registered{
    {"no-path-to-joists", "Member ends joined to nothing", "IRC 2021 R507.10.1", no_path_to_joists}};

}  // namespace
}  // namespace toehold::checks
