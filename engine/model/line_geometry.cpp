#include "model/line_geometry.h"

#include "units/length.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <stdexcept>

namespace toehold::model {
namespace {

constexpr std::array<PostRole, 4> all_roles{PostRole::line, PostRole::corner, PostRole::end, PostRole::lone};

const PlacedPost& post_of(const Project& project, const std::string& id) {
    const PlacedPost* const found = find_post(project, id);
    if (found == nullptr) throw std::out_of_range("no post " + id);
    return *found;
}

Span span_between(const PlacedPost& from, const PlacedPost& to) {
    const double x_in = to.at.x_in - from.at.x_in, y_in = to.at.y_in - from.at.y_in;
    return {from.id, to.id, std::hypot(x_in, y_in), to.rise_in - from.rise_in, std::atan2(y_in, x_in)};
}

/// The stretch to a wall goes straight on as the span beside it.
Span beyond(const Span& beside, const WallEnd& wall) {
    Span span = beside;
    span.plan_in = wall.reach_in;
    span.rise_in = beside.plan_in > 0.0 ? beside.rise_in * wall.reach_in / beside.plan_in : 0.0;
    return span;
}

double turned_rad(double before_rad, double after_rad) {
    return std::remainder(after_rad - before_rad, 2.0 * std::numbers::pi);
}

/// Headings away from the post of every stretch of rail that meets it.
std::vector<double> arms_rad(const Project& project, const std::string& post) {
    std::vector<double> arms;
    for (const GuardLine& line : project.guard_lines) {
        for (const Span& span : spans_of(project, line)) {
            if (span.from == post) arms.push_back(span.heading_rad);
            if (span.to == post) arms.push_back(span.heading_rad + std::numbers::pi);
        }
    }
    return arms;
}

/// More than one of those lengths that the project says for all posts, or it says none.
bool exceeds_stated(const Project& project, double length_in) {
    const std::optional<double> stated = tributary_length_in(project.guard, project.loads);
    if (!stated || length_in > *stated) return true;
    return project.loads.line && length_in > units::inches_per_foot * project.loads.line->spacing_ft;
}

}  // namespace

double length_in(const Span& span) { return std::hypot(span.plan_in, span.rise_in); }

double slope_rad(const Span& span) { return std::atan2(std::abs(span.rise_in), span.plan_in); }

std::vector<Span> spans_of(const Project& project, const GuardLine& line) {
    std::vector<Span> spans;
    for (std::size_t index = 1; index < line.posts.size(); ++index)
        spans.push_back(span_between(post_of(project, line.posts[index - 1]), post_of(project, line.posts[index])));
    if (spans.empty()) return spans;
    if (line.last_wall) {
        spans.push_back(beyond(spans.back(), *line.last_wall));
        spans.back().from = line.posts.back();
        spans.back().to.clear();
    }
    if (line.first_wall) {
        Span first = beyond(spans.front(), *line.first_wall);
        first.from.clear();
        first.to = line.posts.front();
        spans.insert(spans.begin(), first);
    }
    return spans;
}

std::vector<double> turns_rad(const Project& project, const GuardLine& line) {
    std::vector<double> turns(line.posts.size(), 0.0);
    GuardLine posts_alone = line;  // the rail goes straight on to a wall
    posts_alone.first_wall.reset();
    posts_alone.last_wall.reset();
    const std::vector<Span> spans = spans_of(project, posts_alone);
    for (std::size_t index = 1; index < spans.size(); ++index)
        turns[index] = turned_rad(spans[index - 1].heading_rad, spans[index].heading_rad);
    return turns;
}

std::vector<double> stations_in(const Project& project, const GuardLine& line) {
    std::vector<double> stations;
    for (const std::string& id : line.posts) {
        const Position at = post_of(project, id).at;
        double station = 0.0;
        if (!stations.empty()) {
            const Position before = post_of(project, line.posts[stations.size() - 1]).at;
            station = stations.back() + std::hypot(at.x_in - before.x_in, at.y_in - before.y_in);
        }
        stations.push_back(station);
    }
    return stations;
}

std::string_view word(PostRole role) {
    switch (role) {
        case PostRole::line:
            return "line";
        case PostRole::corner:
            return "corner";
        case PostRole::end:
            return "end";
        case PostRole::lone:
            break;
    }
    return "lone";
}

PostRole role_of(const Project& project, const std::string& post) {
    const std::vector<double> arms = arms_rad(project, post);
    if (arms.empty()) return PostRole::lone;
    if (arms.size() == 1) return PostRole::end;
    if (arms.size() > 2) return PostRole::corner;
    const double turn = turned_rad(arms[0] + std::numbers::pi, arms[1]);
    return std::abs(turn) > straight_rad ? PostRole::corner : PostRole::line;
}

std::optional<double> half_spans_in(const Project& project, const std::string& post) {
    std::optional<double> half;
    for (const GuardLine& line : project.guard_lines) {
        for (const Span& span : spans_of(project, line)) {
            if (span.from == post) half = half.value_or(0.0) + 0.5 * length_in(span);
            if (span.to == post) half = half.value_or(0.0) + 0.5 * length_in(span);
        }
    }
    return half;
}

bool faces_its_rails(const Project& project, const PlacedPost& post) {
    constexpr double square_rad = std::numbers::pi / 180.0;
    const Position out = outward(post.facing);
    const std::vector<double> arms = arms_rad(project, post.id);
    return std::all_of(arms.begin(), arms.end(), [&](double arm) {
        return std::abs(out.x_in * std::cos(arm) + out.y_in * std::sin(arm)) <= std::sin(square_rad);
    });
}

std::optional<double> infill_solid_ratio(const Project& project, const std::string& post) {
    double largest = 0.0;
    for (const GuardLine& line : project.guard_lines) {
        if (std::find(line.posts.begin(), line.posts.end(), post) == line.posts.end()) continue;
        if (!line.infill || !line.infill->solid_ratio) return std::nullopt;
        largest = std::max(largest, *line.infill->solid_ratio);
    }
    return largest > 0.0 ? std::optional(largest) : std::nullopt;
}

std::optional<RailLength> rail_length(const Project& project, const PlacedPost& post) {
    if (post.rail_length_ft) return RailLength{units::inches_per_foot * *post.rail_length_ft, RailLength::From::post};
    const std::optional<double> stated = tributary_length_in(project.guard, project.loads);
    const std::optional<double> half = half_spans_in(project, post.id);
    if (half && exceeds_stated(project, *half))
        return RailLength{std::max(*half, stated.value_or(0.0)), RailLength::From::spans};
    if (stated) return RailLength{*stated, RailLength::From::loads};
    return std::nullopt;
}

std::vector<RoleCount> count_roles(const std::vector<PostRole>& roles) {
    std::vector<RoleCount> counts;
    for (const PostRole role : all_roles) {
        const auto posts = std::count(roles.begin(), roles.end(), role);
        if (posts > 0) counts.push_back({role, static_cast<std::size_t>(posts)});
    }
    return counts;
}

std::vector<RoleCount> count_roles(const Project& project) {
    std::vector<PostRole> roles;
    for (const PlacedPost& post : project.posts) roles.push_back(role_of(project, post.id));
    return count_roles(roles);
}

std::vector<RoleCount> count_roles(const Project& project, const GuardLine& line) {
    std::vector<PostRole> roles;
    for (const std::string& post : line.posts) roles.push_back(role_of(project, post));
    return count_roles(roles);
}

std::vector<PostKind> post_kinds(const Project& project) {
    std::vector<PostKind> kinds;
    for (const NamedMount& mount : project.mounts) {
        for (const PostRole role : all_roles) {
            PostKind kind{mount.id, role, {}};
            for (const PlacedPost& post : project.posts) {
                if (post.mount == mount.id && role_of(project, post.id) == role) kind.posts.push_back(post.id);
            }
            if (!kind.posts.empty()) kinds.push_back(std::move(kind));
        }
    }
    return kinds;
}

}  // namespace toehold::model
