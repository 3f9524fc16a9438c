#pragma once
// The posts of a project on the framing they share: each reviewed with what the others put on it at the same time.
#include "demand/demand.h"
#include "demand/framing/neighbor.h"
#include "review/project_review.h"

#include <cstddef>
#include <string>
#include <vector>

namespace toehold::review {

class PostsOnFraming {
  public:
    /// All four outlive this. `posts` under the loads they are reviewed for, `outcomes` under the same, in the
    /// project's order.
    PostsOnFraming(const model::Project& project, const std::vector<ResolvedPost>& posts,
                   const std::vector<demand::Outcome>& outcomes, const std::string& input_sha256)
        : project_(project), posts_(posts), outcomes_(outcomes), input_sha256_(input_sha256) {}

    [[nodiscard]] const catalog::Resolved& resolved(std::size_t post) const { return posts_[post].resolved; }
    /// The post of this number as `resolved`, whose own demand is `own`, beside the others.
    [[nodiscard]] Review review(std::size_t post, const catalog::Resolved& resolved, const demand::Outcome& own) const;

  private:
    [[nodiscard]] demand::Neighbor neighbor(std::size_t post, const demand::Demand& of_own, std::size_t other) const;
    [[nodiscard]] std::vector<demand::Neighbor> others_of(std::size_t post, const demand::Demand& of_own) const;
    [[nodiscard]] std::vector<demand::Neighbor> sharers_of(std::size_t post, const catalog::Resolved& resolved,
                                                           const demand::Demand& of_own) const;
    [[nodiscard]] std::vector<std::size_t> next_to(std::size_t post) const;

    const model::Project& project_;
    const std::vector<ResolvedPost>& posts_;
    const std::vector<demand::Outcome>& outcomes_;
    const std::string& input_sha256_;
};

}  // namespace toehold::review
