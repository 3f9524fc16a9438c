#include "editing/parts/side_follow.h"

#include "model/follow_joint.h"
#include "model/side_geometry.h"

#include <algorithm>

namespace toehold::editing {
namespace {

using model::BaseDetail;

/// Visits every id of a member that the mount names.
template <class Visit>
void each_named(model::SideFastened& mount, const Visit& visit) {
    visit(mount.member);
    for (model::AnchorGroup& group : mount.anchors) visit(group.into);
    for (model::TensionTie& tie : mount.ties) visit(tie.into);
}

void rename(model::SideFastened& mount, const std::string& old, const std::string& fresh) {
    each_named(mount, [&](std::string& id) {
        if (id == old) id = fresh;
    });
}

/// How far out the member would have to move for its near face to be where the joint ends.
std::optional<double> wanted_step_in(const BaseDetail& detail) {
    const std::optional<model::Member> member = model::side_member(detail);
    if (!member) return std::nullopt;
    return model::member_center_in(model::side_joint(detail), member->width_in) - member->across_in;
}

}  // namespace

void follow_members(BaseDetail& detail, const BaseDetail& before) {
    if (detail.framing == before.framing) return;
    model::SideFastened& mount = on_side(detail);
    const std::vector<model::Member> old = model::members(before.framing), now = model::members(detail.framing);
    const auto is_there = [&](const std::string& id) {
        return std::any_of(now.begin(), now.end(), [&](const model::Member& member) { return member.id == id; });
    };
    for (std::size_t index = 0; index < old.size(); ++index) {
        if (is_there(old[index].id)) continue;
        const bool renamed = old.size() == now.size() && old[index].kind == now[index].kind;
        if (renamed) {
            rename(mount, old[index].id, now[index].id);
        } else if (old[index].id != mount.member) {
            rename(mount, old[index].id, {});
        }
    }
}

void fit_other_post(BaseDetail& detail, const BaseDetail& before) {
    if (detail.post.index() == before.post.index()) return;
    model::SideFastened& mount = on_side(detail);
    if (auto* const tube = std::get_if<model::RectangularTube>(&detail.post)) tube->stub.reset();
    if (auto* const tube = std::get_if<model::RoundTube>(&detail.post)) tube->stub.reset();
    if (auto* const wood = std::get_if<model::WoodPost>(&detail.post)) {
        wood->shoe = {};
        wood->notched = mount.notch.has_value();
        mount.bracket.reset();
    } else {
        mount.notch.reset();
    }
}

void keep_touching(BaseDetail& detail, const BaseDetail& before) {
    if (detail.framing != before.framing) return;
    const std::optional<double> was = wanted_step_in(before), is = wanted_step_in(detail);
    if (was && is && *is != *was) model::move_framing(detail.framing, {0.0, *is - *was});
}

}  // namespace toehold::editing
