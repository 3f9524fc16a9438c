#include "model/validate_line.h"

#include "model/line_geometry.h"
#include "model/validate_metal.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <set>
#include <utility>

namespace toehold::model {
namespace {

using format::phrase;
using format::verbatim;

constexpr double largest_rail_in = 24.0;
constexpr double largest_rail_force_lb = 1e6;
constexpr double stiffest_connection_lb_per_in = 1e9;
constexpr double degrees_per_rad = 180.0 / std::numbers::pi;

std::string line_path(const GuardLine& line) { return "guard-lines/guard-line[" + line.id + "]"; }

std::vector<std::string> ids_of_posts(const Project& project) {
    std::vector<std::string> ids;
    ids.reserve(project.posts.size());
    for (const PlacedPost& post : project.posts) ids.push_back(post.id);
    return ids;
}

/// Whether every post of the line is there, so that its geometry can be looked at.
bool check_line_posts(ProblemList& problems, const Project& project, const GuardLine& line) {
    problems.at(line_path(line));
    if (line.posts.size() < 2)
        problems.add(phrase("a guard line has fewer than two posts"), phrase("two posts or more"));
    bool all_there = line.posts.size() >= 2;
    for (const std::string& id : line.posts) {
        const bool there = find_post(project, id) != nullptr;
        if (!there)
            problems.add(phrase("no post has this id"),
                         these_or(ids_of_posts(project), phrase("the id of a post of this project")), verbatim(id));
        all_there = all_there && there;
    }
    return all_there;
}

void check_slopes(ProblemList& problems, const Project& project, const GuardLine& line) {
    for (const Span& span : spans_of(project, line)) {
        if (span.from.empty() || span.to.empty()) continue;
        const double slope_deg = degrees_per_rad * slope_rad(span);
        if (span.rise_in == 0.0 || slope_deg <= steepest_rail_deg) continue;
        problems.at(line_path(line))
            .add(phrase("the rail is too steep from post {} to post {}", span.from, span.to),
                 phrase("at most {} degrees", brief(steepest_rail_deg)),
                 phrase("{} degrees: a rise of {} in over {} in", brief(slope_deg), brief(span.rise_in),
                        brief(span.plan_in)));
    }
}

/// Whether the rail passes no post twice.
bool check_once_each(ProblemList& problems, const GuardLine& line) {
    std::set<std::string> seen;
    bool once = true;
    for (const std::string& id : line.posts) {
        if (seen.insert(id).second) continue;
        once = false;
        problems.at(line_path(line))
            .add(phrase("a rail passes the same post twice"),
                 phrase("each post once; a rail that closes on itself as two lines"), verbatim(id));
    }
    return once;
}

void check_spacing(ProblemList& problems, const Project& project, const GuardLine& line) {
    for (const Span& span : spans_of(project, line)) {
        if (span.from.empty() || span.to.empty()) continue;
        if (span.plan_in >= closest_posts_in && span.plan_in <= farthest_posts_in) continue;
        problems.at(line_path(line))
            .add(phrase("posts {} and {} cannot carry one rail", span.from, span.to),
                 phrase("neighbors {} to {} in apart in plan", brief(closest_posts_in), brief(farthest_posts_in)),
                 phrase("{} in apart", brief(span.plan_in)));
    }
}

/// Whether the rail never turns back on itself.
bool check_turns(ProblemList& problems, const Project& project, const GuardLine& line) {
    const std::vector<double> turns = turns_rad(project, line);
    bool goes_on = true;
    for (std::size_t post = 0; post < turns.size(); ++post) {
        const double turn_deg = degrees_per_rad * std::abs(turns[post]);
        if (turn_deg <= sharpest_turn_deg) continue;
        goes_on = false;
        problems.at(line_path(line))
            .add(phrase("the rail turns back on itself at post {}", line.posts[post]),
                 phrase("posts in the order the rail passes them, a turn of at most {} degrees at each",
                        brief(sharpest_turn_deg)),
                 phrase("a turn of {} degrees", brief(turn_deg)));
    }
    return goes_on;
}

/// A post that the rail passes faces out from one of its two sides there.
void check_not_along(ProblemList& problems, const Project& project, const GuardLine& line) {
    const std::vector<Span> spans = spans_of(project, line);
    for (std::size_t post = 1; post + 1 < line.posts.size(); ++post) {
        const std::string& id = line.posts[post];
        const PostFacing facing = find_post(project, id)->facing;
        const Position out = outward(facing);
        double square = 0.0;
        for (const Span& span : spans) {
            if (span.from != id && span.to != id) continue;
            square = std::max(square,
                              std::abs(std::cos(span.heading_rad) * out.y_in - std::sin(span.heading_rad) * out.x_in));
        }
        constexpr double nearly_along = 0.5;  // within 30 degrees
        if (square >= nearly_along) continue;
        problems.at("posts/post-at[" + id + "]")
            .add(phrase("the post faces along rail {}, which passes it", line.id),
                 phrase("a post that faces outward, away from the walking surface"),
                 verbatim(std::string(word(facing))));
    }
}

/// Which side of the rail each post's outward lies on: all on one. A post that faces along the rail takes no side.
void check_facing(ProblemList& problems, const Project& project, const GuardLine& line) {
    const std::vector<Span> spans = spans_of(project, line);
    double first_side = 0.0;
    for (const std::string& id : line.posts) {
        const PlacedPost* const post = find_post(project, id);
        const Position out = outward(post->facing);
        double along_x = 0.0, along_y = 0.0;
        for (const Span& span : spans) {
            if (span.from != id && span.to != id) continue;
            along_x += std::cos(span.heading_rad);
            along_y += std::sin(span.heading_rad);
        }
        constexpr double takes_a_side = 0.1;
        const double side = along_x * out.y_in - along_y * out.x_in;
        if (std::abs(side) <= takes_a_side) continue;
        if (first_side == 0.0) first_side = side;
        if (side * first_side > 0.0) continue;
        problems.at("posts/post-at[" + id + "]")
            .add(phrase("the post faces to the other side of rail {} than the posts before it", line.id),
                 phrase("posts of one rail that all face outward, away from the walking surface"),
                 verbatim(std::string(word(post->facing))));
    }
}

void check_splices(ProblemList& problems, const Project& project, const GuardLine& line) {
    problems.at(line_path(line) + "/rail");
    const std::vector<double>& splices = line.rail->splices_in;
    if (line.rail->run != RailRun::continuous) {
        if (!splices.empty())
            problems.add(
                phrase("only a continuous rail has splices: one broken at its posts or let in between them has "
                       "a joint at each"),
                phrase("no splice, or run=\"continuous\""));
        if (line.rail->corners_rigid)
            problems.add(phrase("only a continuous rail carries moment round its corners"),
                         phrase("corners=\"hinged\", or run=\"continuous\""));
        return;
    }
    const std::vector<double> posts = stations_in(project, line);
    for (std::size_t index = 0; index < splices.size(); ++index) {
        const double at_in = splices[index];
        problems.at(line_path(line) + "/rail/splice[" + std::to_string(index + 1) + "]");
        if (!(at_in > 0.0 && at_in < posts.back()))
            problems.add(phrase("the splice is not within the line"),
                         phrase("more than 0, less than {} in, the last post's place", brief(posts.back())),
                         phrase("{} in", brief(at_in)));
        if (index > 0 && !(at_in > splices[index - 1]))
            problems.add(phrase("the splices are not in order"), phrase("each farther along than the one before"),
                         phrase("{} in", brief(at_in)));
        for (std::size_t post = 0; post < posts.size(); ++post) {
            if (!(std::abs(at_in - posts[post]) < closest_splice_in)) continue;
            problems.add(phrase("the splice stands at post {}", line.posts[post]),
                         phrase("a splice at least {} in from every post's axis", brief(closest_splice_in)),
                         phrase("{} in, the post at {} in", brief(at_in), brief(posts[post])));
        }
    }
}

struct CheckRailSection {
    ProblemList& problems;

    void operator()(const RectangularTube& tube) const {
        check_tube(problems, tube.width_in, tube.depth_in, tube.wall_in, largest_rail_in, largest_rail_in);
        if (tube.certificate) check_certificate(problems, *tube.certificate);
        no_stub(tube.stub.has_value());
    }
    void operator()(const RoundTube& tube) const {
        check_tube(problems, tube.diameter_in, tube.diameter_in, tube.wall_in, largest_rail_in, largest_rail_in);
        if (tube.certificate) check_certificate(problems, *tube.certificate);
        no_stub(tube.stub.has_value());
    }
    void operator()(const SolidBar& bar) const {
        sides(bar.width_in, bar.depth_in);
        if (bar.round && bar.width_in != bar.depth_in)
            problems.add(phrase("the round bar is not round"), phrase("a width and depth that are equal"));
    }
    void operator()(const WoodRail& rail) const { sides(rail.width_in, rail.depth_in); }

    void sides(double width_in, double depth_in) const {
        problems.positive(phrase("width (in)"), width_in, largest_rail_in);
        problems.positive(phrase("depth (in)"), depth_in, largest_rail_in);
    }
    void no_stub(bool has_one) const {
        if (has_one) problems.add(phrase("a rail stands on no stub"), phrase("a rail without a stub"));
    }
};

void check_rail_connection(ProblemList& problems, const RailConnection& connection) {
    problems.between(phrase("across (lb)"), connection.across_lb, 0.0, largest_rail_force_lb);
    problems.between(phrase("along (lb)"), connection.along_lb, 0.0, largest_rail_force_lb);
    problems.between(phrase("vertical (lb)"), connection.vertical_lb, 0.0, largest_rail_force_lb);
    if (connection.stiffness_lb_per_in)
        problems.between(phrase("stiffness (lb/in)"), *connection.stiffness_lb_per_in, softest_connection_lb_per_in,
                         stiffest_connection_lb_per_in);
    const bool has_value = connection.across_lb > 0.0 || connection.along_lb > 0.0 || connection.vertical_lb > 0.0;
    if (has_value && connection.report.empty())
        problems.add(phrase("the connection's allowable forces need their source"),
                     phrase("the report or design they stand in"));
}

void check_wall(ProblemList& problems, const GuardLine& line, const std::optional<WallEnd>& wall, const char* at) {
    if (!wall) return;
    problems.at(line_path(line) + "/wall-end[" + at + "]");
    if (!line.rail) problems.add(phrase("a wall holds a rail, and the line has none"), phrase("a rail element"));
    problems.between(phrase("reach (in)"), wall->reach_in, least_reach_in, farthest_posts_in);
    if (!wall->connection) return;
    problems.at(line_path(line) + "/wall-end[" + at + "]/connection");
    check_rail_connection(problems, *wall->connection);
}

void check_rail(ProblemList& problems, const GuardLine& line) {
    problems.at(line_path(line) + "/rail");
    std::visit(CheckRailSection{problems}, line.rail->section);
    if (!line.rail->connection) return;
    problems.at(line_path(line) + "/rail/connection");
    check_rail_connection(problems, *line.rail->connection);
}

void check_parts(ProblemList& problems, const GuardLine& line) {
    if (line.rail) check_rail(problems, line);
    check_wall(problems, line, line.first_wall, "first");
    check_wall(problems, line, line.last_wall, "last");
    if (line.infill && line.infill->solid_ratio) {
        problems.at(line_path(line) + "/infill").between(phrase("solid ratio"), *line.infill->solid_ratio, 0.0, 1.0);
    }
    if (line.sharing && !line.rail)
        problems.at(line_path(line))
            .add(phrase("posts share a push through their rail, and the line has none"),
                 phrase("a rail element, or sharing=\"no\""));
}

void check_rail_geometry(ProblemList& problems, const Project& project, const GuardLine& line) {
    const bool once = check_once_each(problems, line);
    check_spacing(problems, project, line);
    check_not_along(problems, project, line);
    // Where it turns back its two sides change places.
    if (once && check_turns(problems, project, line)) check_facing(problems, project, line);
    check_splices(problems, project, line);
}

/// Whether two lines have a stretch between the same two posts: its length would count twice.
void check_each_stretch_once(ProblemList& problems, const Project& project) {
    std::map<std::pair<std::string, std::string>, std::string> line_of;
    for (const GuardLine& line : project.guard_lines) {
        for (std::size_t post = 1; post < line.posts.size(); ++post) {
            const auto [less, more] = std::minmax(line.posts[post - 1], line.posts[post]);
            const auto [found, fresh] = line_of.try_emplace({less, more}, line.id);
            if (fresh || found->second == line.id) continue;
            problems.at(line_path(line))
                .add(phrase("the rail from post {} to post {} is in line {} too", line.posts[post - 1],
                            line.posts[post], found->second),
                     phrase("each stretch of rail in one line"));
        }
    }
}

}  // namespace

void check_guard_lines(ProblemList& problems, const Project& project) {
    check_each_stretch_once(problems, project);
    for (const GuardLine& line : project.guard_lines) {
        const bool all_there = check_line_posts(problems, project, line);
        check_parts(problems, line);
        if (!all_there) continue;
        check_slopes(problems, project, line);
        if (line.rail) check_rail_geometry(problems, project, line);
    }
}

}  // namespace toehold::model
