// Hardware that is drawn by what it must carry, before anybody has chosen it. The detail is judged as if it were there.
#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/registry.h"
#include "model/member.h"

namespace toehold::checks {
namespace {

using format::phrase;
using model::PartId;
using model::PartKind;

bool to_be_chosen(const model::EndConnection& connection) {
    const auto* const hardware = std::get_if<model::ReportedConnector>(&connection);
    return hardware != nullptr && !hardware->chosen;
}

/// Where such hardware is, from the post's own ties down.
std::vector<PartId> places(const model::BaseDetail& detail) {
    std::vector<PartId> all;
    if (kind(detail.mount) == model::MountKind::side_fastened)
        for (const model::TensionTie& tie : on_side(detail).ties)
            if (!tie.chosen) all.push_back({PartKind::tie, tie.id});
    const model::Framing& framing = detail.framing;
    for (const model::Block& block : framing.blocks)
        if (to_be_chosen(block.from_end.connection) || to_be_chosen(block.to_end.connection))
            all.push_back({PartKind::block, block.id});
    for (const model::Rim& rim : framing.rims)
        if (to_be_chosen(rim.connection)) all.push_back({PartKind::rim, rim.id});
    for (const model::JoistSupport& support : framing.supports)
        if (to_be_chosen(support.connection)) all.push_back(model::part_of(support));
    return all;
}

std::vector<Finding> hardware_not_chosen(const catalog::Resolved& resolved) {
    const std::vector<PartId> found = places(resolved.detail);
    if (found.empty()) return {};
    format::Listed names;
    for (const PartId& part : found) names.items.push_back(model::part_name(part));
    return {finding_on(found.front(), Severity::caution,
                       phrase("The hardware at {} is not chosen yet: its values are the least it must have. Choose "
                              "hardware whose evaluation report allows them, and enter its values with the report.",
                              std::move(names)))};
}

const RegisterFinding rule{
    {"hardware-not-chosen", phrase("Hardware not chosen yet"), "common practice", hardware_not_chosen}};

}  // namespace
}  // namespace toehold::checks
