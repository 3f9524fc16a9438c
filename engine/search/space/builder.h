#pragma once
// Candidates put together one after another: what two of them choose alike along the first axes is done once. Numbers
// that follow one another differ along the last axes, so that most of a candidate is there already; and where choices
// do not go together, no candidate that shares them is put together at all.
#include "search/space/space.h"

#include <cstddef>
#include <vector>

namespace toehold::search {

class Builder {
  public:
    /// `space` outlives this.
    explicit Builder(const Space& space);

    /// As `detail_of`, valid until the next call; nullptr where the choices do not go together.
    [[nodiscard]] const model::BaseDetail* detail(Candidate candidate);

  private:
    const Space& space_;
    std::vector<std::size_t> chosen_;       ///< along the axes that are applied, and along one that was refused
    std::vector<model::BaseDetail> after_;  ///< the base, then the detail after each axis that is applied
    bool refused_ = false;                  ///< the last of `chosen_` does not go with those before it
};

}  // namespace toehold::search
