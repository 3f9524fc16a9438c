#include "mechanics/side_post/load_feasibility.h"

#include "mechanics/convex/load_cone.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace toehold::mechanics::side_post {
namespace {

/// What a unit of pull, slip or pressure asks of the load: the edges of the cone, each of length 1.
std::vector<Vector6> cone_edges(const PostModel& model) {
    std::vector<Vector6> edges;
    const auto add = [&edges](const Vector6& edge) { edges.push_back(edge.normalized()); };
    const auto rigid_part = [](const PointRow& row) { return Vector6(row.factor.head<6>()); };
    for (std::size_t i = 0; i < model.fastener_rows().size(); ++i) {
        const PostFastener& fastener = model.post().fasteners[i];
        const FastenerRows& rows = model.fastener_rows()[i];
        if (fastener.tension_lb_per_in > 0.0) add(rigid_part(rows.opening));
        if (fastener.slip_x_lb_per_in > 0.0) {
            add(rigid_part(rows.slip_x));
            add(-rigid_part(rows.slip_x));
        }
        if (fastener.slip_z_lb_per_in > 0.0) {
            add(rigid_part(rows.slip_z));
            add(-rigid_part(rows.slip_z));
        }
    }
    for (const PostBearing& bearing : model.post().bearings) {
        const double sign = bearing.side == PostSide::face ? -1.0 : 1.0;
        for (const double x : {bearing.x_min_in, bearing.x_max_in}) {
            for (const double z : {bearing.z_min_in, bearing.z_max_in}) {
                Vector6 edge = carried_row(1, {x, 0.0, z - model.reference_in()});
                edge.tail<3>() /= model.length_in();
                add(sign * edge);
            }
        }
    }
    return edges;
}

}  // namespace

std::optional<Vector6> unresisted_motion(const PostModel& model) {
    constexpr double outside = 1e-9, resisted = 1e-6;
    const Vector6 whole = model.load().head<rigid_freedoms>();
    const double size = whole.cwiseAbs().maxCoeff();
    if (size <= 0.0) return std::nullopt;
    const std::vector<Vector6> edges = cone_edges(model);
    const Vector6 load = whole / size;
    const auto for_each_edge = [&edges](const auto& visit) { std::for_each(edges.begin(), edges.end(), visit); };
    const Vector6 remainder =
        remainder_outside_cone<rigid_freedoms>(load, for_each_edge, ConeSearch{.most_rounds = 500, .round_off = 1e-13});
    if (remainder.norm() <= outside) return std::nullopt;
    const Vector6 motion = remainder / remainder.cwiseAbs().maxCoeff();
    const bool held =
        std::any_of(edges.begin(), edges.end(), [&](const Vector6& edge) { return edge.dot(motion) > resisted; });
    if (held || load.dot(motion) <= 0.0) return std::nullopt;
    return motion;
}

}  // namespace toehold::mechanics::side_post
