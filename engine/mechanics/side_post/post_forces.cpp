#include "mechanics/side_post/post_forces.h"

#include "mechanics/side_post/post_energy.h"
#include "mechanics/side_post/pressed_strip.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace toehold::mechanics::side_post {
namespace {

SpaceVector cross(const SpaceVector& a, const SpaceVector& b) {
    return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}

double largest_of(const SpaceVector& v) { return std::max({std::abs(v.x), std::abs(v.y), std::abs(v.z)}); }

/// A force and a couple on the post, or on a body, at a place.
struct ForceAt {
    SpaceVector at, force_lb, moment_lb_in = {};

    [[nodiscard]] SpaceVector moment_about(const SpaceVector& place) const {
        return moment_lb_in + cross(at - place, force_lb);
    }
};

/// Everything that acts on the post, and which body pushes back.
struct Acting {
    ForceAt on_post;
    std::optional<std::size_t> body = std::nullopt;
};

/// One piece of a bearing: force and first moments, and what is pressed.
struct PieceForce {
    double force_lb = 0.0, times_x_lb_in = 0.0, times_z_lb_in = 0.0, area_in2 = 0.0;
    double peak_psi = 0.0, peak_x_in = 0.0, peak_z_in = 0.0;
    double from_z_in = std::numeric_limits<double>::infinity(), to_z_in = -std::numeric_limits<double>::infinity();
};

/// Peaks of pressure along an edge: at the piece's ends or where the closing, a cubic, turns; found to well below the
/// eye by sampling finely, since the pressure is flat there.
void find_peak(PieceForce& found, const Cubic& closing, const BearingPiece& piece, const PostBearing& bearing,
               double x_in, double bottom_in, double length_in) {
    constexpr int places = 16;
    for (int i = 0; i <= places; ++i) {
        const double part = piece.from + (piece.to - piece.from) * i / places;
        const double pressure = bearing.stiffness_psi_per_in * closing.at(part);
        if (pressure <= found.peak_psi) continue;
        found.peak_psi = pressure;
        found.peak_x_in = x_in;
        found.peak_z_in = bottom_in + part * length_in;
    }
}

/// Lowest and highest place of the piece where the edge is pressed.
void find_extent(PieceForce& found, const Cubic& closing, const BearingPiece& piece, double bottom_in,
                 double length_in) {
    std::vector<double> ends = closing.sign_changes(piece.from, piece.to);
    for (const double end : {piece.from, piece.to})
        if (closing.at(end) > 0.0) ends.push_back(end);
    for (const double end : ends) {
        found.from_z_in = std::min(found.from_z_in, bottom_in + end * length_in);
        found.to_z_in = std::max(found.to_z_in, bottom_in + end * length_in);
    }
}

PieceForce piece_force(const PostModel& model, const BearingPiece& piece, const Unknowns& at) {
    const PostBearing& bearing = model.post().bearings[piece.bearing];
    const double bottom = model.nodes_in()[piece.piece], length = model.piece_length_in(piece.piece);
    const double x0 = bearing.x_min_in, width = bearing.x_max_in - bearing.x_min_in;
    const auto along = [&](double x) {
        const auto closing = [&](double part) { return model.closing(at, piece, part, x); };
        return Cubic({closing(0.0), closing(1.0 / 3.0), closing(2.0 / 3.0), closing(1.0)});
    };
    const Cubic left = along(x0), right = along(bearing.x_max_in);
    PieceForce found;
    for (const RulePoint& point : rule_points(left, right, piece.from, piece.to)) {
        const StripPressure pressure = strip_pressure(left.at(point.at), right.at(point.at));
        const double force = bearing.stiffness_psi_per_in * width * length * point.weight * pressure.force;
        found.force_lb += force;
        found.times_x_lb_in += force * (x0 + width * pressure.center);
        found.times_z_lb_in += force * (bottom + length * point.at);
        found.area_in2 += width * length * point.weight * pressure.pressed;
    }
    if (found.force_lb <= 0.0) return found;
    for (const auto& [edge, x] : {std::pair{&left, x0}, std::pair{&right, bearing.x_max_in}}) {
        find_peak(found, *edge, piece, bearing, x, bottom, length);
        find_extent(found, *edge, piece, bottom, length);
    }
    return found;
}

/// The bearing's own result from those of its pieces.
PostBearingForce joined(const PostBearing& bearing, const std::vector<PieceForce>& pieces) {
    const double middle_x = 0.5 * (bearing.x_min_in + bearing.x_max_in),
                 middle_z = 0.5 * (bearing.z_min_in + bearing.z_max_in);
    PostBearingForce whole{0.0, middle_x, middle_z, 0.0, middle_x, middle_z, middle_z, middle_z, 0.0};
    PieceForce sum;
    for (const PieceForce& piece : pieces) {
        if (piece.force_lb <= 0.0) continue;
        sum.force_lb += piece.force_lb;
        sum.times_x_lb_in += piece.times_x_lb_in;
        sum.times_z_lb_in += piece.times_z_lb_in;
        whole.area_in2 += piece.area_in2;
        sum.from_z_in = std::min(sum.from_z_in, piece.from_z_in);
        sum.to_z_in = std::max(sum.to_z_in, piece.to_z_in);
        if (piece.peak_psi <= whole.peak_psi) continue;
        whole.peak_psi = piece.peak_psi;
        whole.peak_x_in = piece.peak_x_in;
        whole.peak_z_in = piece.peak_z_in;
    }
    if (sum.force_lb <= 0.0) return whole;
    whole.force_lb = sum.force_lb;
    whole.at_x_in = sum.times_x_lb_in / sum.force_lb;
    whole.at_z_in = sum.times_z_lb_in / sum.force_lb;
    whole.from_z_in = sum.from_z_in;
    whole.to_z_in = sum.to_z_in;
    return whole;
}

std::vector<Acting> fastener_forces(SidePostSolution& solution, const PostModel& model, const Unknowns& at) {
    std::vector<Acting> acting;
    for (std::size_t i = 0; i < model.fastener_rows().size(); ++i) {
        const PostFastener& fastener = model.post().fasteners[i];
        const FastenerRows& rows = model.fastener_rows()[i];
        PostFastenerForce force;
        force.opening_in = rows.opening.dot(at);
        force.tension_lb = fastener.tension_lb_per_in * std::max(0.0, force.opening_in - fastener.gap_in);
        force.slip_x_lb = fastener.slip_x_lb_per_in * rows.slip_x.dot(at);
        force.slip_z_lb = fastener.slip_z_lb_per_in * rows.slip_z.dot(at);
        solution.fasteners.push_back(force);
        const SpaceVector on_post{-force.slip_x_lb, -force.tension_lb, -force.slip_z_lb};
        acting.push_back({{{fastener.x_in, 0.0, fastener.z_in}, on_post}, fastener.body});
    }
    return acting;
}

std::vector<Acting> bearing_forces(SidePostSolution& solution, const PostModel& model, const Unknowns& at) {
    std::vector<Acting> acting;
    std::vector<std::vector<PieceForce>> pieces(model.post().bearings.size());
    for (const BearingPiece& piece : model.bearing_pieces()) {
        const PostBearing& bearing = model.post().bearings[piece.bearing];
        const PieceForce found = piece_force(model, piece, at);
        pieces[piece.bearing].push_back(found);
        if (found.force_lb <= 0.0) continue;
        const SpaceVector center{found.times_x_lb_in / found.force_lb, 0.0, found.times_z_lb_in / found.force_lb};
        const double sign = bearing.side == PostSide::face ? 1.0 : -1.0;
        acting.push_back({{center, {0.0, sign * found.force_lb, 0.0}}, bearing.body});
    }
    for (std::size_t i = 0; i < pieces.size(); ++i)
        solution.bearings.push_back(joined(model.post().bearings[i], pieces[i]));
    return acting;
}

/// Cuts at the nodes, from what acts above each. A piece's pressure counts by its center, so that it lies on one side
/// of every cut.
void find_stations(SidePostSolution& solution, const PostModel& model, const std::vector<Acting>& acting) {
    const std::vector<double>& nodes = model.nodes_in();
    const double shortest = 1e-9 * (nodes.back() - nodes.front());
    for (const double z : nodes) {
        for (const bool above : {false, true}) {
            PostStation station{z, {}, {}};
            const SpaceVector axis{0.0, model.post().axis_y_in, z};
            for (const Acting& one : acting) {
                const double over = one.on_post.at.z - z;
                if (above ? over <= shortest : over < -shortest) continue;
                station.force_lb = station.force_lb + one.on_post.force_lb;
                station.moment_lb_in = station.moment_lb_in + one.on_post.moment_about(axis);
            }
            solution.stations.push_back(station);
        }
    }
}

PostMotion motion_of_body(const PostModel& model, const Unknowns& at, std::size_t body) {
    const auto six = at.segment<6>(model.first_of_body(body));
    return {{six(0), six(1), six(2)}, {six(3), six(4), six(5)}};
}

double ratio(double part, double whole) { return whole > 0.0 ? part / whole : part; }

void find_residuals(SidePostSolution& solution, const PostModel& model, const Unknowns& at,
                    const std::vector<Acting>& acting, std::span<const PostLoad> loads) {
    const SpaceVector middle{0.0, model.post().axis_y_in, model.reference_in()};
    SpaceVector force{}, moment{}, applied{};
    double largest = 0.0;
    for (const Acting& one : acting) {
        force = force + one.on_post.force_lb;
        moment = moment + one.on_post.moment_about(middle);
        largest = std::max(largest, largest_of(one.on_post.force_lb));
    }
    for (const PostLoad& load : loads)
        applied = applied + ForceAt{load.at, load.force_lb, load.moment_lb_in}.moment_about(middle);
    constexpr double no_moment = 1e-6;  // as of the rigid plate
    const double couple = largest * model.length_in(), size = largest_of(applied);
    solution.residuals.force = ratio(largest_of(force), largest);
    solution.residuals.moment = ratio(largest_of(moment), size > no_moment * couple ? size : couple);

    double wrong_way = 0.0;
    for (const PostFastenerForce& fastener : solution.fasteners) wrong_way = std::max(wrong_way, -fastener.tension_lb);
    for (const PostBearingForce& bearing : solution.bearings) wrong_way = std::max(wrong_way, -bearing.force_lb);
    solution.residuals.complementarity = ratio(wrong_way, largest);

    const Slope slope = slope_at(model, at, Contact::one_way);
    solution.elastic_residual = ratio(largest_elastic_force(model, slope), largest);
}

}  // namespace

void find_forces(SidePostSolution& solution, const PostModel& model, const Unknowns& at,
                 std::span<const PostLoad> loads) {
    std::vector<Acting> acting = fastener_forces(solution, model, at);
    const std::vector<Acting> pressed = bearing_forces(solution, model, at);
    acting.insert(acting.end(), pressed.begin(), pressed.end());
    for (std::size_t body = 0; body < model.post().bodies.places.size(); ++body) {
        BodyForce on_body{{}, {}, motion_of_body(model, at, body)};
        for (const Acting& one : acting) {
            if (one.body != body) continue;
            on_body.force_lb = on_body.force_lb - one.on_post.force_lb;
            on_body.moment_lb_in = on_body.moment_lb_in - one.on_post.moment_about(model.post().bodies.places[body]);
        }
        solution.bodies.push_back(on_body);
    }
    for (const PostLoad& load : loads) {
        acting.push_back({{load.at, load.force_lb, load.moment_lb_in}, std::nullopt});
        solution.at_loads.push_back(model.axis_motion(at, load.at.z));
    }
    find_stations(solution, model, acting);
    find_residuals(solution, model, at, acting, loads);
    solution.nodes = static_cast<int>(model.nodes_in().size());
}

}  // namespace toehold::mechanics::side_post
