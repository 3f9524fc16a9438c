// The section as a whole.
#include "drawing/annotation/overlay.h"
#include "drawing/scene/shapes.h"
#include "drawing/section/sheet.h"
#include "drawing/side/cut_sheet.h"
#include "drawing/side/side_drawings.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing::side {
namespace {

/// The plate's section sheet, for what draws framing: the same framing, and nothing of a plate.
SectionSheet framing_of(const CutSheet& sheet) {
    return {sheet.subject, {model::PlanAxis::y, 0.0}, {}, {}, sheet.framing, 0.0, sheet.shown};
}

std::vector<Profile> framing_cut(const Subject& subject, const Shape& of) {
    std::vector<Profile> kept;
    for (Profile& one : profiles(subject.detail, {model::PlanAxis::y, 0.0})) {
        if (one.behind_in < 0.0) continue;
        if (of.mount.stringer && one.member.id == of.mount.member) one.box.low.y = -of.depth_in;
        kept.push_back(std::move(one));
    }
    return kept;
}

Box shown_box(const CutSheet& sheet) {
    constexpr double beyond_in = 0.75, stub_in = 3.4, beside_in = 1.6, least_in = 6.0;
    const Shape& shape = sheet.shape;
    const Span reach = fasteners_reach_in(sheet), seat = seat_heights_in(shape);
    const double half = 0.5 * shape.post.depth_in;
    const double member_in = shape.member ? shape.member->width_in : 0.0;
    const Span member = span(shape.member_face_in, shape.member_face_in + shape.towards_y * member_in);
    // The deck lies inward of both, whichever side of the member the post is on.
    const double inmost = std::min(-half, member.low_in) - least_in;
    Box shown{{std::min(inmost, reach.low_in) - beside_in,
               std::min({-shape.depth_in, shape.post_low_in, seat.low_in}) - beyond_in},
              {std::max({half, reach.high_in, member.high_in}) + beside_in, std::max(0.0, seat.high_in) + stub_in}};
    (sheet.post_side() > 0.0 ? shown.high.x : shown.low.x) += sheet.post_side() * forces_reach_in(sheet);
    for (const Profile& one : sheet.framing) {
        if (one.cut || has_area(common(one.box, shown))) shown.low.y = std::min(shown.low.y, one.box.low.y - beyond_in);
    }
    return shown;
}

}  // namespace

std::vector<Level> levels(const CutSheet& sheet) {
    constexpr double same_in = 1e-3;
    std::vector<Fixing> sorted = sheet.fixings;
    std::stable_sort(sorted.begin(), sorted.end(),
                     [](const Fixing& one, const Fixing& other) { return one.z_in > other.z_in; });
    std::vector<Level> all;
    for (const Fixing& fixing : sorted) {
        if (all.empty() || !(all.back().z_in - fixing.z_in < same_in))
            all.push_back({fixing.z_in, 0.0, sheet.shape.back_in, {}});
        Level& level = all.back();
        level.fixings.push_back(fixing);
        if (fixing.anchor == nullptr || sheet.subject.resolved == nullptr) continue;
        const Bearer under = under_head_upright(*fixing.anchor);
        level.half_in = std::max(level.half_in, 0.5 * std::max(under.width_in, head_width_in(*fixing.anchor)));
        const double head =
            station_y_in(sheet.shape, level_stations(*sheet.subject.resolved, *fixing.anchor).head_top_in);
        const double out = sheet.post_side();
        if (out * head > out * level.out_y_in) level.out_y_in = head;
    }
    return all;
}

std::vector<TieLevel> tie_levels(const CutSheet& sheet) {
    constexpr double same_in = 1e-3;
    std::vector<TieLevel> all;
    const auto& ties = sheet.shape.mount.ties;
    for (std::size_t index = 0; index < ties.size(); ++index) {
        const double below_in = ties[index].below_top_in;
        auto level = std::find_if(all.begin(), all.end(),
                                  [&](const TieLevel& one) { return std::abs(one.below_top_in - below_in) < same_in; });
        if (level == all.end()) level = all.insert(all.end(), {below_in, {}});
        level->ties.push_back(index);
    }
    return all;
}

Span fasteners_reach_in(const CutSheet& sheet) {
    Span reach = span(sheet.shape.back_in, sheet.shape.member_face_in);
    if (sheet.subject.resolved == nullptr) return reach;
    for (const Fixing& fixing : sheet.fixings) {
        if (fixing.anchor == nullptr) continue;
        const AnchorStations at = level_stations(*sheet.subject.resolved, *fixing.anchor);
        for (const double station : {at.head_top_in, at.tip_in}) {
            const double y = station_y_in(sheet.shape, station);
            reach = {std::min(reach.low_in, y), std::max(reach.high_in, y)};
        }
    }
    return reach;
}

CutSheet cut_sheet(const Subject& subject) {
    CutSheet sheet{subject, shape(subject.detail), fixings(subject), {}, {}};
    sheet.framing = framing_cut(subject, sheet.shape);
    sheet.shown = shown_box(sheet);
    return sheet;
}

Scene section(const Subject& subject) {
    constexpr double around_mm = 24.0;
    const CutSheet sheet = cut_sheet(subject);
    const SectionSheet framing = framing_of(sheet);
    Scene scene;
    scene.name = format::text(format::phrase("Section"), subject.locale);
    scene.bounds = sheet.shown;
    scene.margin_mm = around_mm;
    add_framing_behind(scene, framing);
    add_cut_framing(scene, framing);
    add_cut_boards(scene, sheet);
    add_cut_layers(scene, sheet);
    add_cut_bearing(scene, sheet);
    add_cut_ties(scene, sheet);
    add_cut_post(scene, sheet);
    add_cut_fasteners(scene, sheet);
    add_cut_dimensions(scene, sheet);
    add_cut_notes(scene, sheet);
    add_cut_pulls(scene, sheet);
    add_cut_push(scene, sheet);
    return finished(std::move(scene));
}

}  // namespace toehold::drawing::side
