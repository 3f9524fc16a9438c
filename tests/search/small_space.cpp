#include "small_space.h"

#include "model/validate.h"
#include "review/review.h"
#include "support/shipped.h"

#include <fmt/format.h>

namespace toehold::test {
namespace {

using model::BaseDetail;
using search::Applied;
using search::Axis;
using search::Option;

constexpr const char* holds = "heron-landing-lags-in-deep-blocks";

catalog::Resolved base(model::PlateBehaviour behaviour) {
    BaseDetail detail = demo_detail(holds);
    on_deck(detail).plate_reference.reset();
    detail.basis.plate = behaviour;
    return resolved_by_shipped(detail);
}

Option thickness(double in) {
    return {fmt::format("{} in", in), [in](BaseDetail& detail) {
                on_deck(detail).plate.thickness_in = in;
                return Applied{};
            }};
}

/// A 1/2 in lag screw is not had shorter than 6 in here, so that some choices do not go together.
Option length(double in) {
    return {fmt::format("{} in", in), [in](BaseDetail& detail) {
                auto& screw = std::get<model::LagScrew>(on_deck(detail).anchors.front().fastener);
                screw.length_in = in;
                if (screw.size != "lag-1/2" || in >= 6.0) return Applied{};
                return search::refused(format::verbatim("a 1/2 in screw is not had shorter than 6 in"));
            }};
}

/// The widest washer here reaches over the plate's edge.
Option anchor(const std::string& size, const std::string& washer) {
    return {size + ", " + washer, [size, washer](BaseDetail& detail) {
                model::AnchorGroup& group = on_deck(detail).anchors.front();
                std::get<model::LagScrew>(group.fastener).size = size;
                group.washer = model::Washer{washer};
                return Applied{};
            }};
}

Option block_depth(double in) {
    return {fmt::format("{} in", in), [in](BaseDetail& detail) {
                for (model::Block& block : detail.framing.blocks) block.depth_in = in;
                return Applied{};
            }};
}

Axis axis(std::string id, std::vector<Option> options) { return {id, format::verbatim(id), std::move(options)}; }

}  // namespace

search::Space rigid_space() {
    return {base(model::PlateBehaviour::rigid),
            {axis("thickness", {thickness(0.25), thickness(0.5)}),
             axis("anchor", {anchor("lag-3/8", "washer-wide-3/8"), anchor("lag-3/8", "washer-wide-1"),
                             anchor("lag-7/16", "washer-wide-7/16"), anchor("lag-1/2", "washer-wide-1/2")}),
             axis("length", {length(4.0), length(6.0), length(8.0)}),
             axis("block-depth", {block_depth(5.5), block_depth(7.25)})}};
}

search::Space flexible_space() {
    return {base(model::PlateBehaviour::flexible),
            {axis("thickness", {thickness(0.25), thickness(0.375), thickness(0.5)}),
             axis("length", {length(5.0), length(8.0)})}};
}

search::Space hopeless_space() {
    return {base(model::PlateBehaviour::rigid),
            {axis("thickness", {thickness(0.375), thickness(0.5)}), axis("length", {length(2.0), length(4.0)})}};
}

bool is_adequate(const search::Space& space, search::Candidate candidate) {
    const auto detail = search::detail_of(space, candidate);
    if (!detail || !model::validate(*detail).empty()) return false;
    const catalog::Resolution resolution = catalog::resolve(*detail, shipped_catalog());
    return resolution.resolved && review::evaluate(*resolution.resolved, {}).verdict == review::Verdict::adequate;
}

std::vector<search::Judgement> judge_all(const search::Space& space) {
    std::vector<search::Judgement> judgements;
    search::Judge judge(space, shipped_catalog());
    for (search::Candidate candidate = 0; candidate < search::size(space); ++candidate)
        judgements.push_back(judge.judge(candidate));
    return judgements;
}

}  // namespace toehold::test
