// A post cut away where it is held loses its strength just where the moment is largest.
#include "checks/registry.h"

#include <algorithm>

namespace toehold::checks {
namespace {

constexpr double largest_four_by_four_in = 4.0;

std::vector<Finding> notched_post(const catalog::Resolved& resolved) {
    const auto* post = std::get_if<model::WoodPost>(&resolved.detail.post);
    if (post == nullptr || !post->notched) return {};
    if (std::max(post->width_in, post->depth_in) <= largest_four_by_four_in) {
        return {{"", Severity::fails, "post", "",
                 "The 4 x 4 post is notched at its connection, which is not allowed. Use a whole post."}};
    }
    return {
        {"", Severity::missing, "post", "common practice",
         "The post is notched at its connection, and what is left of its section there is not described: the checks "
         "take the whole section. Use a whole post."}};
}

const RegisterFinding registered{{"notched-post", "Notched wood post", "IRC 2021 R507.10.2", notched_post}};

}  // namespace
}  // namespace toehold::checks
