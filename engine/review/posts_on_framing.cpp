#include "review/posts_on_framing.h"

#include "demand/framing/together.h"
#include "model/member.h"

#include <utility>

namespace toehold::review {
namespace {

double part_of_push(const catalog::Resolved& resolved) {
    const std::optional<model::Sharing>& sharing = resolved.detail.loads.sharing;
    return sharing ? sharing->factor : 1.0;
}

}  // namespace

Review PostsOnFraming::review(std::size_t post, const catalog::Resolved& resolved, const demand::Outcome& own) const {
    if (!own.demand) return evaluate(resolved, own, input_sha256_);
    demand::Outcome together;
    together.demand =
        demand::acting_together(*own.demand, others_of(post, *own.demand), sharers_of(post, resolved, *own.demand));
    return evaluate(resolved, std::move(together), input_sha256_);
}

/// The other post's demand as this one, of which `of_own` is the demand, sees it.
demand::Neighbor PostsOnFraming::neighbor(std::size_t post, const demand::Demand& of_own, std::size_t other) const {
    return demand::neighbor(model::members(project_.framing), of_own, posts_[post].post.facing,
                            *outcomes_[other].demand, posts_[other].post.facing);
}

std::vector<demand::Neighbor> PostsOnFraming::others_of(std::size_t post, const demand::Demand& of_own) const {
    std::vector<demand::Neighbor> others;
    for (std::size_t other = 0; other < posts_.size(); ++other) {
        if (other != post && outcomes_[other].demand) others.push_back(neighbor(post, of_own, other));
    }
    return others;
}

/// Those next to a post that shares, each with all that the rail keeps from it.
std::vector<demand::Neighbor> PostsOnFraming::sharers_of(std::size_t post, const catalog::Resolved& resolved,
                                                         const demand::Demand& of_own) const {
    const double share = part_of_push(resolved);
    if (!(share < 1.0)) return {};
    std::vector<demand::Neighbor> all;
    for (const std::size_t other : next_to(post)) {
        if (!outcomes_[other].demand) continue;
        all.push_back(neighbor(post, of_own, other));
        all.back().times = (1.0 - share) / part_of_push(posts_[other].resolved);
    }
    return all;
}

/// In the lines it is in.
std::vector<std::size_t> PostsOnFraming::next_to(std::size_t post) const {
    std::vector<std::size_t> found;
    const auto add = [&](const std::string& id) {
        for (std::size_t other = 0; other < posts_.size(); ++other) {
            if (posts_[other].post.id == id) found.push_back(other);
        }
    };
    for (const model::GuardLine& line : project_.guard_lines) {
        for (std::size_t place = 0; place < line.posts.size(); ++place) {
            if (line.posts[place] != posts_[post].post.id) continue;
            if (place > 0) add(line.posts[place - 1]);
            if (place + 1 < line.posts.size()) add(line.posts[place + 1]);
        }
    }
    return found;
}

}  // namespace toehold::review
