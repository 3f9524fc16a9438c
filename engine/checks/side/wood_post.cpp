#include "checks/side/wood_post.h"

#include "catalog/resolve.h"
#include "checks/basis/wood_bending.h"
#include "checks/side/post_cut.h"
#include "resistance/wood/drilled_section.h"
#include "resistance/wood/washer_bearing.h"

#include <cmath>
#include <limits>
#include <map>

namespace toehold::checks {
namespace {

using format::phrase;

/// At one height.
struct NetSection {
    WoodBending wood;  ///< of the depth that a notch leaves
    BendingModuli moduli;
    double drilled_in = 0.0;  ///< all holes together
};

/// A bolt's hole is larger than the bolt; a screw's is as wide as the screw.
double hole_in(const catalog::Anchor& anchor) {
    return anchor.kind == catalog::FastenerKind::through_bolt ? resistance::bolt_hole_in_wood_in(anchor.diameter_in)
                                                              : anchor.diameter_in;
}

NetSection net_section(const CheckInput& input, const model::WoodPost& post, const catalog::LumberGrade& grade,
                       double z_in) {
    const double depth_in = depth_at_in(input.resolved, z_in);
    NetSection section;
    section.wood = wood_bending(grade, post.width_in, depth_in, model::lever_height_in(input.resolved.detail),
                                input.resolved.detail.basis);
    std::vector<resistance::DrilledHole> holes;
    for (const catalog::Anchor* anchor : drilled_at(input.resolved, z_in)) {
        holes.push_back({anchor->at.x_in, hole_in(*anchor)});
        section.drilled_in += holes.back().diameter_in;
    }
    const resistance::NetModuli net = resistance::net_moduli(post.width_in, depth_in, holes);
    section.moduli = {net.about_x_in3, net.about_y_in3};
    return section;
}

/// Sections by their height, each worked out once.
class NetSections {
  public:
    NetSections(const CheckInput& input, const model::WoodPost& post, const catalog::LumberGrade& grade)
        : input_(input), post_(post), grade_(grade) {}
    [[nodiscard]] const NetSection& at(double z_in) {
        const auto known = known_.find(z_in);
        if (known != known_.end()) return known->second;
        return known_.emplace(z_in, net_section(input_, post_, grade_, z_in)).first->second;
    }

  private:
    const CheckInput& input_;
    const model::WoodPost& post_;
    const catalog::LumberGrade& grade_;
    std::map<double, NetSection> known_;
};

WoodBendingUse use_of(const NetSection& section, const demand::PostCut& cut) {
    return bending_use(section.wood, section.moduli, std::abs(cut.bending_out_lb_in),
                       std::abs(cut.bending_along_lb_in));
}

std::vector<Step> section_steps(const model::WoodPost& post, const NetSection& section, const WoodBendingUse& use) {
    return {
        from_file("b", phrase("width of the post"), post.width_in, "in"),
        {"d", phrase("depth of the post there, less a notch"), "", section.wood.depth_in, "in", "input", Origin::file},
        {"d_h", phrase("holes there across the width, all together"), "bolt + 1/16 in, screw as it is",
         section.drilled_in, "in", "NDS 2018 3.1.2, 12.1.3.2"},
        {"S_x", phrase("section modulus about x, net of the holes"), "(b - d_h) d^2/6", section.moduli.about_x_in3,
         "in3", "NDS 2018 3.1.2"},
        {"S_y", phrase("section modulus about y, net of the holes"), "d (b^3/12 - holes)/(b/2)",
         section.moduli.about_y_in3, "in3", "NDS 2018 3.1.2"},
        {"f_bx", phrase("bending stress about x"), "M_x/S_x", use.about_x_psi, "psi", "NDS 2018 3.3.2"},
        {"f_by", phrase("bending stress about y"), "M_y/S_y", use.about_y_psi, "psi", "NDS 2018 3.3.2"}};
}

CheckResult without_grade() {
    CheckResult result;
    result.part = {model::PartKind::post};
    lacks_evidence(result, phrase("Post grade is not specified."));
    return result;
}

}  // namespace

std::vector<CheckResult> wood_post_bending_at_cuts(const CheckInput& input, const model::WoodPost& post) {
    if (!input.resolved.post_grade) return {without_grade()};
    const catalog::LumberGrade& grade = *input.resolved.post_grade;
    NetSections sections(input, post, grade);
    const std::optional<WorstCut> worst =
        worst_cut(input, [&](const demand::PostCut& cut) { return use_of(sections.at(cut.z_in), cut).ratio; });
    if (!worst) return {};
    const demand::PostCut& cut = cut_of(input, *worst);
    const NetSection& section = sections.at(cut.z_in);
    CheckResult result = cut_result(input, *worst, phrase("post bending"));
    result.clause = "NDS 2018 3.9.2, 3.1.2";
    result.capacity = 1.0;
    if (!std::isfinite(worst->value)) {
        result.ratio = std::numeric_limits<double>::infinity();
        result.status = Status::fails;
        result.note = phrase("Nothing is left of the post to bend there, or it buckles sideways in bending.");
        return {result};
    }
    result.demand = worst->value;
    const WoodBendingUse use = use_of(section, cut);
    result.steps = cut_steps(cut);
    append(result.steps, section_steps(post, section, use));
    append(result.steps, allowable_steps(section.wood, grade));
    result.steps.push_back(use_step(use));
    if (cut.down_lb != 0.0) result.note = phrase("Vertical load on the post is not included in this ratio.");
    conclude(result);
    return {result};
}

}  // namespace toehold::checks
