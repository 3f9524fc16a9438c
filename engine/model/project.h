#pragma once
// Several posts on one deck: framing they share, mounts by name, posts at places, lines of guard. A lone base detail is
// a project of one post. Axes of the project as a detail's: x along the rail, y outward, in inches, origin where the
// file puts it, z up from the walking surface. A post faces outward along +y unless it says otherwise.
#include "model/base_detail.h"
#include "model/facing.h"
#include "model/guard_line.h"
#include "model/problem.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::model {

/// A post and how it is fastened, described once and used at several places.
struct NamedMount {
    std::string id;
    Post post;
    Mount mount;
    friend bool operator==(const NamedMount&, const NamedMount&) = default;
};

/// One post of the project.
struct PlacedPost {
    std::string id;
    Position at;        ///< of the post's axis
    std::string mount;  ///< id of a NamedMount
    /// Length of rail this post takes under a load along the rail; absent: as the project's loads say or, where that is
    /// more, half of its spans in the guard lines (`rail_length` of line_geometry.h).
    std::optional<double> rail_length_ft = std::nullopt;
    PostFacing facing = PostFacing::plus_y;
    /// Of the walking surface at the post above the project's, either way; not 0 on a stair. The rail's height over the
    /// project's walking surface is this and the guard's height. The framing knows no height: it stays in plan.
    double rise_in = 0.0;
    friend bool operator==(const PlacedPost&, const PlacedPost&) = default;
};

struct Project {
    std::string name;
    std::string note;
    Guard guard;
    Framing framing;  ///< in the project's axes
    std::vector<NamedMount> mounts;
    std::vector<PlacedPost> posts;
    std::vector<GuardLine> guard_lines;
    Loads loads;
    Basis basis;
    std::vector<Remark> remarks = {};
    friend bool operator==(const Project&, const Project&) = default;
};

inline constexpr std::size_t most_posts = 200;

/// nullptr where none has the id.
[[nodiscard]] const NamedMount* find_mount(const Project& project, const std::string& id);
[[nodiscard]] const PlacedPost* find_post(const Project& project, const std::string& id);

/// The detail as a project of one post at the origin.
[[nodiscard]] Project project_of(const BaseDetail& detail);
/// Whether a detail can say all of it: one post at the origin, no guard line.
[[nodiscard]] bool is_lone_detail(const Project& project);
/// One post's base as a detail of its own: the framing moved so that the post stands at the origin, and turned so that
/// it faces +y; the project's remarks left out. Throws std::out_of_range where the post's mount, or a post of a guard
/// line, is not there, which `validate` refuses.
[[nodiscard]] BaseDetail detail_of(const Project& project, const PlacedPost& post);
/// The framing seen from a place: every coordinate in plan less the place's.
[[nodiscard]] Framing seen_from(const Framing& framing, Position place);

/// Everything that is wrong with the project itself and, once for each, with every post's detail.
[[nodiscard]] Problems validate(const Project& project);

}  // namespace toehold::model
