#include "paper/letter/remark_target.h"

#include "review/review.h"
#include "wording/title.h"

#include <algorithm>

namespace toehold::paper::letter {
namespace {

using format::Phrase;
using format::phrase;
using model::PartId;

/// The part that the remark's key names; absent where neither the detail nor its review has it.
std::optional<PartId> part_of(const model::Remark& remark, const review::Review& review) {
    std::vector<PartId> candidates = model::parts(review.resolved.detail);
    for (const checks::CheckResult& result : review.checks) candidates.push_back(result.part);
    for (const checks::Finding& finding : review.findings) candidates.push_back(finding.part);
    return model::find_part(candidates, remark.subject);
}

/// Those with the remark's id, and where it names a part, about that part.
template <class Items>
auto spoken_of(const Items& items, const model::Remark& remark, const std::optional<PartId>& part) {
    std::vector<const typename Items::value_type*> found;
    for (const auto& item : items) {
        if (item.id == remark.about && (remark.subject.empty() || (part && item.part == *part))) found.push_back(&item);
    }
    return found;
}

bool has_any(const review::Review& review, const std::string& id) {
    const auto is_it = [&id](const auto& item) { return item.id == id; };
    return std::any_of(review.checks.begin(), review.checks.end(), is_it) ||
           std::any_of(review.findings.begin(), review.findings.end(), is_it);
}

}  // namespace

RemarkTarget target_of(const model::Remark& remark, const review::Review& review) {
    const std::optional<PartId> part = part_of(remark, review);
    const Phrase name = part ? model::part_name(*part) : format::verbatim(remark.subject);
    RemarkTarget target{phrase("The detail as a whole"), {}, {}, {}};
    if (!remark.about.empty()) {
        // By what the engine calls it, also where the review has no result of it any more.
        target = {wording::title_of(remark.about),
                  spoken_of(review.checks, remark, part),
                  spoken_of(review.findings, remark, part),
                  {}};
        if (!target.results.empty()) target.title = target.results.front()->title;
        if (target.results.empty() && target.findings.empty()) {
            target.gone = !remark.subject.empty() && has_any(review, remark.about)
                              ? phrase("The review no longer has a result for {}; the remark is kept.", name)
                              : phrase("The review no longer has a result of this; the remark is kept.");
        }
    }
    if (!remark.subject.empty()) target.title = phrase("{}, {}", std::move(target.title), name);
    return target;
}

}  // namespace toehold::paper::letter
