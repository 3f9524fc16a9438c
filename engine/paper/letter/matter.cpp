#include "paper/letter/matter.h"

#include "checks/registry.h"

#include <algorithm>

namespace toehold::paper::letter {
namespace {

template <class Known>
std::string title_in(const std::vector<Known>& all, const std::string& id) {
    const auto known = std::find_if(all.begin(), all.end(), [&id](const Known& one) { return one.id == id; });
    return known == all.end() ? std::string() : format::english(known->title);
}

/// By what the engine calls it, also where the review has no result of it any more.
std::string title_of(const std::string& id) {
    std::string title = title_in(checks::registered_checks(), id);
    if (title.empty()) title = title_in(checks::registered_findings(), id);
    return title.empty() ? id : title;
}

template <class Items>
auto spoken_of(const Items& items, const model::Remark& remark) {
    std::vector<const typename Items::value_type*> found;
    for (const auto& item : items) {
        if (item.id == remark.about && (remark.subject.empty() || item.subject == remark.subject))
            found.push_back(&item);
    }
    return found;
}

bool has_any(const review::Review& review, const std::string& id) {
    const auto is_it = [&id](const auto& item) { return item.id == id; };
    return std::any_of(review.checks.begin(), review.checks.end(), is_it) ||
           std::any_of(review.findings.begin(), review.findings.end(), is_it);
}

}  // namespace

Matter matter_of(const model::Remark& remark, const review::Review& review) {
    if (remark.about.empty()) return {"The detail as a whole", {}, {}, {}};
    Matter matter{title_of(remark.about), spoken_of(review.checks, remark), spoken_of(review.findings, remark), {}};
    if (!matter.results.empty()) matter.title = matter.results.front()->title;
    if (matter.results.empty() && matter.findings.empty()) {
        matter.gone = has_any(review, remark.about)
                          ? "The review has no result for " + remark.subject + " any more; the remark is kept."
                          : "The review has no result of this any more; the remark is kept.";
    }
    return matter;
}

}  // namespace toehold::paper::letter
