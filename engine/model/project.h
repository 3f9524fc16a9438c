#pragma once
// Several posts on one deck: framing they share, mounts by name, posts at places, lines of guard. A lone base detail is
// a project of one post. Axes of the project as a detail's: x along the rail, y outward, in inches, origin where the
// file puts it; every post faces outward along y.
#include "model/base_detail.h"
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
    /// Length of rail this post takes under a load along the rail; absent: as the project's loads say.
    std::optional<double> rail_length_ft = std::nullopt;
    friend bool operator==(const PlacedPost&, const PlacedPost&) = default;
};

/// Posts in order along a rail. What passes between them is not computed yet.
struct GuardLine {
    std::string id;
    std::vector<std::string> posts;  ///< ids of posts, two or more
    friend bool operator==(const GuardLine&, const GuardLine&) = default;
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

/// The detail as a project of one post at the origin.
[[nodiscard]] Project project_of(const BaseDetail& detail);
/// Whether a detail can say all of it: one post at the origin, no guard line.
[[nodiscard]] bool is_lone_detail(const Project& project);
/// One post's base as a detail of its own: the framing moved so that the post stands at the origin, the project's
/// remarks left out. Throws std::out_of_range where the post's mount is not there, which `validate` refuses.
[[nodiscard]] BaseDetail detail_of(const Project& project, const PlacedPost& post);
/// The framing seen from a place: every coordinate in plan less the place's.
[[nodiscard]] Framing seen_from(const Framing& framing, Position place);

/// Everything that is wrong with the project itself and, once for each, with every post's detail.
[[nodiscard]] Problems validate(const Project& project);

}  // namespace toehold::model
