// A post on a stair's stringer: the couple rolls the stringer and pushes it sideways, and nothing in this model of it
// says what holds it. The user states what does.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/registry.h"
#include "model/side_geometry.h"

namespace toehold::checks {
namespace {

using format::phrase;

std::vector<Finding> stringer_not_braced(const catalog::Resolved& resolved) {
    const auto& stringer = on_side(resolved.detail).stringer;
    const std::optional<model::Member> member = model::side_member(resolved.detail);
    if (!stringer || !member) return {};
    const model::PartId part = model::part_of(*member);
    if (stringer->braced_by.empty()) {
        return {finding_on(part, Severity::missing,
                           phrase("What keeps the stringer from rolling and moving sideways at the post is not "
                                  "specified. Brace it there, for instance with a block to the next stringer, and say "
                                  "so in `braced-by`."))};
    }
    return {finding_on(
        part, Severity::caution,
        phrase("The stringer is braced at the post by: {}. That bracing is not checked.", stringer->braced_by),
        "common practice")};
}

const RegisterFinding rule{{"side-stringer-bracing",
                            phrase("Bracing of the stringer"),
                            "",
                            stringer_not_braced,
                            {},
                            {},
                            model::Provision::guard_beside_framing},
                           {model::MountKind::side_fastened}};

}  // namespace
}  // namespace toehold::checks
