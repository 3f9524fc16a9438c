#include "demand/line/line_frame.h"

#include "mechanics/space_frame/space_frame.h"

#include <Eigen/LU>

#include <algorithm>
#include <cmath>
#include <limits>

namespace toehold::demand {
namespace {

using mechanics::SpaceVector;

/// A hinge, a rigid wall, or a post that does not move, lb/in.
constexpr double rigid_lb_per_in = 1e8;
/// The rail lies in one plane: what would leave it is held, and meets no load.
constexpr double held = 1e6;
/// Of a solve that gives no number.
constexpr double no_balance = std::numeric_limits<double>::infinity();
/// Of a sloping piece's stiffness along itself, over the softest spring: as good as none.
constexpr double no_axial_part = 1e-6;

PlanMatrix along_axes(double outward_rad, double right, double outward) {
    const PlanVector y(std::cos(outward_rad), std::sin(outward_rad)), x(y.y(), -y.x());
    return right * x * x.transpose() + outward * y * y.transpose();
}

bool is_stiff(const LineCorner& corner, std::size_t post) {
    return corner.post == post ? corner.post_stiff : corner.others_stiff;
}

mechanics::SpaceSupport spring(std::size_t node, const PlanMatrix& stiffness) {
    mechanics::BaseStiffness six = mechanics::uncoupled({0.0, 0.0, held, held, held, 0.0});
    six[0][0] = stiffness(0, 0);
    six[1][1] = stiffness(1, 1);
    six[0][1] = six[1][0] = 0.5 * (stiffness(0, 1) + stiffness(1, 0));
    return {static_cast<int>(node), six, {}};
}

/// What holds the rail's nodes, by node.
using Springs = std::vector<PlanMatrix>;

Springs springs_of(const LineLayout& layout, const std::vector<PlanMatrix>& posts, double first_wall,
                   double last_wall) {
    Springs springs(layout.nodes.size(), PlanMatrix::Zero());
    for (std::size_t post = 0; post < posts.size(); ++post) springs[layout.post_nodes[post]] += posts[post];
    if (layout.first_wall) springs[*layout.first_wall] += first_wall * PlanMatrix::Identity();
    if (layout.last_wall) springs[*layout.last_wall] += last_wall * PlanMatrix::Identity();
    return springs;
}

mechanics::SpaceJoint pin(std::size_t first, std::size_t second, double lb_per_in) {
    return {static_cast<int>(first),
            static_cast<int>(second),
            {lb_per_in, lb_per_in, 0.0, 0.0, 0.0, 0.0},
            {},
            std::nullopt};
}

/// `joints_lb_per_in`: of every connection at a post, by post.
std::vector<mechanics::SpaceJoint> joints_of(const LineLayout& layout, const std::vector<double>& joints_lb_per_in) {
    std::vector<mechanics::SpaceJoint> joints;
    for (const auto& [first, second] : layout.hinges) joints.push_back(pin(first, second, rigid_lb_per_in));
    for (const JoinedNode& joint : layout.joints)
        joints.push_back(pin(joint.node, layout.post_nodes[joint.post], joints_lb_per_in[joint.post]));
    return joints;
}

mechanics::SpaceFrame frame_of(const LineLayout& layout, const std::vector<PieceStiffness>& pieces,
                               const Springs& springs, const std::vector<double>& joints_lb_per_in) {
    std::vector<SpaceVector> nodes;
    std::vector<mechanics::SpaceSupport> supports;
    for (std::size_t node = 0; node < layout.nodes.size(); ++node) {
        nodes.push_back({layout.nodes[node].x_in, layout.nodes[node].y_in, 0.0});
        supports.push_back(spring(node, springs[node]));
    }
    // Nothing turns a post's top that stands by itself.
    for (const JoinedNode& joint : layout.joints) supports[layout.post_nodes[joint.post]].stiffness[5][5] = held;
    std::vector<mechanics::SpaceMember> members;
    for (std::size_t index = 0; index < pieces.size(); ++index) {
        const RailPiece& piece = layout.pieces[index];
        const double bending = pieces[index].bending_lb_in2;
        members.push_back({static_cast<int>(piece.from),
                           static_cast<int>(piece.to),
                           {0.0, 0.0, 1.0},
                           pieces[index].axial_lb,
                           bending,
                           bending,
                           bending,
                           0.0,
                           0.0});
    }
    return {std::move(nodes), std::move(members), joints_of(layout, joints_lb_per_in), std::move(supports)};
}

std::vector<mechanics::SpaceLoads> unit_loads(std::size_t nodes) {
    std::vector<mechanics::SpaceLoads> loads;
    for (std::size_t node = 0; node < nodes; ++node) {
        const int at = static_cast<int>(node);
        for (const mechanics::SpaceNodeLoad& unit :
             {mechanics::SpaceNodeLoad{at, {1.0, 0.0, 0.0}, {}}, mechanics::SpaceNodeLoad{at, {0.0, 1.0, 0.0}, {}},
              mechanics::SpaceNodeLoad{at, {}, {0.0, 0.0, 1.0}}}) {
            loads.emplace_back();
            loads.back().nodes = {unit};
        }
    }
    return loads;
}

/// Fills all but what the caller knows already.
void solve(LineFrame& frame, const LineLayout& layout, const Springs& springs,
           const std::vector<double>& joints_lb_per_in) {
    const mechanics::SpaceFrame space = frame_of(layout, frame.pieces, springs, joints_lb_per_in);
    frame.stable = space.stable();
    if (!frame.stable) return;
    const auto unknowns = static_cast<Eigen::Index>(plan_freedoms * layout.nodes.size());
    frame.flexibility.resize(unknowns, unknowns);
    space.solve_each(unit_loads(layout.nodes.size()), [&](std::size_t load, mechanics::SpaceSolution&& solution) {
        if (std::isnan(solution.residual)) frame.residual = no_balance;
        frame.residual = std::max(frame.residual, solution.residual);
        Eigen::Index row = 0;
        for (const mechanics::SpaceMotion& motion : solution.motions) {
            for (const double value : {motion.move_in.x, motion.move_in.y, motion.turn_rad.z})
                frame.flexibility(row++, static_cast<Eigen::Index>(load)) = value;
        }
    });
}

double wall_spring(const std::optional<LineWall>& wall, bool stiff) {
    return stiff || !wall ? rigid_lb_per_in : wall->stiffness_lb_per_in.value_or(rigid_lb_per_in);
}

/// Of the rail to a post, lb/in.
double connection_spring(const LineInput& input, bool stiff) {
    return stiff ? rigid_lb_per_in : input.connection_lb_per_in.value_or(rigid_lb_per_in);
}

double least_spring(const Springs& springs) {
    double least = rigid_lb_per_in;
    for (const PlanMatrix& spring : springs) {
        if (spring.trace() > 0.0) least = std::min(least, spring.trace());
    }
    return least;
}

/// A sloping piece passes no force along itself.
std::vector<PieceStiffness> pieces_of(const LineLayout& layout, const RailStiffness& rail, double least_lb_per_in) {
    std::vector<PieceStiffness> pieces;
    for (const RailPiece& piece : layout.pieces) {
        pieces.push_back({piece.sloping ? no_axial_part * least_lb_per_in * piece.plan_in : rail.axial_lb,
                          rail.in_plan_lb_in2 / std::pow(piece.true_over_plan, 3)});
    }
    return pieces;
}

}  // namespace

TopFlexibility top_flexibility(const LineInput& input, std::size_t post, bool stiff) {
    const LinePost& of = input.posts[post];
    const BaseStiffness& base = stiff ? of.base.stiff : of.base.soft;
    const auto pick = [stiff](double a, double b) { return stiff ? std::max(a, b) : std::min(a, b); };
    const PostFlexibility& bends = stiff ? of.stiff_post : of.soft_post;
    const double height2 = of.height_in * of.height_in;
    TopFlexibility top;
    top.post = along_axes(of.outward_rad, bends.along_x_in_per_lb, bends.along_y_in_per_lb);
    top.base =
        along_axes(of.outward_rad, height2 / pick(base.right, base.left), height2 / pick(base.outward, base.inward));
    const double connection = stiff || !input.connection_lb_per_in ? 0.0 : 1.0 / *input.connection_lb_per_in;
    top.connection = connection * PlanMatrix::Identity();
    return top;
}

LineFrame solve_frame(const LineInput& input, const LineLayout& layout, const LineCorner& corner) {
    LineFrame frame;
    std::vector<double> joints_lb_per_in;
    for (std::size_t post = 0; post < input.posts.size(); ++post) {
        const bool stiff = is_stiff(corner, post);
        const TopFlexibility top = top_flexibility(input, post, stiff);
        const PlanMatrix gives = layout.joints.empty() ? top.total() : PlanMatrix(top.post + top.base);
        frame.posts.push_back(gives.inverse());
        joints_lb_per_in.push_back(connection_spring(input, stiff));
    }
    const Springs springs = springs_of(layout, frame.posts, wall_spring(input.first_wall, corner.others_stiff),
                                       wall_spring(input.last_wall, corner.others_stiff));
    frame.pieces = pieces_of(layout, corner.rail_stiff ? input.stiff_rail : input.soft_rail, least_spring(springs));
    solve(frame, layout, springs, joints_lb_per_in);
    return frame;
}

LineFrame solve_on_rigid_posts(const LineLayout& layout) {
    LineFrame frame;
    constexpr RailStiffness any_rail{1e4, 1e6};  // far softer than its supports
    frame.posts.assign(layout.post_nodes.size(), rigid_lb_per_in * PlanMatrix::Identity());
    frame.pieces.assign(layout.pieces.size(), {any_rail.axial_lb, any_rail.in_plan_lb_in2});
    solve(frame, layout, springs_of(layout, frame.posts, rigid_lb_per_in, rigid_lb_per_in),
          std::vector<double>(layout.post_nodes.size(), rigid_lb_per_in));
    return frame;
}

}  // namespace toehold::demand
