// The face view as a whole: the drawing on which holes are laid out.
#include "catalog/resolve.h"
#include "drawing/annotation/labels.h"
#include "drawing/annotation/overlay.h"
#include "drawing/plan/sheet.h"
#include "drawing/scene/shapes.h"
#include "drawing/side/face_sheet.h"
#include "drawing/side/side_drawings.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing::side {
namespace {

using format::phrase;

/// The post and its places, and members that end at the face beside them.
Box shown_box(const FaceSheet& sheet) {
    constexpr double least_in = 4.5, beside_in = 3.0, beyond_in = 0.75, near_in = 12.5, stub_in = 3.2;
    const Shape& shape = sheet.shape;
    const Span seat = seat_heights_in(shape);
    double half = std::max(least_in, seat_half_width_in(shape) + beside_in);
    double low = std::min({-shape.depth_in, shape.post_low_in, seat.low_in}), high = std::max(0.0, seat.high_in);
    for (const Fixing& fixing : sheet.fixings) {
        half = std::max(half, std::abs(fixing.x_in) + beside_in);
        low = std::min(low, fixing.z_in);
    }
    if (sheet.options.framing) {
        for (const model::Member& member : model::members(sheet.subject.detail.framing)) {
            const double far = std::abs(member.across_in) + 0.5 * member.width_in;
            if (member.along == model::PlanAxis::y && far < near_in) half = std::max(half, far + beyond_in);
        }
    }
    return {{-half, low - std::abs(shape.slope) * half - beyond_in}, {half, high + stub_in}};
}

/// Which face, and which way x runs; the last line is nearest to the sheet's foot.
std::vector<std::string> seen_words(const FaceSheet& sheet) {
    const std::string& member = sheet.shape.mount.member;
    const auto say = [&](const format::Phrase& words) { return format::text(words, sheet.subject.locale); };
    if (sheet.shape.mount.face == model::MemberFace::inside)
        return {say(phrase("Inside face of {}, seen from the deck: x to the right.", member))};
    return {say(phrase("Outside face of {}, x to the right as in plan:", member)),
            say(phrase("seen from outside, left and right are exchanged."))};
}

}  // namespace

Box FaceSheet::box(Span across, Span upright) const {
    const Span turned = span(right * across.low_in, right * across.high_in);
    return {{turned.low_in, upright.low_in}, {turned.high_in, upright.high_in}};
}

FaceSheet face_sheet(const Subject& subject, const PlanOptions& options, double right) {
    FaceSheet sheet{subject, options, shape(subject.detail), fixings(subject), right, {}};
    sheet.shown = shown_box(sheet);
    return sheet;
}

double covered_radius_in(const Fixing& fixing) {
    constexpr double unknown_in = 0.25;
    if (fixing.anchor == nullptr) return unknown_in;
    const catalog::Anchor& anchor = *fixing.anchor;
    const Bearer under = under_head_across(anchor);
    return 0.5 * std::max({under.width_in, head_width_in(anchor), anchor.hole_diameter_in});
}

Scene face(const Subject& subject, const PlanOptions& options) {
    constexpr double around_mm = 24.5, bare_mm = 14.0, line_mm = 3.2, first_mm = 1.2;
    const FaceSheet sheet = face_sheet(subject, options);
    Scene scene;
    scene.name = format::text(phrase("Face"), subject.locale);
    scene.bounds = sheet.shown;
    scene.margin_mm = (options.dimensions ? around_mm : bare_mm) + (has_marks(subject) ? line_mm : 0.0);
    add_face_member(scene, sheet);
    if (options.framing) add_face_behind(scene, sheet);
    add_face_names(scene, sheet);
    add_face_post(scene, sheet);
    add_face_bearing(scene, sheet);
    add_face_places(scene, sheet);
    if (options.dimensions) add_face_dimensions(scene, sheet);
    double up_mm = first_mm;
    if (has_marks(subject) && subject.overlay->as_computed) {
        add_plan_note(scene, sheet.shown, up_mm, pull_note(subject));
        up_mm += line_mm;
    }
    std::vector<std::string> notes = seen_words(sheet);
    if (options.dimensions) notes.back() += " " + unit_note(subject.locale);
    for (auto note = notes.rbegin(); note != notes.rend(); ++note) {
        add_plan_note(scene, sheet.shown, up_mm, *note);
        up_mm += line_mm;
    }
    add_face_marks(scene, sheet);
    add_face_push(scene, sheet);
    add_face_measured(scene, sheet);
    return finished(std::move(scene));
}

}  // namespace toehold::drawing::side
