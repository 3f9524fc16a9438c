// A detail that takes its plate from another file is judged on the plate found there now, which may not be the plate it
// was drawn with.
#include "checks/registry.h"

namespace toehold::checks {
namespace {

std::vector<Finding> plate_changed(const catalog::Resolved& resolved) {
    const auto& reference = resolved.detail.plate_reference;
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

const RegisterFinding registered{{"plate-changed", "Plate taken from another file", "common practice", plate_changed}};

}  // namespace
}  // namespace toehold::checks
