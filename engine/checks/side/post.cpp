// The post of a mount on a member's side, of wood or metal, where its couple bends and shears it most.
#include "catalog/resolve.h"
#include "checks/side/metal_post.h"
#include "checks/side/wood_post.h"

namespace toehold::checks {
namespace {

using format::phrase;

std::vector<CheckResult> side_post_bending(const CheckInput& input) {
    if (const auto* const post = std::get_if<model::WoodPost>(&input.resolved.detail.post))
        return wood_post_bending_at_cuts(input, *post);
    return metal_post_bending_at_cuts(input);
}

std::vector<CheckResult> side_post_shear(const CheckInput& input) {
    if (const auto* const post = std::get_if<model::WoodPost>(&input.resolved.detail.post))
        return wood_post_shear_at_cuts(input, *post);
    return metal_post_shear_at_cuts(input);
}

const RegisterCheck bending_check{
    {"side-post-bending", phrase("Post bending"), "NDS 2018 3.9.2; AISC 360-16 F7, F11, F13.1",
     phrase("The post at its fasteners, net of their holes and of a notch, under the moment of the worst push."),
     side_post_bending},
    {model::MountKind::side_fastened}};
const RegisterCheck shear_check{
    {"side-post-shear", phrase("Post shear"), "NDS 2018 3.4.2, 3.4.3.3; AISC 360-16 G4, H3.1",
     phrase("Shear and twist of the post between its fasteners, where their couple acts."), side_post_shear},
    {model::MountKind::side_fastened}};

}  // namespace
}  // namespace toehold::checks
