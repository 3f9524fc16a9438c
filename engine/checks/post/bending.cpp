// The post bent by the push: a metal post at the plate, or, over a stub, at the stub's top and the stub at the plate; a
// wood post at its shoe's top, and the shoe's wall, as a closed tube, at the plate.
#include "catalog/resolve.h"
#include "checks/basis/pushes.h"
#include "checks/basis/result_parts.h"
#include "checks/basis/wood_bending.h"
#include "checks/post/filler.h"
#include "checks/post/foot.h"
#include "checks/post/metal_bending.h"
#include "model/base_detail.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace toehold::checks {
namespace {

using format::Citation;
using format::phrase;

/// Free above the shoe, in; the guard is not counted on to hold the post sideways.
double free_height_in(const CheckInput& input, const model::WoodPost& post) {
    return std::max(0.0, model::lever_height_in(input.resolved.detail) - post.shoe.height_in);
}

void add_moment(CheckResult& result, const model::WoodPost& post, const PushMoment& moment) {
    append(result.steps,
           {from_file("h_s", phrase("height of the shoe above the underside of the plate"), post.shoe.height_in, "in"),
            {"M", phrase("moment at the top of the shoe"), "H (h - h_s)", moment.total_lb_in, "lb in", "demand"}});
}

void note_vertical_force(CheckResult& result, const demand::ActingLoad& load) {
    if (load.down_lb != 0.0) result.note = phrase("Vertical load on the post is not included in this ratio.");
}

/// The worst push on the post at the shoe's top, as a ratio: NDS 2018 3.9.2 without axial force, factors of
/// Table 4.3.1.
CheckResult wood_post_bending(const CheckInput& input, const model::WoodPost& post) {
    CheckResult result;
    result.clause = "NDS 2018 3.9.2";
    const std::optional<catalog::LumberGrade>& grade = input.resolved.post_grade;
    if (!grade) {
        lacks_evidence(result, phrase("Post grade is not specified."));
        return result;
    }
    const WoodBending wood =
        wood_bending(*grade, post.width_in, post.depth_in, free_height_in(input, post), input.resolved.detail.basis);
    const auto moment_of = [&](const demand::State& state) {
        return push_moment(input.demand, state, post.shoe.height_in);
    };
    const auto use_of = [&](const PushMoment& moment) {
        return bending_use(wood, moment.about_x_lb_in, moment.about_y_lb_in);
    };
    const demand::GoverningState worst =
        governing_push(input, [&](const demand::State& state) { return use_of(moment_of(state)).ratio; });
    const demand::State& state = input.demand.states.at(worst.state);
    const PushMoment moment = moment_of(state);
    const WoodBendingUse governing = use_of(moment);
    result.direction_deg = degrees(state.direction_rad);
    add_moment(result, post, moment);
    append(result.steps, stress_steps(wood, governing));
    append(result.steps, allowable_steps(wood, *grade));
    note_vertical_force(result, demand::acting_load(input.demand, state));
    result.capacity = 1.0;
    if (!std::isfinite(governing.ratio)) {
        result.ratio = std::numeric_limits<double>::infinity();
        result.status = Status::fails;
        result.note = phrase("The post is too slender: it buckles sideways in bending ({}).",
                             Citation{"NDS 2018 3.3.3.7, 3.9.2"});
        return result;
    }
    result.demand = governing.ratio;
    result.steps.push_back(use_step(governing));
    conclude(result);
    return result;
}

/// What is welded to the plate, from there up to what carries it on.
MetalSection foot_section(const CheckInput& input, double free_in) {
    const PostFoot foot = post_foot(input.resolved.detail.post);
    const Welding welding{foot.welded, weld_filler(input.resolved), foot.thickness_in};
    return {foot.piece, foot.solid, static_cast<int>(foot.centers.size()), foot_metal(input.resolved),
            welding,    free_in};
}

/// A tube over a stub is not welded; it is bent most where the stub ends. What holds it there: `post-overlap`.
CheckResult post_over_stub(const CheckInput& input, const model::Stub& stub) {
    const model::BaseDetail& detail = input.resolved.detail;
    const model::Footprint tube = model::shaft(detail.post);
    const MetalSection section{
        {tube.round, tube.width_in, tube.depth_in, tube.wall_in},      false, 1, input.resolved.post_metal, {},
        std::max(0.0, model::lever_height_in(detail) - stub.height_in)};
    CheckResult result = metal_bending(input, section, stub.height_in);
    result.part = {model::PartKind::post};
    result.aspect = "over-stub";
    result.link = link_between({model::PartKind::guard}, {model::PartKind::post}, phrase("post bending"));
    return result;
}

std::vector<CheckResult> metal_post(const CheckInput& input) {
    const model::BaseDetail& detail = input.resolved.detail;
    const model::Stub* const stub = model::stub_of(detail.post);
    const double free_in = stub != nullptr ? stub->height_in : model::lever_height_in(detail);
    CheckResult foot = metal_bending(input, foot_section(input, free_in));
    foot.part = {model::PartKind::post};
    if (stub == nullptr) {
        foot.link = link_between({model::PartKind::guard}, {model::PartKind::post}, phrase("post bending"));
        return {foot};
    }
    foot.aspect = "stub";
    foot.link = link_between({model::PartKind::post}, {model::PartKind::plate}, phrase("stub bending"));
    return {post_over_stub(input, *stub), foot};
}

CheckResult wood_post(const CheckInput& input, const model::WoodPost& post) {
    CheckResult result = wood_post_bending(input, post);
    result.part = {model::PartKind::post};
    result.link = link_between({model::PartKind::guard}, {model::PartKind::post}, phrase("post bending"));
    return result;
}

/// A shoe is short: no sideways buckling. A vertical force rests on the plate through the post's end.
CheckResult shoe_wall(const CheckInput& input, const model::WoodPost& post) {
    CheckResult result = metal_bending(input, foot_section(input, post.shoe.height_in));
    result.part = {model::PartKind::shoe};
    result.link = link_between({model::PartKind::shoe}, {model::PartKind::plate}, phrase("shoe wall bending"));
    if (result.note.empty() && post.shoe.form != model::ShoeForm::closed)
        result.note = phrase("Shoe checked as a closed sleeve; a saddle open at the sides has less strength.");
    return result;
}

std::vector<CheckResult> post_bending(const CheckInput& input) {
    if (const auto* post = std::get_if<model::WoodPost>(&input.resolved.detail.post))
        return {wood_post(input, *post), shoe_wall(input, *post)};
    return metal_post(input);
}

const RegisterCheck registered{
    {"post-bending", phrase("Post bending"), "AISC 360-16 F7, F8, F11; NDS 2018 3.9.2",
     phrase("Post, and wall of the shoe of a wood post, under the moment of the worst push."), post_bending},
    {model::MountKind::plate_on_deck}};

}  // namespace
}  // namespace toehold::checks
