#include "checks/post/post_stiffness.h"

#include "catalog/resolve.h"
#include "checks/basis/result_parts.h"
#include "checks/basis/wood_basis.h"
#include "checks/post/foot.h"
#include "checks/post/metal_strength.h"
#include "checks/post/overlap.h"
#include "resistance/steel/tube.h"

#include <algorithm>
#include <cmath>

namespace toehold::checks {
namespace {

using format::phrase;

namespace steel = resistance::steel;

PostStiffness of_metal(const steel::TubeSection& section, const catalog::Metal& metal, double pieces) {
    const double about_x_in4 = pieces * section.inertia_x_in4, about_y_in4 = pieces * section.inertia_y_in4;
    PostStiffness result;
    result.post = {metal.modulus_psi * about_x_in4, metal.modulus_psi * about_y_in4};
    result.steps = {
        {"E", phrase("modulus of elasticity of the post"), metal.name, metal.modulus_psi, "psi", "input", Origin::file},
        {"I_x", phrase("moment of inertia about x"), "of the post", about_x_in4, "in4", ""},
        {"I_y", phrase("moment of inertia about y"), "of the post", about_y_in4, "in4", ""}};
    return result;
}

PostStiffness metal_stiffness(const catalog::Resolved& resolved) {
    const PostFoot foot = post_foot(resolved.detail.post);
    const steel::TubeSection at_foot = section_to_design(foot.piece, foot.solid, foot_metal(resolved));
    const model::Stub* const stub = model::stub_of(resolved.detail.post);
    if (stub == nullptr) return of_metal(at_foot, resolved.post_metal, static_cast<double>(foot.centers.size()));
    const model::Footprint tube = model::shaft(resolved.detail.post);
    PostStiffness result = of_metal(
        section_to_design({tube.round, tube.width_in, tube.depth_in, tube.wall_in}, false, resolved.post_metal),
        resolved.post_metal, 1.0);
    const double modulus_psi = foot_metal(resolved).modulus_psi;
    result.stub = Stiffness{modulus_psi * at_foot.inertia_x_in4, modulus_psi * at_foot.inertia_y_in4};
    result.stub_in = stub->height_in;
    append(
        result.steps,
        {from_file("h_s", phrase("height of the stub above the underside of the plate"), stub->height_in, "in"),
         {"I_sx", phrase("moment of inertia of the stub about x"), "of the stub", at_foot.inertia_x_in4, "in4", ""},
         {"I_sy", phrase("moment of inertia of the stub about y"), "of the stub", at_foot.inertia_y_in4, "in4", ""}});
    return result;
}

PostStiffness wood_stiffness(const model::WoodPost& post, const catalog::LumberGrade& grade,
                             const model::Basis& basis) {
    const Adjusted modulus = adjust_modulus(grade, basis);
    const double about_x_in4 = post.width_in * std::pow(post.depth_in, 3) / 12.0;
    const double about_y_in4 = post.depth_in * std::pow(post.width_in, 3) / 12.0;
    PostStiffness result;
    result.post = {modulus.value * about_x_in4, modulus.value * about_y_in4};
    result.steps = {given("E", phrase("reference modulus of elasticity"), grade.modulus_psi, "psi", grade.source.text)};
    append(result.steps, modulus.steps);
    append(result.steps, {{"E'", phrase("adjusted modulus of elasticity"), "E and every factor", modulus.value, "psi",
                           "NDS 2018 Table 4.3.1"},
                          {"I_x", phrase("moment of inertia about x"), "b d^3/12", about_x_in4, "in4", ""},
                          {"I_y", phrase("moment of inertia about y"), "d b^3/12", about_y_in4, "in4", ""}});
    return result;
}

void add_play(PostStiffness& result, const catalog::Resolved& resolved) {
    const std::optional<Overlap> overlap = overlap_of(resolved);
    if (!overlap || !(overlap->play_in > 0.0)) return;
    result.play_rad = overlap->play_in / (overlap->top_in - overlap->bottom_in);
    append(result.steps,
           {from_file("c", phrase("play, inside less outside"), overlap->play_in, "in"),
            {"phi_c", phrase("turn of the post within its play"), "c/L", result.play_rad, "rad", "statics"}});
}

/// At `top_in` of a cantilever of this E I, for a force at `load_in`, both from its foot.
double cantilever_in(double force_lb, double load_in, double top_in, double stiffness_lb_in2) {
    const double lower_in = std::min(load_in, top_in);
    const double upper_in = std::max(load_in, top_in);
    return force_lb * lower_in * lower_in * (3.0 * upper_in - lower_in) / (6.0 * stiffness_lb_in2);
}

/// What the part of the cantilever below `height_in` adds: the integral of both moments over E I, closed form.
double lower_part_in(double force_lb, double load_in, double top_in, double height_in, double stiffness_lb_in2) {
    const double to_in = std::min({height_in, load_in, top_in});
    return force_lb *
           (load_in * top_in * to_in - 0.5 * (load_in + top_in) * to_in * to_in + to_in * to_in * to_in / 3.0) /
           stiffness_lb_in2;
}

}  // namespace

std::optional<PostStiffness> post_stiffness(const catalog::Resolved& resolved) {
    const auto* wood = std::get_if<model::WoodPost>(&resolved.detail.post);
    if (wood != nullptr && !resolved.post_grade) return std::nullopt;
    PostStiffness result = wood != nullptr ? wood_stiffness(*wood, *resolved.post_grade, resolved.detail.basis)
                                           : metal_stiffness(resolved);
    add_play(result, resolved);
    return result;
}

double bent_in(const PostStiffness& post, double force_lb, double load_in, double top_in, double along_y) {
    const auto one_way = [&](double of_post, double of_stub) {
        const double whole = cantilever_in(force_lb, load_in, top_in, of_post);
        if (!post.stub) return whole;
        return whole + lower_part_in(force_lb, load_in, top_in, post.stub_in, of_stub) -
               lower_part_in(force_lb, load_in, top_in, post.stub_in, of_post);
    };
    const Stiffness stub = post.stub.value_or(Stiffness{});
    return along_y * one_way(post.post.about_x_lb_in2, stub.about_x_lb_in2) +
           (1.0 - along_y) * one_way(post.post.about_y_lb_in2, stub.about_y_lb_in2);
}

}  // namespace toehold::checks
