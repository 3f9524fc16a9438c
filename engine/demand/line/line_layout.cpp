#include "demand/line/line_layout.h"

#include "model/line_geometry.h"

#include <cmath>
#include <numbers>

namespace toehold::demand {
namespace {

/// A splice this near a post stands at it.
constexpr double at_post_in = 1e-6;

/// A stretch of rail before it is cut into pieces.
struct Stretch {
    std::optional<std::size_t> from, to;
    model::Position start;
    double plan_in = 0.0, slope = 0.0, heading_rad = 0.0;
    double station_in = 0.0;                    ///< of its start, as splices count
    bool in_the_air = false, left_out = false;  ///< left out: hinged to its post and held by nothing
};

Stretch between(const LineInput& input, std::size_t from, double station_in) {
    const LinePost &a = input.posts[from], &b = input.posts[from + 1];
    const double x = b.at.x_in - a.at.x_in, y = b.at.y_in - a.at.y_in, plan = std::hypot(x, y);
    return {from, from + 1, a.at, plan, (b.rise_in - a.rise_in) / plan, std::atan2(y, x), station_in};
}

Stretch to_wall(Stretch beside, const LineWall& wall, const LinePost& post, bool first) {
    beside.from = first ? std::nullopt : beside.to;
    beside.to = first ? std::optional<std::size_t>(0) : std::nullopt;
    beside.station_in = first ? -wall.reach_in : beside.station_in + beside.plan_in;
    beside.start = post.at;
    if (first) {
        beside.start.x_in -= wall.reach_in * std::cos(beside.heading_rad);
        beside.start.y_in -= wall.reach_in * std::sin(beside.heading_rad);
    }
    beside.plan_in = wall.reach_in;
    beside.in_the_air = !wall.holds;
    return beside;
}

bool splice_at(const LineInput& input, double station_in) {
    for (const double splice : input.splices_in) {
        if (std::abs(splice - station_in) <= at_post_in) return true;
    }
    return false;
}

/// Whether the rail carries no moment past the outer post that the wall is beyond.
bool hinged_beyond(const LineInput& input, double station_in) {
    return input.run != model::RailRun::continuous || splice_at(input, station_in);
}

std::vector<Stretch> stretches_of(const LineInput& input) {
    std::vector<Stretch> all;
    double station = 0.0;
    for (std::size_t from = 0; from + 1 < input.posts.size(); ++from) {
        all.push_back(between(input, from, station));
        station += all.back().plan_in;
    }
    const Stretch first = all.front();
    if (input.last_wall) {
        all.push_back(to_wall(all.back(), *input.last_wall, input.posts.back(), false));
        all.back().left_out = !input.last_wall->holds && hinged_beyond(input, station);
    }
    if (input.first_wall) {
        all.insert(all.begin(), to_wall(first, *input.first_wall, input.posts.front(), true));
        all.front().left_out = !input.first_wall->holds && hinged_beyond(input, 0.0);
    }
    return all;
}

bool hinged_between(const LineInput& input, bool corners_hinged, const Stretch& before, const Stretch& after) {
    if (input.run != model::RailRun::continuous) return true;
    if (std::abs(after.slope - before.slope) > level_slope) return true;
    const double turn = std::remainder(after.heading_rad - before.heading_rad, 2.0 * std::numbers::pi);
    const bool rigid = input.corners_rigid && !corners_hinged && std::abs(before.slope) <= level_slope;
    if (std::abs(turn) > model::straight_rad && !rigid) return true;
    return splice_at(input, after.station_in);
}

class Laying {
  public:
    explicit Laying(const LineInput& input) : input_(input) {
        laid_.post_nodes.resize(input.posts.size());
        laid_.jointed = input.run != model::RailRun::continuous;
        apart_ = laid_.jointed && input.connection_lb_per_in;
        topped_.resize(input.posts.size(), false);
    }

    /// `hinged`: to the stretch before; the first has none.
    void add(const Stretch& stretch, bool hinged) {
        if (stretch.left_out) return add_span(stretch);
        const bool first = laid_.nodes.empty();
        if (first) node_ = add_node(stretch.start);
        if (!first && hinged) part_from_before();
        if (stretch.from) join(*stretch.from);
        if (first && !stretch.from && !stretch.in_the_air) laid_.first_wall = node_;
        add_span(stretch);
        if (stretch.to) join(*stretch.to);
        if (!stretch.to && !stretch.in_the_air) laid_.last_wall = node_;
    }

    [[nodiscard]] LineLayout laid() && { return std::move(laid_); }

  private:
    std::size_t add_node(model::Position at) {
        laid_.nodes.push_back(at);
        return laid_.nodes.size() - 1;
    }

    /// Both sides' ends meet at the post's top alone where each has its own connection to it.
    void part_from_before() {
        if (apart_)
            node_ = add_node(laid_.nodes[node_]);
        else
            add_hinge();
    }

    void join(std::size_t post) {
        if (!apart_) {
            laid_.post_nodes[post] = node_;
            return;
        }
        if (!topped_[post]) laid_.post_nodes[post] = add_node(laid_.nodes[node_]);
        topped_[post] = true;
        laid_.joints.push_back({post, node_});
    }

    void add_hinge() {
        const std::size_t other = add_node(laid_.nodes[node_]);
        laid_.hinges.emplace_back(node_, other);
        node_ = other;
    }

    void add_span(const Stretch& stretch) {
        LaidSpan span{stretch.from, stretch.to, stretch.plan_in, stretch.in_the_air, laid_.pieces.size(), 0};
        if (!stretch.left_out) add_pieces(stretch);
        span.pieces = laid_.pieces.size() - span.first_piece;
        laid_.spans.push_back(span);
    }

    void add_pieces(const Stretch& stretch) {
        double from_in = 0.0;
        for (const double splice : input_.splices_in) {
            const double at_in = splice - stretch.station_in;
            if (at_in <= from_in + at_post_in || at_in >= stretch.plan_in - at_post_in) continue;
            add_piece(stretch, from_in, at_in);
            add_hinge();
            from_in = at_in;
        }
        add_piece(stretch, from_in, stretch.plan_in);
    }

    void add_piece(const Stretch& stretch, double from_in, double to_in) {
        RailPiece piece;
        piece.span = laid_.spans.size();
        piece.from = node_;
        piece.from_in = from_in;
        piece.plan_in = to_in - from_in;
        piece.true_over_plan = std::hypot(1.0, slope_of(stretch));
        piece.cosine = std::cos(stretch.heading_rad);
        piece.sine = std::sin(stretch.heading_rad);
        piece.sloping = slope_of(stretch) != 0.0;
        node_ = add_node({stretch.start.x_in + to_in * piece.cosine, stretch.start.y_in + to_in * piece.sine});
        piece.to = node_;
        laid_.pieces.push_back(piece);
    }

    static double slope_of(const Stretch& stretch) {
        return std::abs(stretch.slope) > level_slope ? stretch.slope : 0.0;
    }

    const LineInput& input_;
    LineLayout laid_;
    bool apart_ = false;        ///< each end of the rail at a post has a connection of its own
    std::vector<bool> topped_;  ///< posts whose top has its node
    std::size_t node_ = 0;      ///< where the rail has come to
};

}  // namespace

LineLayout lay_out(const LineInput& input, bool corners_hinged) {
    const std::vector<Stretch> stretches = stretches_of(input);
    Laying laying(input);
    for (std::size_t index = 0; index < stretches.size(); ++index) {
        laying.add(stretches[index],
                   index > 0 && hinged_between(input, corners_hinged, stretches[index - 1], stretches[index]));
    }
    return std::move(laying).laid();
}

}  // namespace toehold::demand
