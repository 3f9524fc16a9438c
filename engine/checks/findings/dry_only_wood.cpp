// Laminated veneer and strand lumber are mostly made for dry service: their reports give no value for a deck that gets
// wet. A material the file says is for dry service alone, in a detail that is not dry, has no strength to check with.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/registry.h"
#include "model/member.h"

namespace toehold::checks {
namespace {

using format::phrase;

bool dry_only(const catalog::LumberGrade& grade) {
    return grade.engineered && grade.engineered->wet_service == model::OwnWood::WetService::dry_only;
}

Finding finding_of(const model::PartId& part, const std::string& material) {
    return finding_on(part, Severity::missing,
                      phrase("The values entered for {} hold in dry service alone, and {} is in wet service. Enter the "
                             "report's values for wet use, or keep it dry and say so: moisture=\"dry\".",
                             material, model::part_name(part)));
}

std::vector<Finding> dry_only_wood(const catalog::Resolved& resolved) {
    std::vector<Finding> findings;
    if (model::moisture(resolved.detail.basis) == model::Moisture::dry) return findings;
    const std::vector<model::Member> members = model::members(resolved.detail.framing);
    for (std::size_t index = 0; index < members.size(); ++index) {
        const catalog::MemberMaterial& wood = catalog::wood(resolved, index);
        if (dry_only(wood.grade)) findings.push_back(finding_of(model::part_of(members[index]), wood.species.name));
    }
    if (resolved.post_grade && dry_only(*resolved.post_grade))
        findings.push_back(finding_of({model::PartKind::post}, resolved.post_species->name));
    return findings;
}

const RegisterFinding rule{{"wood-dry-only", phrase("Wood for dry service alone"), "NDS 2018 8.3.3", dry_only_wood}};

}  // namespace
}  // namespace toehold::checks
