// The post bent by the push: a metal tube at the plate; a wood post at its shoe's top, and the shoe's wall, as a closed
// tube, at the plate.
#include "checks/post/tube_bending.h"
#include "checks/post/wood_post_bending.h"

#include <utility>

namespace toehold::checks {
namespace {

CheckResult metal_post(const CheckInput& input) {
    const model::BaseDetail& detail = input.resolved.detail;
    CheckResult result =
        tube_bending(input, post_foot(detail.post), input.resolved.post_metal, model::lever_height_in(detail));
    result.subject = "post";
    result.link = Link{"guard", "post", "post in bending"};
    return result;
}

CheckResult wood_post(const CheckInput& input, const model::WoodPost& post) {
    CheckResult result = wood_post_bending(input, post);
    result.subject = "post";
    result.link = Link{"guard", "post", "post in bending"};
    return result;
}

/// A shoe is short: no sideways buckling. A vertical force rests on the plate through the post's end.
CheckResult shoe_wall(const CheckInput& input, const model::WoodPost& post) {
    CheckResult result =
        tube_bending(input, post_foot(input.resolved.detail.post), input.resolved.post_metal, post.shoe.height_in);
    result.subject = "shoe";
    result.link = Link{"shoe", "plate", "shoe's wall in bending"};
    if (result.note.empty()) result.note = "The shoe is taken as a closed sleeve; a saddle open at its sides has less.";
    return result;
}

std::vector<CheckResult> post_bending(const CheckInput& input) {
    if (const auto* post = std::get_if<model::WoodPost>(&input.resolved.detail.post))
        return {wood_post(input, *post), shoe_wall(input, *post)};
    return {metal_post(input)};
}

const RegisterCheck registered{{"post-bending", "Post in bending", "AISC 360-16 F7, F8; NDS 2018 3.9.2",
                                "The post, and the wall of a wood post's shoe, under the moment of the worst push.",
                                post_bending}};

}  // namespace
}  // namespace toehold::checks
