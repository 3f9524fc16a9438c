#include "drawing/scene/shapes.h"
#include "drawing/side/face_sheet.h"
#include "paper/site/extent.h"
#include "paper/site/side/side_drawings.h"
#include "paper/site/tape_chain.h"

#include <algorithm>
#include <utility>

namespace toehold::paper::site {
namespace {

namespace side = drawing::side;
using drawing::Measure;
using drawing::Point;
using drawing::Scene;

/// From outside x runs to the left; of a post inside the member one stands on the deck.
double right_of(const SiteSubject& subject) {
    return on_side(subject.resolved.detail).face == model::MemberFace::outside ? -1.0 : 1.0;
}

/// Without what no tape tells apart.
std::vector<drawing::DimensionEnd> ends(std::vector<double> stops_in, double feature_in) {
    constexpr double least_in = 0.99 / 16.0;
    std::vector<drawing::DimensionEnd> result;
    for (const double at_in : drawing::distinct(std::move(stops_in))) {
        if (result.empty() || at_in - result.back().at_in > least_in) result.push_back({at_in, feature_in});
    }
    return result;
}

void add_dimensions(Scene& scene, const side::FaceSheet& sheet, const ChainRow& row) {
    const side::Shape& shape = sheet.shape;
    const double half = side::seat_half_width_in(shape);
    std::vector<double> heights{0.0}, across{-half, half};
    if (shape.depth_in > 0.0 && shape.slope == 0.0) heights.push_back(-shape.depth_in);
    for (const side::Fixing& fixing : sheet.fixings) {
        heights.push_back(fixing.z_in);
        across.push_back(sheet.right * fixing.x_in);
    }
    add_tape_chain(scene, {Measure::upright, false, sheet.shown.low.x, ends(std::move(heights), -half)}, row);
    add_tape_chain(scene, {Measure::across, false, sheet.shown.low.y, ends(std::move(across), shape.bears_low_in)},
                   row);
    std::vector<double> of_post{0.0, shape.post_low_in};
    if (shape.mount.bracket) {
        const side::Span seat = side::seat_heights_in(shape);
        of_post = {0.0, seat.low_in, seat.high_in};
    }
    add_tape_chain(scene, {Measure::upright, true, sheet.shown.high.x, ends(std::move(of_post), half)}, row);
}

drawing::Text face_label(std::string words, model::PartId part) {
    drawing::Text text;
    text.words = std::move(words);
    text.bold = true;
    text.across = drawing::Across::middle;
    text.upright = drawing::Upright::middle;
    text.on_paper = true;
    text.part = std::move(part);
    return text;
}

void take_places(Taken& taken, const side::FaceSheet& sheet, double mm_per_in) {
    for (const side::Fixing& fixing : sheet.fixings) {
        const Point at = sheet.at(fixing.x_in, fixing.z_in);
        const Point center{at.x * mm_per_in, at.y * mm_per_in};
        taken.take(drawing::grown({center, center}, side::covered_radius_in(fixing) * mm_per_in));
    }
}

void add_letters(Scene& scene, const side::FaceSheet& sheet, double mm_per_in, Taken& taken) {
    constexpr double off_mm = 2.6, past_edge_mm = 4.4, room_in = 0.8;
    for (const side::Fixing& fixing : sheet.fixings) {
        const double away_mm = side::covered_radius_in(fixing) * mm_per_in + off_mm;
        const Point at = sheet.at(fixing.x_in, fixing.z_in);
        std::vector<drawing::Place> places;
        const double edge = side::seat_half_width_in(sheet.shape);
        for (const double way : {1.0, -1.0}) {
            // Off the edge, where no tie is drawn either.
            if (way * at.x + side::covered_radius_in(fixing) + room_in > edge)
                places.push_back({{way * std::max(edge, way * at.x), at.y}, {way * past_edge_mm, 0.0}});
        }
        for (const double reach : {1.0, 1.5}) {
            for (const Point way : {Point{1.1, 0}, {-1.1, 0}, {0.9, 0.9}, {-0.9, 0.9}, {0.9, -0.9}, {-0.9, -0.9}})
                places.push_back({at, {reach * away_mm * way.x, reach * away_mm * way.y}});
        }
        taken.add_where_free(scene, face_label(fixing.id, model::anchor_part(fixing.id)), places);
    }
}

/// Members behind near their foot; the member itself towards the sheet's ends.
void add_member_names(Scene& scene, const side::FaceSheet& sheet, Taken& taken) {
    for (const drawing::Profile& one : side::members_behind(sheet)) {
        std::vector<drawing::Place> places;
        const bool wide = drawing::width(one.box) > drawing::height(one.box);
        for (const double share : {0.25, 0.45, 0.65, 0.85}) {
            for (const double along : {0.1, 0.9}) {
                const double x = wide ? one.box.low.x + along * drawing::width(one.box) : drawing::middle(one.box).x;
                places.push_back(drawing::standing({x, one.box.low.y + share * drawing::height(one.box)}));
            }
        }
        taken.add_where_free(scene, face_label(one.member.id, one.part), places);
    }
    if (!sheet.shape.member) return;
    std::vector<drawing::Place> places;
    for (const double share : {0.12, 0.88, 0.25, 0.75}) {
        for (const double down : {0.75, 0.5, 0.25}) {
            const double x = sheet.shown.low.x + share * drawing::width(sheet.shown);
            places.push_back(
                drawing::standing({x, side::top_edge_in(sheet.shape, sheet.right * x) - down * sheet.shape.depth_in}));
        }
    }
    taken.add_where_free(scene, face_label(sheet.shape.member->id, side::member_part(sheet.shape)), places);
}

}  // namespace

bool is_on_a_side(const SiteSubject& subject) {
    return kind(subject.resolved.detail.mount) == model::MountKind::side_fastened;
}

Scene joint_face(const SiteSubject& subject, double mm_per_in) {
    const drawing::Subject drawn{subject.resolved.detail, &subject.resolved, nullptr, subject.locale};
    const drawing::PlanOptions options;
    const side::FaceSheet sheet = side::face_sheet(drawn, options, right_of(subject));
    Scene scene;
    scene.name = "Face";
    scene.bounds = sheet.shown;
    side::add_face_member(scene, sheet);
    side::add_face_behind(scene, sheet);
    side::add_face_post(scene, sheet);
    side::add_face_places(scene, sheet);
    add_dimensions(scene, sheet, {1.2, mm_per_in, subject.locale.system});
    Taken taken(mm_per_in);
    taken.take_texts(scene);
    take_places(taken, sheet, mm_per_in);
    add_letters(scene, sheet, mm_per_in, taken);
    add_member_names(scene, sheet, taken);
    std::stable_partition(scene.items.begin(), scene.items.end(),
                          [](const drawing::Item& item) { return !std::holds_alternative<drawing::Text>(item); });
    return scene;
}

format::Phrase joint_face_caption(const SiteSubject& subject) {
    using format::phrase;
    const bool si = subject.locale.system == units::System::si;
    if (right_of(subject) < 0.0) {
        return si ? phrase("Seen from outside, as you bore. Dashed: behind the member. Millimeters.")
                  : phrase("Seen from outside, as you bore. Dashed: behind the member. Inches.");
    }
    return si ? phrase("Seen from the deck, as you bore. Dashed: ends of joists and blocks. Millimeters.")
              : phrase("Seen from the deck, as you bore. Dashed: ends of joists and blocks. Inches.");
}

}  // namespace toehold::paper::site
