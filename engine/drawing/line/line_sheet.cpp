#include "drawing/line/line_sheet.h"

#include "drawing/scene/shapes.h"
#include "model/facing.h"
#include "review/line/line_review.h"
#include "wording/line.h"

#include <algorithm>
#include <cmath>
#include <type_traits>

namespace toehold::drawing {
namespace {

using format::phrase;

bool all_posts_there(const LineSubject& subject) {
    return std::all_of(subject.line.posts.begin(), subject.line.posts.end(),
                       [&subject](const std::string& id) { return model::find_post(subject.project, id) != nullptr; });
}

/// Square to the rail on both sides of the post, on the side the post faces.
Point outward_of(const std::vector<model::Span>& spans, const model::PlacedPost& post) {
    Point sum;
    const model::Position faces = model::outward(post.facing);
    for (const model::Span& span : spans) {
        if (span.from != post.id && span.to != post.id) continue;
        sum.x -= std::sin(span.heading_rad);
        sum.y += std::cos(span.heading_rad);
    }
    const double size = std::hypot(sum.x, sum.y);
    if (!(size > 1e-6)) return {faces.x_in, faces.y_in};
    const double along = sum.x * faces.x_in + sum.y * faces.y_in;
    const double sign = along < -1e-9 ? -1.0 : 1.0;
    return {sign * sum.x / size, sign * sum.y / size};
}

double width_of(const model::Project& project, const model::PlacedPost& post) {
    const model::NamedMount* const mount = model::find_mount(project, post.mount);
    return mount == nullptr ? 0.0 : model::shaft(mount->post).width_in;
}

void take_review(LinePostMark& mark, const review::LineReview* review) {
    if (review == nullptr) return;
    for (const review::PostShare& share : review->posts) {
        if (share.post != mark.id) continue;
        if (review->rail && review->unsolved.empty()) mark.share = share.share;
    }
}

}  // namespace

bool LineSheet::jointed() const { return subject.line.rail && subject.line.rail->run != model::RailRun::continuous; }

LineSheet line_sheet(const LineSubject& subject) {
    LineSheet sheet{subject, {}};
    if (subject.line.posts.size() < 2 || !all_posts_there(subject)) return sheet;
    const std::vector<model::Span> spans = model::spans_of(subject.project, subject.line);
    const std::vector<double> turns = model::turns_rad(subject.project, subject.line);
    const std::vector<double> stations = model::stations_in(subject.project, subject.line);
    for (std::size_t index = 0; index < subject.line.posts.size(); ++index) {
        const model::PlacedPost& post = *model::find_post(subject.project, subject.line.posts[index]);
        LinePostMark mark;
        mark.id = post.id;
        mark.at = {post.at.x_in, post.at.y_in};
        mark.outward = outward_of(spans, post);
        mark.station_in = stations[index];
        mark.rise_in = post.rise_in;
        mark.width_in = width_of(subject.project, post);
        mark.turn_rad = turns[index];
        mark.role = model::role_of(subject.project, post.id);
        take_review(mark, subject.review);
        sheet.posts.push_back(std::move(mark));
    }
    return sheet;
}

double rail_depth_in(const LineSubject& subject) {
    if (!subject.line.rail) return 0.0;
    return std::visit(
        [](const auto& section) {
            if constexpr (std::is_same_v<std::decay_t<decltype(section)>, model::RoundTube>) {
                return section.diameter_in;
            } else {
                return section.depth_in;
            }
        },
        subject.line.rail->section);
}

Text line_note(const Place& at, std::string words) {
    Text text;
    text.at = at;
    text.words = std::move(words);
    text.size = TextSize::fine;
    text.pen = Pen::dimension;
    text.upright = Upright::top;
    return text;
}

std::string rail_note(const LineSheet& sheet) {
    const LineSubject& subject = sheet.subject;
    if (subject.review != nullptr) return format::text(wording::line_title(*subject.review), subject.locale);
    return format::text(phrase("Guard line {}", subject.line.id), subject.locale);
}

std::string roles_note(const LineSheet& sheet) {
    std::vector<model::PostRole> roles;
    for (const LinePostMark& post : sheet.posts) roles.push_back(post.role);
    return format::text(phrase("{}.", wording::role_counts(model::count_roles(roles))), sheet.subject.locale);
}

void add_joint(Scene& scene, const Place& at, const model::PartId& part) {
    constexpr double radius_mm = 0.9;
    scene.items.emplace_back(Circle{at, 0.0, radius_mm, Pen::outline, Fill::paper, part});
}

std::optional<double> wall_reach_in(const LineSubject& subject, bool first) {
    const std::optional<model::WallEnd>& wall = first ? subject.line.first_wall : subject.line.last_wall;
    if (!wall) return std::nullopt;
    return wall->reach_in;
}

}  // namespace toehold::drawing
