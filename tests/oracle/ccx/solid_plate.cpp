#include "oracle/ccx/solid_plate.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <numbers>
#include <set>

namespace toehold::test {
namespace {

using mechanics::Point;

/// Gives every place of the mesh (a corner, or the middle between two) its nodes at three heights.
class NodeMaker {
  public:
    NodeMaker(const mechanics::PlateMesh& mesh, double thickness_in, std::vector<SolidNode>& nodes)
        : mesh_(mesh), half_(0.5 * thickness_in), nodes_(nodes) {}

    std::size_t corner(int at, int level) { return node(at, at, level); }
    std::size_t middle(int a, int b, int level) { return node(std::min(a, b), std::max(a, b), level); }

  private:
    std::size_t node(int a, int b, int level) {
        const auto [place, is_new] = made_.try_emplace({a, b, level}, nodes_.size());
        if (is_new) {
            const Point p = mesh_.nodes[static_cast<std::size_t>(a)], q = mesh_.nodes[static_cast<std::size_t>(b)];
            nodes_.push_back({0.5 * (p.x + q.x), 0.5 * (p.y + q.y), level * half_});
        }
        return place->second;
    }

    const mechanics::PlateMesh& mesh_;
    double half_;
    std::vector<SolidNode>& nodes_;
    std::map<std::array<int, 3>, std::size_t> made_;
};

std::array<double, 3> area_shares(const std::array<Point, 3>& p, Point at) {
    const auto twice = [](Point a, Point b, Point c) { return (b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y); };
    const double whole = twice(p[0], p[1], p[2]);
    return {twice(at, p[1], p[2]) / whole, twice(p[0], at, p[2]) / whole, twice(p[0], p[1], at) / whole};
}

}  // namespace

SolidPlate::SolidPlate(const mechanics::PlateMesh& mesh, double thickness_in) {
    NodeMaker make(mesh, thickness_in, nodes_);
    const std::set<int> on_ring(mesh.ring.begin(), mesh.ring.end());
    std::set<std::size_t> ring;
    for (const mechanics::Triangle& t : mesh.triangles) {
        Wedge wedge{};
        for (std::size_t i = 0; i < 3; ++i) {
            const int a = t[i], b = t[(i + 1) % 3];
            wedge[i] = make.corner(a, -1);
            wedge[3 + i] = make.corner(a, 1);
            wedge[6 + i] = make.middle(a, b, -1);
            wedge[9 + i] = make.middle(a, b, 1);
            wedge[12 + i] = make.corner(a, 0);
            const bool tied = on_ring.count(a) > 0;
            if (tied) ring.insert({wedge[i], wedge[3 + i], wedge[12 + i]});
            if (tied && on_ring.count(b) > 0) ring.insert({wedge[6 + i], wedge[9 + i]});
        }
        wedges_.push_back(wedge);
    }
    ring_.assign(ring.begin(), ring.end());
}

std::array<Point, 3> SolidPlate::corners(std::size_t wedge) const {
    std::array<Point, 3> result;
    for (std::size_t i = 0; i < 3; ++i) {
        const SolidNode& node = nodes_[wedges_[wedge][i]];
        result[i] = {node.x, node.y};
    }
    return result;
}

SolidRow SolidPlate::row(std::size_t wedge, Face face, Point at) const {
    const std::array<double, 3> l = area_shares(corners(wedge), at);
    const std::size_t first_corner = face == Face::under ? 0 : 3, first_middle = face == Face::under ? 6 : 9;
    SolidRow row;
    for (std::size_t i = 0; i < 3; ++i) {
        row.emplace_back(wedges_[wedge][first_corner + i], l[i] * (2.0 * l[i] - 1.0));
        row.emplace_back(wedges_[wedge][first_middle + i], 4.0 * l[i] * l[(i + 1) % 3]);
    }
    return row;
}

SolidRow SolidPlate::row(Face face, Point at) const {
    std::size_t best = 0;
    double best_least = -std::numeric_limits<double>::infinity();
    for (std::size_t wedge = 0; wedge < wedges_.size() && best_least < 0.0; ++wedge) {
        const std::array<double, 3> l = area_shares(corners(wedge), at);
        const double least = std::min({l[0], l[1], l[2]});
        if (least > best_least) {
            best_least = least;
            best = wedge;
        }
    }
    return row(best, face, at);
}

SolidRow SolidPlate::mean_row(Face face, const mechanics::Footprint& footprint) const {
    constexpr int points = 8;
    std::map<std::size_t, double> sum;
    for (const double sign : {-1.0, 1.0}) {
        const double away = footprint.radius * std::sqrt(0.5 + sign * 0.5 / std::numbers::sqrt3);
        for (int i = 0; i < points; ++i) {
            const double angle = 2.0 * std::numbers::pi * i / points;
            const Point at{footprint.center.x + away * std::cos(angle), footprint.center.y + away * std::sin(angle)};
            for (const auto& [node, weight] : row(face, at)) sum[node] += weight / (2 * points);
        }
    }
    return {sum.begin(), sum.end()};
}

}  // namespace toehold::test
