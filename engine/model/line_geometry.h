#pragma once
// What follows from where the posts of a guard line stand: spans of rail, turns, which post is at a corner or an end,
// and how much rail each takes. Lengths in inches, angles in radians, counterclockwise in plan from the project's +x.
#include "model/project.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace toehold::model {

/// A stretch of rail between two posts of a line, or between an outer post and the wall beyond it.
struct Span {
    std::string from, to;      ///< ids of posts in the line's order; empty where it is the wall
    double plan_in = 0.0;      ///< between the axes, level, > 0
    double rise_in = 0.0;      ///< from `from` to `to`; < 0 where the rail goes down. Beyond a post: as the span before
    double heading_rad = 0.0;  ///< from `from` to `to`, -pi to pi
    friend bool operator==(const Span&, const Span&) = default;
};
/// Along the rail.
[[nodiscard]] double length_in(const Span& span);
/// Above the level, either way, 0 to pi/2.
[[nodiscard]] double slope_rad(const Span& span);

/// In the line's order, a wall's stretch before the first post and after the last. Throws std::out_of_range where the
/// line names a post that is not there; empty for fewer than two posts.
[[nodiscard]] std::vector<Span> spans_of(const Project& project, const GuardLine& line);

/// Of the heading at each post of the line, -pi to pi, > 0 to the left; 0 at a post that ends the rail.
[[nodiscard]] std::vector<double> turns_rad(const Project& project, const GuardLine& line);

/// Of each post of the line: along the rail in plan from the first post, as `Rail::splices_in` counts.
[[nodiscard]] std::vector<double> stations_in(const Project& project, const GuardLine& line);

/// What a post is in its line or lines.
enum class PostRole {
    line,    ///< the rail goes on both ways, nearly straight; also at a wall's end
    corner,  ///< it turns by more than `straight_rad`, or three stretches meet
    end,     ///< the rail ends here
    lone     ///< in no line
};
/// `line`, `corner`, `end`, `lone`.
[[nodiscard]] std::string_view word(PostRole role);

/// A rail that turns by less at a post is followed round without a corner: ours, 10 degrees.
inline constexpr double straight_rad = 0.17453292519943295;

/// Throws std::out_of_range as `spans_of`. All lines the post is in count.
[[nodiscard]] PostRole role_of(const Project& project, const std::string& post);

/// Half of the spans beside the post, along the rail, all lines together, a wall's stretch too; absent: in no line.
[[nodiscard]] std::optional<double> half_spans_in(const Project& project, const std::string& post);

/// Whether every stretch of rail at the post, of all its lines, runs square to where the post faces, within 1 degree:
/// not at a corner, and not where a line runs askew. A post in no line does.
[[nodiscard]] bool faces_its_rails(const Project& project, const PlacedPost& post);

/// Largest part of the infill's face that is solid, of the lines the post is in; absent: in none, or one of them does
/// not say, or none of it is.
[[nodiscard]] std::optional<double> infill_solid_ratio(const Project& project, const std::string& post);

/// Length of rail a post takes under a load along the rail.
struct RailLength {
    enum class From {
        post,   ///< its own `rail_length_ft`
        loads,  ///< the project's guard or line load
        spans   ///< half of the spans beside it, more than the loads say or where they say nothing
    };
    double length_in = 0.0;
    From from = From::loads;
    friend bool operator==(const RailLength&, const RailLength&) = default;
};
/// Absent: nothing says it.
[[nodiscard]] std::optional<RailLength> rail_length(const Project& project, const PlacedPost& post);

struct RoleCount {
    PostRole role = PostRole::line;
    std::size_t posts = 0;  ///< > 0
    friend bool operator==(const RoleCount&, const RoleCount&) = default;
};
/// In the order of `PostRole`; what there is none of is left out.
[[nodiscard]] std::vector<RoleCount> count_roles(const std::vector<PostRole>& roles);
/// Of the project, and of one of its lines: a post counts by what it is in all lines it is in.
[[nodiscard]] std::vector<RoleCount> count_roles(const Project& project);
[[nodiscard]] std::vector<RoleCount> count_roles(const Project& project, const GuardLine& line);

/// Posts that are alike: one mount in one role.
struct PostKind {
    std::string mount;  ///< id of a NamedMount
    PostRole role = PostRole::line;
    std::vector<std::string> posts;  ///< ids, in the project's order, one or more
    friend bool operator==(const PostKind&, const PostKind&) = default;
};
/// In the order of the project's mounts, then of `PostRole`.
[[nodiscard]] std::vector<PostKind> post_kinds(const Project& project);

}  // namespace toehold::model
