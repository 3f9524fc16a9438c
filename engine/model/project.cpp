#include "model/project.h"

#include "model/line_geometry.h"
#include "model/placement.h"
#include "model/problem_list.h"
#include "model/validate.h"
#include "model/validate_line.h"
#include "units/length.h"

#include <algorithm>
#include <iterator>
#include <set>
#include <stdexcept>

namespace toehold::model {
namespace {

using format::phrase;
using format::verbatim;

constexpr const char* lone_id = "P1";

/// An id for the first time, and not an empty one.
void check_id(ProblemList& problems, const std::string& element, const std::string& id, std::set<std::string>& seen) {
    problems.at(element + "[" + id + "]");
    if (id.empty()) problems.add(phrase("the id is empty"), phrase("a name"));
    if (!seen.insert(id).second) problems.add(phrase("the id is used twice"), phrase("an id of its own"), verbatim(id));
}

void check_ids(ProblemList& problems, const Project& project) {
    std::set<std::string> mounts, posts, lines;
    for (const NamedMount& mount : project.mounts)
        check_id(problems, "mounts/" + std::string(word(kind(mount.mount))), mount.id, mounts);
    for (const PlacedPost& post : project.posts) check_id(problems, "posts/post-at", post.id, posts);
    for (const GuardLine& line : project.guard_lines) check_id(problems, "guard-lines/guard-line", line.id, lines);
}

std::vector<std::string> ids_of_mounts(const Project& project) {
    std::vector<std::string> ids;
    ids.reserve(project.mounts.size());
    for (const NamedMount& mount : project.mounts) ids.push_back(mount.id);
    return ids;
}

void check_posts(ProblemList& problems, const Project& project) {
    if (project.posts.empty()) problems.at("posts").add(phrase("the project has no post"), phrase("one post or more"));
    if (project.posts.size() > most_posts) {
        problems.at("posts").add(phrase("too many posts"), phrase("at most {}", most_posts),
                                 verbatim(std::to_string(project.posts.size())));
    }
    for (const PlacedPost& post : project.posts) {
        problems.at("posts/post-at[" + post.id + "]");
        if (find_mount(project, post.mount) == nullptr) {
            problems.add(phrase("no mount has this id"),
                         these_or(ids_of_mounts(project), phrase("the id of a mount of this project")),
                         verbatim(post.mount));
        }
        problems.between(phrase("x (in)"), post.at.x_in, -largest_length_in, largest_length_in);
        problems.between(phrase("y (in)"), post.at.y_in, -largest_length_in, largest_length_in);
        if (post.rail_length_ft) problems.positive(phrase("rail length (ft)"), *post.rail_length_ft, 100.0);
        problems.between(phrase("rise (in)"), post.rise_in, -largest_length_in, largest_length_in);
    }
    for (std::size_t i = 0; i < project.posts.size(); ++i) {
        for (std::size_t j = i + 1; j < project.posts.size(); ++j) {
            if (project.posts[i].at != project.posts[j].at) continue;
            problems.at("posts/post-at[" + project.posts[j].id + "]")
                .add(phrase("the post stands where post {} stands", project.posts[i].id), phrase("a place of its own"));
        }
    }
}

bool of_framing(const Problem& problem) { return problem.element.starts_with("framing"); }

/// A fault of the framing is told as the file has it: not turned. How a mount lies against it is as the post sees it.
Problems problems_of(const Project& project, const PlacedPost& post) {
    PlacedPost not_turned = post;
    not_turned.facing = PostFacing::plus_y;
    Problems all = validate(detail_of(project, not_turned));
    if (post.facing == PostFacing::plus_y) return all;
    std::erase_if(all, [](const Problem& problem) { return !of_framing(problem); });
    Problems as_seen = validate(detail_of(project, post));
    std::erase_if(as_seen, of_framing);
    all.insert(all.end(), std::make_move_iterator(as_seen.begin()), std::make_move_iterator(as_seen.end()));
    return all;
}

/// A fault of what posts share is said once, not once a post.
void check_details(Problems& all, const Project& project) {
    for (const PlacedPost& post : project.posts) {
        for (Problem& problem : problems_of(project, post)) {
            if (std::find(all.begin(), all.end(), problem) == all.end()) all.push_back(std::move(problem));
        }
    }
}

void move_along(double& coordinate_in, PlanAxis axis, Position place) {
    coordinate_in -= model::coordinate_in(place, axis);
}

/// The length of rail that loads along it count with.
void give_rail(BaseDetail& detail, const Project& project, const PlacedPost& post) {
    const std::optional<RailLength> rail = rail_length(project, post);
    if (!rail || rail->from == RailLength::From::loads) return;
    const double rail_ft = rail->length_in / units::inches_per_foot;
    detail.guard.tributary_length_in = rail->length_in;
    if (!detail.loads.line) return;
    LineLoad& line = *detail.loads.line;
    set_spacing(line, rail->from == RailLength::From::post ? rail_ft : std::max(line.spacing_ft, rail_ft));
}

/// Fewer directions than all are about the post's own axes: at a corner, or under a rail that runs askew, they are not
/// square to its rails. Pushed from all round, it is pushed square to each of them; and wind blows on both its sides.
void turn_loads_to_rails(BaseDetail& detail, const Project& project, const PlacedPost& post) {
    std::optional<WindLoad>& wind = detail.loads.wind;
    if (wind && !wind->area_ft2 && !wind->solid_ratio) wind->solid_ratio = infill_solid_ratio(project, post.id);
    if (faces_its_rails(project, post)) return;
    detail.loads.directions = Directions::all_round;
    if (wind) wind->both_axes = true;
}

}  // namespace

const NamedMount* find_mount(const Project& project, const std::string& id) {
    const auto found = std::find_if(project.mounts.begin(), project.mounts.end(),
                                    [&id](const NamedMount& mount) { return mount.id == id; });
    return found == project.mounts.end() ? nullptr : &*found;
}

const PlacedPost* find_post(const Project& project, const std::string& id) {
    const auto found = std::find_if(project.posts.begin(), project.posts.end(),
                                    [&id](const PlacedPost& post) { return post.id == id; });
    return found == project.posts.end() ? nullptr : &*found;
}

Project project_of(const BaseDetail& detail) {
    Project project;
    project.name = detail.name;
    project.note = detail.note;
    project.guard = detail.guard;
    project.framing = detail.framing;
    project.mounts = {{lone_id, detail.post, detail.mount}};
    project.posts = {{lone_id, {}, lone_id}};
    project.loads = detail.loads;
    project.basis = detail.basis;
    project.remarks = detail.remarks;
    return project;
}

bool is_lone_detail(const Project& project) {
    if (project.posts.size() != 1 || project.mounts.size() != 1 || !project.guard_lines.empty()) return false;
    const PlacedPost& post = project.posts.front();
    return post.at == Position{} && !post.rail_length_ft && post.facing == PostFacing::plus_y && post.rise_in == 0.0;
}

Framing seen_from(const Framing& framing, Position place) {
    Framing moved = framing;
    const PlanAxis along = framing.joists ? framing.joists->along : PlanAxis::y;
    if (moved.joists) {
        for (Joist& joist : moved.joists->members) move_along(joist.offset_in, other(along), place);
        if (moved.joists->from_in) move_along(*moved.joists->from_in, along, place);
        if (moved.joists->to_in) move_along(*moved.joists->to_in, along, place);
    }
    for (Rim& rim : moved.rims) {
        move_along(rim.at_in, along, place);
        move_along(rim.from_in, other(along), place);
        move_along(rim.to_in, other(along), place);
    }
    for (JoistSupport& support : moved.supports) move_along(support.at_in, along, place);
    for (Block& block : moved.blocks) {
        move_along(block.from_in, block.along, place);
        move_along(block.to_in, block.along, place);
        move_along(block.across_in, other(block.along), place);
    }
    return moved;
}

BaseDetail detail_of(const Project& project, const PlacedPost& post) {
    const NamedMount* const mount = find_mount(project, post.mount);
    if (mount == nullptr) throw std::out_of_range("no mount " + post.mount);
    BaseDetail detail;
    detail.name = is_lone_detail(project) ? project.name : project.name + ", " + post.id;
    detail.note = project.note;
    detail.guard = project.guard;
    detail.post = mount->post;
    detail.mount = mount->mount;
    detail.framing = turned(seen_from(project.framing, post.at), post.facing);
    detail.loads = project.loads;
    detail.basis = project.basis;
    give_rail(detail, project, post);
    turn_loads_to_rails(detail, project, post);
    if (!is_lone_detail(project)) detail.project = project.name;
    return detail;
}

Problems validate(const Project& project) {
    ProblemList problems;
    check_ids(problems, project);
    check_posts(problems, project);
    check_guard_lines(problems, project);
    Problems all = problems.take();
    // A post without a place or a mount of its own has no detail to look into.
    if (all.empty()) check_details(all, project);
    return all;
}

}  // namespace toehold::model
