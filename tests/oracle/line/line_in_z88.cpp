#include "oracle/line/line_in_z88.h"

#include "oracle/z88/beams.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

namespace toehold::test {
namespace {

using Eigen::Vector2d;
using mechanics::SpaceVector;

/// Of a beam that passes forces alone, and of one that stands for a base.
constexpr double link_in = 5e-4, foot_in = 10.0;
constexpr double no_give_lb_in = 3e7, no_hold_lb_in = 1e-4;
constexpr double same_place_in = 1e-6;

/// Of the rail.
struct Run {
    LineSolution::Leg leg;
    std::optional<std::size_t> from, to;
    double start_rise_in = 0.0, slope = 0.0;
    bool in_the_air = false;
    [[nodiscard]] bool sloping() const { return slope != 0.0; }
};

Run between_posts(const demand::LineInput& line, std::size_t first, double station_in) {
    const demand::LinePost &a = line.posts[first], &b = line.posts[first + 1];
    const Vector2d start(a.at.x_in, a.at.y_in), way = Vector2d(b.at.x_in, b.at.y_in) - start;
    Run run{{start, way.normalized(), way.norm(), 1.0, station_in, first + 1}, first, first + 1, a.rise_in, 0.0, false};
    run.slope = (b.rise_in - a.rise_in) / run.leg.plan_in;
    run.leg.true_over_plan = std::hypot(1.0, run.slope);
    return run;
}

std::vector<Run> runs_of(const demand::LineInput& line) {
    std::vector<Run> runs;
    double station = 0.0;
    for (std::size_t first = 0; first + 1 < line.posts.size(); ++first) {
        runs.push_back(between_posts(line, first, station));
        station += runs.back().leg.plan_in;
    }
    if (line.last_wall) {
        Run beyond = runs.back();
        beyond.from = beyond.to;
        beyond.to.reset();
        beyond.leg.start += beyond.leg.plan_in * beyond.leg.along;
        beyond.start_rise_in += beyond.leg.plan_in * beyond.slope;
        beyond.leg.plan_in = line.last_wall->reach_in;
        beyond.leg.station_in = station;
        ++beyond.leg.first_post;
        beyond.in_the_air = !line.last_wall->holds;
        runs.push_back(beyond);
    }
    return runs;
}

/// A member of the rail, by the place it has on its span.
struct Piece {
    std::size_t span = 0;
    double from_in = 0.0, to_in = 0.0;
    int member = 0;
};

class LineOfBeams {
  public:
    LineOfBeams(const LineProject& project, const demand::LineCorner& corner)
        : project_(project), line_(project.line), corner_(corner), runs_(runs_of(project.line)) {
        tops_.resize(line_.posts.size());
        feet_.resize(line_.posts.size());
        over_posts_.resize(line_.posts.size());
        for (std::size_t post = 0; post < line_.posts.size(); ++post) stand(post);
        for (std::size_t span = 0; span < runs_.size(); ++span) lay(span);
        if (line_.last_wall && line_.last_wall->holds) hold_by_wall();
    }

    [[nodiscard]] LineSolution solve(const RailPush& push) {
        beams_.loads = {};
        add_load(push);
        const std::vector<mechanics::SpaceMotion> motions = solve_beams_with_z88(beams_);
        const auto level = [&](int node) {
            const SpaceVector& move = motions[static_cast<std::size_t>(node)].move_in;
            return Vector2d(move.x, move.y);
        };
        std::vector<LineSolution::Leg> legs;
        for (const Run& run : runs_) legs.push_back(run.leg);
        std::vector<Vector2d> places;
        for (const demand::LinePost& post : line_.posts) places.emplace_back(post.at.x_in, post.at.y_in);
        LineSolution solution(legs, places, push);
        for (std::size_t post = 0; post < line_.posts.size(); ++post) {
            solution.posts.push_back(force_on(post, motions[static_cast<std::size_t>(feet_[post])].turn_rad));
            solution.post_motions.push_back(level(over_posts_[post]));
        }
        for (const int node : span_nodes_) solution.span_motions.push_back(level(node));
        return solution;
    }

  private:
    [[nodiscard]] bool stiff(std::size_t post) const {
        return corner_.post == post ? corner_.post_stiff : corner_.others_stiff;
    }

    /// About the mount's x, which pushes along its y turn, and about its y; lb in per rad.
    struct Base {
        double about_x = 0.0, about_y = 0.0;
    };
    [[nodiscard]] Base base(std::size_t post) const {
        const demand::BaseStiffnessRange& range = line_.posts[post].base;
        if (stiff(post))
            return {std::max(range.stiff.outward, range.stiff.inward), std::max(range.stiff.right, range.stiff.left)};
        return {std::min(range.soft.outward, range.soft.inward), std::min(range.soft.right, range.soft.left)};
    }

    [[nodiscard]] Vector2d mount_x(std::size_t post) const {
        return unit_vector(line_.posts[post].outward_rad - 0.5 * std::numbers::pi);
    }

    int node(const SpaceVector& at) {
        beams_.nodes.push_back(at);
        return static_cast<int>(beams_.nodes.size()) - 1;
    }

    void hold(int of, std::initializer_list<int> motions) {
        for (const int motion : motions) beams_.held.push_back({of, motion});
    }

    int member(const mechanics::SpaceMember& of) {
        beams_.members.push_back(of);
        return static_cast<int>(beams_.members.size()) - 1;
    }

    void stand(std::size_t number) {
        const demand::LinePost& post = line_.posts[number];
        const double top_in = post.rise_in - link_in, x = post.at.x_in, y = post.at.y_in;
        const int foot = node({x, y, top_in - post.height_in}), top = node({x, y, top_in});
        const Vector2d along = mount_x(number);
        const int far = node({x + foot_in * along.x(), y + foot_in * along.y(), top_in - post.height_in});
        hold(foot, {0, 1, 2, 5});
        beams_.clamped.push_back(far);
        const Base of = base(number);
        member({foot, far, {0, 0, 1}, 1e7, of.about_x * foot_in, 0.25 * of.about_y * foot_in, 1e7});
        const demand::PostFlexibility& bends = stiff(number) ? post.stiff_post : post.soft_post;
        const double part = along.x() * along.x(), third = std::pow(post.height_in, 3) / 3.0;
        const double in_x = part * bends.along_x_in_per_lb + (1.0 - part) * bends.along_y_in_per_lb;
        const double in_y = part * bends.along_y_in_per_lb + (1.0 - part) * bends.along_x_in_per_lb;
        member({foot, top, {1, 0, 0}, 1e7, 1e6, third / in_x, third / in_y});
        feet_[number] = foot;
        tops_[number] = top;
    }

    /// A level force at the post's top is the moment about its foot over its height.
    [[nodiscard]] Vector2d force_on(std::size_t post, const SpaceVector& turn) const {
        const Vector2d x = mount_x(post), y(-x.y(), x.x()), turned(turn.x, turn.y);
        const Base of = base(post);
        return (of.about_y * turned.dot(y) * x - of.about_x * turned.dot(x) * y) / line_.posts[post].height_in;
    }

    /// Upright, from the lower to the upper.
    void link(int first, int second, const Vector2d& stiffness) {
        const auto z = [&](int of) { return beams_.nodes[static_cast<std::size_t>(of)].z; };
        if (z(first) > z(second)) std::swap(first, second);
        const Vector2d bends = std::pow(z(second) - z(first), 3) / 12.0 * stiffness;
        member({first, second, {1, 0, 0}, 1e3, 1e-6, bends.x(), bends.y()});
    }

    [[nodiscard]] bool joint_at(double station_in) const {
        return std::any_of(project_.joints_in.begin(), project_.joints_in.end(),
                           [&](double joint) { return std::abs(joint - station_in) < same_place_in; });
    }

    /// A node of the rail on a span; where it meets another at a joint the two stand one link above the other.
    int rail_node(const Run& run, double along_in) {
        const Vector2d at = run.leg.start + along_in * run.leg.along;
        const int added = node({at.x(), at.y(), run.start_rise_in + along_in * run.slope + (raised_ ? link_in : 0.0)});
        if (run.sloping())
            hold(added, {2, 4});
        else
            hold(added, {2, 3, 4});
        return added;
    }

    void lay(std::size_t span) {
        const Run& run = runs_[span];
        if (span == 0) {
            last_ = rail_node(run, 0.0);
            hang(*run.from, last_, last_);
        }
        const double seen_in = run.in_the_air ? run.leg.plan_in : 0.5 * run.leg.plan_in;
        std::vector<double> stops = {seen_in, run.leg.plan_in};
        for (const double joint : project_.joints_in) {
            const double along = joint - run.leg.station_in;
            if (along > same_place_in && along < run.leg.plan_in - same_place_in) stops.push_back(along);
        }
        std::sort(stops.begin(), stops.end());
        stops.erase(std::unique(stops.begin(), stops.end()), stops.end());
        double from_in = 0.0;
        for (const double stop : stops) {
            const int next = rail_node(run, stop);
            add_piece(span, from_in, stop, next);
            if (stop == seen_in) span_nodes_.push_back(next);
            if (stop < run.leg.plan_in)
                last_ = joint_at(run.leg.station_in + stop) ? jointed(run, stop, next) : next;
            else
                finish(span, next);
            from_in = stop;
        }
    }

    void add_piece(std::size_t span, double from_in, double to_in, int next) {
        const demand::RailStiffness& rail = corner_.rail_stiff ? line_.stiff_rail : line_.soft_rail;
        const int added = member({last_, next, {0, 0, 1}, rail.axial_lb, 1e6, 3e6, rail.in_plan_lb_in2});
        pieces_.push_back({span, from_in, to_in, added});
    }

    /// The rail's next node behind a joint within a span.
    int jointed(const Run& run, double along_in, int before) {
        raised_ = !raised_;
        const int behind = rail_node(run, along_in);
        link(before, behind, Vector2d::Constant(no_give_lb_in));
        return behind;
    }

    /// A span's end, at a post or not, and the next span's first node.
    void finish(std::size_t span, int before) {
        const Run& run = runs_[span];
        last_ = before;
        if (!run.to) return;
        const bool goes_on = span + 1 < runs_.size();
        if (goes_on && joint_at(runs_[span + 1].leg.station_in)) {
            raised_ = !raised_;
            last_ = rail_node(runs_[span + 1], 0.0);
        }
        const bool upon_last = last_ != before && run.sloping() && !runs_[span + 1].sloping();
        hang(*run.to, upon_last ? last_ : before, upon_last ? before : last_);
        if (last_ == before || project_.own_connections) return;
        // A sloping stretch passes no force along itself.
        const bool sloping = run.sloping() || runs_[span + 1].sloping();
        link(before, last_, {sloping ? no_hold_lb_in : no_give_lb_in, no_give_lb_in});
    }

    void hang(std::size_t post, int rail, int other) {
        over_posts_[post] = project_.own_connections ? other : rail;
        const bool gives = !stiff(post) && line_.connection_lb_per_in;
        const Vector2d stiffness = Vector2d::Constant(gives ? *line_.connection_lb_per_in : no_give_lb_in);
        link(tops_[post], rail, stiffness);
        if (other != rail && project_.own_connections) link(tops_[post], other, stiffness);
    }

    void hold_by_wall() {
        const demand::LineWall& wall = *line_.last_wall;
        SpaceVector below = beams_.nodes[static_cast<std::size_t>(last_)];
        below.z -= 2.0 * link_in;
        const int fixed = node(below);
        beams_.clamped.push_back(fixed);
        const bool gives = !corner_.others_stiff && wall.stiffness_lb_per_in;
        link(fixed, last_, Vector2d::Constant(gives ? *wall.stiffness_lb_per_in : no_give_lb_in));
    }

    void add_load(const RailPush& push) {
        const Vector2d way = unit_vector(push.direction_rad);
        const SpaceVector force = {way.x(), way.y(), 0.0};
        const auto under = std::find_if(pieces_.begin(), pieces_.end(), [&](const Piece& piece) {
            return piece.span == push.at.span && push.at.along_in <= piece.to_in + same_place_in;
        });
        const mechanics::SpaceMember& of = beams_.members[static_cast<std::size_t>(under->member)];
        const double along_in = push.at.along_in - under->from_in;
        if (along_in < same_place_in)
            beams_.loads.nodes.push_back({of.from, force, {}});
        else if (push.at.along_in > under->to_in - same_place_in)
            beams_.loads.nodes.push_back({of.to, force, {}});
        else {
            const double true_in = along_in * runs_[push.at.span].leg.true_over_plan;
            beams_.loads.points.push_back({under->member, true_in, force, {}});
        }
    }

    const LineProject& project_;
    const demand::LineInput& line_;
    demand::LineCorner corner_;
    std::vector<Run> runs_;
    BeamsInSpace beams_;
    std::vector<int> tops_, feet_, over_posts_, span_nodes_;
    std::vector<Piece> pieces_;
    int last_ = 0;         ///< of the rail's nodes so far
    bool raised_ = false;  ///< whether the rail lies one link higher
};

}  // namespace

LineSolution solve_line_with_z88(const LineProject& project, const demand::LineCorner& corner, const RailPush& push) {
    return LineOfBeams(project, corner).solve(push);
}

}  // namespace toehold::test
