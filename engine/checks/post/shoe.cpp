// A wood post's moment into the plate through its shoe. Where a report or a test gives an allowable moment, that is the
// measure. Else a closed, welded shoe is one by its geometry: the post bears on it across the grain near its top and,
// on the other side, near its bottom; statics gives the two forces, NDS 2018 3.10.2 the bearing, 3.4.2 the shear
// between them. Any other shoe has no evidence.
#include "catalog/resolve.h"
#include "checks/basis/metal_basis.h"
#include "checks/basis/pushes.h"
#include "checks/basis/result_parts.h"
#include "checks/basis/wood_basis.h"
#include "checks/post/foot.h"
#include "checks/post/overlap.h"
#include "resistance/aluminum/member.h"
#include "resistance/steel/member.h"

#include <algorithm>
#include <utility>

namespace toehold::checks {
namespace {

using format::phrase;

CheckResult started(const char* aspect, format::Phrase by) {
    CheckResult result;
    result.part = {model::PartKind::shoe};
    result.aspect = aspect;
    result.link = link_between({model::PartKind::post}, {model::PartKind::shoe}, std::move(by));
    return result;
}

CheckResult by_report(const CheckInput& input, const model::WoodPost& post) {
    const demand::GoverningState worst =
        governing_push(input, [&](const demand::State& state) { return push_moment(input.demand, state).total_lb_in; });
    const demand::State& state = input.demand.states.at(worst.state);
    CheckResult result = started("", phrase("shoe"));
    result.unit = "lb in";
    result.demand = worst.value;
    result.direction_deg = degrees(state.direction_rad);
    const demand::ActingLoad load = demand::acting_load(input.demand, state);
    result.steps = {demanded("H", phrase("push"), load.push_lb, "lb"),
                    demanded("h", phrase("height of the push above the underside of the plate"), load.height_in, "in"),
                    {"M", phrase("moment at the plate"), "H h", result.demand, "lb in", "demand"}};
    if (!post.shoe.allowable_moment_lb_in) {
        lacks_evidence(result, phrase("Allowable moment of the shoe is not specified. Give it from a test or an "
                                      "evaluation report, or use a shoe closed on all four sides and welded."));
        return result;
    }
    const Adjusted allowable = reported_value(*post.shoe.allowable_moment_lb_in, "lb in", input.resolved.detail.basis);
    append(result.steps, allowable.steps);
    result.capacity = allowable.value;
    if (!post.shoe.moment_source.empty()) result.clause = "report: " + post.shoe.moment_source;
    conclude(result);
    return result;
}

/// The post's width that bears, and the shoe's clear width there, for a push along x or y.
struct Face {
    double post_in = 0.0, inside_in = 0.0;
};

Face face_of(const model::WoodPost& post, bool along_x) {
    const double wall_in = 2.0 * post.shoe.wall_in;
    if (along_x) return {post.depth_in, post.shoe.depth_in - wall_in};
    return {post.width_in, post.shoe.width_in - wall_in};
}

CheckResult bearing(const CheckInput& input, const catalog::LumberGrade& grade, const Overlap& overlap,
                    const WorstCouple& worst, const Face& face) {
    CheckResult result = started("bearing", phrase("bearing in the shoe"));
    result.clause = "NDS 2018 3.10.2";
    result.unit = "psi";
    result.demand = worst.couple.line_lb_per_in / face.post_in;
    result.direction_deg = worst.direction_deg;
    const Adjusted allowed = adjust_compression_perp(grade, input.resolved.detail.basis);
    result.capacity = allowed.value;
    result.steps = couple_steps(overlap, worst);
    append(result.steps, {from_file("b", phrase("width of the post that bears"), face.post_in, "in"),
                          {"f_c,perp", phrase("bearing across the grain, even over each length"), "w/b", result.demand,
                           "psi", "NDS 2018 3.10.2"},
                          {"f_peak", phrase("peak if both were rigid and without play, for information"),
                           "H/(L b) + 6 M_L/(L^2 b), M_L about the middle of L",
                           worst.couple.elastic_peak_lb_per_in / face.post_in, "psi", "statics"},
                          given("F_c,perp", phrase("reference compression perpendicular to grain"),
                                grade.compression_perp_psi, "psi", grade.source.text)});
    append(result.steps, allowed.steps);
    append(result.steps, {{"F_c,perp'", phrase("adjusted compression perpendicular to grain, C_b = 1"),
                           "F_c,perp and every factor", allowed.value, "psi", "NDS 2018 Table 4.3.1"}});
    conclude(result);
    return result;
}

/// Shear in the post between its two bearings, which lie on opposite faces: of the lower one's force, even over its
/// length, what lies within the post's depth of the upper one goes across as a strut and is not counted, NDS 2018
/// 3.4.3.1(a); above the shoe the push is there.
double counted_shear_lb(const WorstCouple& worst, double depth_in) {
    return std::max(worst.push_lb, worst.couple.line_lb_per_in * (worst.couple.lower_in - depth_in));
}

CheckResult wood_shear(const CheckInput& input, const model::WoodPost& post, const catalog::LumberGrade& grade,
                       const Overlap& overlap, const WorstCouple& worst) {
    CheckResult result = started("shear", phrase("shear within the shoe"));
    result.clause = "NDS 2018 3.4.2";
    result.unit = "psi";
    const double depth_in = worst.along_x ? post.width_in : post.depth_in;
    const double shear_lb = counted_shear_lb(worst, depth_in);
    result.demand = 1.5 * shear_lb / (post.width_in * post.depth_in);
    result.direction_deg = worst.direction_deg;
    const Adjusted allowed = adjust_shear(grade, input.resolved.detail.basis);
    result.capacity = allowed.value;
    result.steps = couple_steps(overlap, worst);
    append(result.steps,
           {from_file("d", phrase("depth of the post along the push"), depth_in, "in"),
            {"V", phrase("shear in the post within the shoe, without the force within d of the upper bearing"),
             "w (a - d), at least H", shear_lb, "lb", "NDS 2018 3.4.3.1(a)"},
            {"f_v", phrase("shear stress"), "3 V/(2 b d)", result.demand, "psi", "NDS 2018 Eq. 3.4-2"}});
    append(result.steps, allowable_shear_steps(grade, allowed));
    conclude(result);
    return result;
}

/// A strip of the wall that bears, an inch high, held at both corners of the shoe. The wood presses where the wall is
/// stiff: at its allowable stress over a band beside each corner, as wide as the force asks for (statics, both within
/// their strength). Two bands e wide load a strip held at both ends with a plastic moment of w e/8; over the whole face
/// that is w b/16.
CheckResult shoe_face(const CheckInput& input, const model::WoodPost& post, const Overlap& overlap,
                      const WorstCouple& worst, const Face& face, double allowed_psi) {
    CheckResult result = started("face", phrase("shoe face bending"));
    const catalog::Metal& metal = input.resolved.post_metal;
    const bool aluminum = metal.kind == catalog::MetalKind::aluminum;
    result.clause = aluminum ? "Aluminum Design Manual 2020 F.2 (from memory)" : steel_clause(metal, "AISC 360-16 F11");
    result.unit = "lb-in/in";
    const double band_in =
        std::min(0.5 * face.inside_in, 0.5 * worst.couple.line_lb_per_in / std::max(allowed_psi, 1e-9));
    result.demand = worst.couple.line_lb_per_in * band_in / 8.0;
    result.direction_deg = worst.direction_deg;
    result.steps = couple_steps(overlap, worst);
    const BesideWeld used = strengths(metal, {true, nullptr, post.shoe.wall_in});
    const double nominal =
        aluminum ? resistance::aluminum::plate_moment(1.0, post.shoe.wall_in, {used.yield_psi, used.ultimate_psi})
                       .yield_lb_in
                 : resistance::steel::plate_moment_lb_in(1.0, post.shoe.wall_in, used.yield_psi);
    const Adjusted usable =
        available(nominal, aluminum ? resistance::aluminum::yield_safety : resistance::steel::flexure_safety,
                  input.resolved.detail.basis, result.clause);
    append(result.steps,
           {from_file("b_i", phrase("inside width of the shoe's face"), face.inside_in, "in"),
            {"e", phrase("width of the bands beside the corners that bear"), "w/(2 F_c,perp'), at most b_i/2", band_in,
             "in", "statics"},
            {"m", phrase("moment of the face an inch high, held at its corners"), "w e/8", result.demand, "lb-in/in",
             "statics"},
            from_file("t_w", phrase("wall thickness"), post.shoe.wall_in, "in"),
            yield_step(metal, used),
            {"m_n", phrase("nominal moment an inch high"), "F_y t^2/4", nominal, "lb-in/in", result.clause}});
    append(result.steps, usable.steps);
    result.capacity = usable.value;
    conclude(result);
    return result;
}

std::vector<CheckResult> by_geometry(const CheckInput& input, const model::WoodPost& post, const Overlap& overlap) {
    const std::optional<catalog::LumberGrade>& grade = input.resolved.post_grade;
    if (!grade) {
        CheckResult result = started("bearing", phrase("bearing in the shoe"));
        lacks_evidence(result, phrase("Post grade is not specified."));
        return {result};
    }
    const WorstCouple worst =
        worst_couple(input, overlap, 1.0 / face_of(post, true).post_in, 1.0 / face_of(post, false).post_in);
    const Face face = face_of(post, worst.along_x);
    return {bearing(input, *grade, overlap, worst, face), wood_shear(input, post, *grade, overlap, worst),
            shoe_face(input, post, overlap, worst, face,
                      adjust_compression_perp(*grade, input.resolved.detail.basis).value)};
}

std::vector<CheckResult> post_shoe(const CheckInput& input) {
    const auto* post = std::get_if<model::WoodPost>(&input.resolved.detail.post);
    if (!post) return {};
    const std::optional<Overlap> overlap = overlap_of(input.resolved);
    if (post->shoe.allowable_moment_lb_in || !overlap) return {by_report(input, *post)};
    return by_geometry(input, *post, *overlap);
}

const RegisterCheck registered{
    {"post-shoe", phrase("Wood post shoe, moment"), "evaluation report or test; NDS 2018 3.10.2, 3.4.2",
     phrase("Moment of a wood post through its shoe: against the value from a report or a test, or, in a closed welded "
            "shoe, by bearing across the grain, shear and the shoe's wall."),
     post_shoe},
    {model::MountKind::plate_on_deck}};

}  // namespace
}  // namespace toehold::checks
