#include "search/space/builder.h"

#include <algorithm>

namespace toehold::search {

Builder::Builder(const Space& space) : space_(space), after_{space.base.detail} {}

const model::BaseDetail* Builder::detail(Candidate candidate) {
    const std::vector<std::size_t> wanted = choices(space_, candidate);
    const auto alike = std::mismatch(chosen_.begin(), chosen_.end(), wanted.begin()).first - chosen_.begin();
    if (refused_ && static_cast<std::size_t>(alike) == chosen_.size()) return nullptr;
    chosen_.resize(static_cast<std::size_t>(alike));
    after_.resize(chosen_.size() + 1);
    refused_ = false;
    while (chosen_.size() < wanted.size()) {
        const std::size_t axis = chosen_.size();
        chosen_.push_back(wanted[axis]);
        after_.push_back(after_.back());
        if (space_.axes[axis].options[wanted[axis]].apply(after_.back())) continue;
        after_.pop_back();
        refused_ = true;
        return nullptr;
    }
    return &after_.back();
}

}  // namespace toehold::search
