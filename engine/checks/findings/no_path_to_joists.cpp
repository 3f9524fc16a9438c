// Every block end must be joined to a joist, or the push stops in the block.
#include "checks/registry.h"

namespace toehold::checks {
namespace {

void look_at(std::vector<Finding>& findings, const model::Block& block, const model::BlockEnd& end, const char* which) {
    const std::string place = "block " + block.id + ", " + which + " end";
    if (end.joist.empty()) {
        findings.push_back(
            {"", Severity::fails, place, "",
             "No joist holds the " + std::string(which) + " end of block " + block.id +
                 ": the load path stops there. Describe the joist it meets, or lengthen the block to one."});
    } else if (std::holds_alternative<std::monostate>(end.connection)) {
        findings.push_back({"", Severity::fails, place, "",
                            "Nothing joins the " + std::string(which) + " end of block " + block.id + " to joist " +
                                end.joist + ": the load path stops there. Describe the hardware or fasteners."});
    }
}

std::vector<Finding> no_path_to_joists(const catalog::Resolved& resolved) {
    std::vector<Finding> findings;
    for (const model::Block& block : resolved.detail.framing.blocks) {
        look_at(findings, block, block.from_end, "lower");
        look_at(findings, block, block.to_end, "upper");
    }
    return findings;
}

const RegisterFinding registered{
    {"no-path-to-joists", "Block ends joined to no joist", "IRC 2021 R507.10.1", no_path_to_joists}};

}  // namespace
}  // namespace toehold::checks
