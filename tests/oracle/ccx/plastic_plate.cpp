#include "oracle/ccx/plastic_plate.h"

#include "oracle/ccx/run.h"
#include "oracle/ccx/writer.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numbers>
#include <set>

namespace toehold::test {
namespace {

using mechanics::Point;

constexpr int layers = 2;
/// Of the spring between the moved node and the plate: its stretch tells the force.
constexpr double spring_lb_per_in = 1e6;

/// A place of the mesh, a corner or the middle between two, at one of the levels of half a layer.
using Place = std::array<int, 3>;

class Mesh {
  public:
    explicit Mesh(const PlasticPlate& plate)
        : plate_(plate), mesh_(mesh_plate(plate.outline, plate.foot, plate.pulled, plate.fineness)) {
        for (const mechanics::Triangle& t : mesh_.triangles) {
            if (inside_polygon(middle_of(t), plate.foot)) continue;
            kept_.push_back(t);
        }
    }

    [[nodiscard]] const std::vector<mechanics::Triangle>& triangles() const { return kept_; }
    [[nodiscard]] Point at(int node) const { return mesh_.nodes[static_cast<std::size_t>(node)]; }
    [[nodiscard]] Point middle_of(const mechanics::Triangle& t) const {
        return {(at(t[0]).x + at(t[1]).x + at(t[2]).x) / 3.0, (at(t[0]).y + at(t[1]).y + at(t[2]).y) / 3.0};
    }
    [[nodiscard]] bool under_an_anchor(const mechanics::Triangle& t) const {
        const Point middle = middle_of(t);
        return std::any_of(plate_.pulled.begin(), plate_.pulled.end(), [&](const mechanics::Footprint& print) {
            return std::hypot(middle.x - print.center.x, middle.y - print.center.y) < print.radius;
        });
    }

    /// From 1, as the program counts.
    int node(int a, int b, int level) {
        const auto [place, is_new] =
            numbers_.try_emplace({std::min(a, b), std::max(a, b), level}, static_cast<int>(numbers_.size()) + 1);
        (void)is_new;
        return place->second;
    }
    [[nodiscard]] const std::map<Place, int>& numbers() const { return numbers_; }

    std::array<int, 15> wedge(const mechanics::Triangle& t, int layer) {
        std::array<int, 15> nodes{};
        for (std::size_t i = 0; i < 3; ++i) {
            const int a = t[i], b = t[(i + 1) % 3];
            nodes[i] = node(a, a, 2 * layer);
            nodes[3 + i] = node(a, a, 2 * layer + 2);
            nodes[6 + i] = node(a, b, 2 * layer);
            nodes[9 + i] = node(a, b, 2 * layer + 2);
            nodes[12 + i] = node(a, a, 2 * layer + 1);
        }
        return nodes;
    }

    /// Nodes on the foot's outline, at every level.
    [[nodiscard]] std::vector<int> clamped() const {
        const std::set<int> ring(mesh_.ring.begin(), mesh_.ring.end());
        std::vector<int> nodes;
        for (const auto& [place, number] : numbers_) {
            if (ring.contains(place[0]) && ring.contains(place[1])) nodes.push_back(number);
        }
        return nodes;
    }

    /// Mean lift of all rims, as weights of nodes in the middle of the thickness.
    std::map<int, double> mean_lift() {
        constexpr int around = 8;
        std::map<int, double> weights;
        for (const mechanics::Footprint& print : plate_.pulled) {
            for (int step = 0; step < around; ++step) {
                const double angle = 2.0 * std::numbers::pi * (step + 0.5) / around;
                add(weights,
                    {print.center.x + print.radius * std::cos(angle), print.center.y + print.radius * std::sin(angle)},
                    1.0 / (around * static_cast<double>(plate_.pulled.size())));
            }
        }
        return weights;
    }

  private:
    void add(std::map<int, double>& weights, Point point, double weight) {
        const auto twice = [](Point a, Point b, Point c) {
            return (b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y);
        };
        for (const mechanics::Triangle& t : kept_) {
            const Point a = at(t[0]), b = at(t[1]), c = at(t[2]);
            const double whole = twice(a, b, c);
            const std::array<double, 3> share{twice(point, b, c) / whole, twice(a, point, c) / whole,
                                              twice(a, b, point) / whole};
            if (*std::min_element(share.begin(), share.end()) < -1e-9) continue;
            for (std::size_t i = 0; i < 3; ++i) weights[node(t[i], t[i], layers)] += weight * share[i];
            return;
        }
    }

    const PlasticPlate& plate_;
    mechanics::PlateMesh mesh_;
    std::vector<mechanics::Triangle> kept_;
    std::map<Place, int> numbers_;
};

void write_nodes(Writer& out, const Mesh& mesh, double thickness_in) {
    out.line("*NODE");
    for (const auto& [place, number] : mesh.numbers()) {
        const Point a = mesh.at(place[0]), b = mesh.at(place[1]);
        out.line("{},{:.10e},{:.10e},{:.10e}", number, 0.5 * (a.x + b.x), 0.5 * (a.y + b.y),
                 thickness_in * (0.5 * place[2] / layers - 0.5));
    }
}

void write_elements(Writer& out, Mesh& mesh, bool elastic, int& number) {
    out.line("*ELEMENT,TYPE=C3D15,ELSET={}", elastic ? "HELD" : "PLATE");
    for (const mechanics::Triangle& t : mesh.triangles()) {
        if (mesh.under_an_anchor(t) != elastic) continue;
        for (int layer = 0; layer < layers; ++layer) {
            std::string nodes;
            for (const int node : mesh.wedge(t, layer)) nodes += fmt::format(",{}", node);
            out.line("{}{}", number++, nodes);
        }
    }
}

void write_metal(Writer& out, const PlasticPlate& plate, bool any_held) {
    out.line("*MATERIAL,NAME=METAL\n*ELASTIC\n{:.10e},.3\n*PLASTIC\n{:.10e},0.\n{:.10e},10.", plate.modulus_psi,
             plate.yield_psi, plate.yield_psi);
    out.line("*SOLID SECTION,ELSET=PLATE,MATERIAL=METAL");
    if (!any_held) return;
    out.line("*MATERIAL,NAME=WASHER\n*ELASTIC\n{:.10e},.3", plate.modulus_psi);
    out.line("*SOLID SECTION,ELSET=HELD,MATERIAL=WASHER");
}

/// One node follows the mean lift, another is moved and pulls it by a spring.
std::string text_of(const PlasticPlate& plate, double moved_in, int& follower) {
    Mesh mesh(plate);
    Writer elements;
    int number = 1;
    write_elements(elements, mesh, false, number);
    const int plastic = number;
    write_elements(elements, mesh, true, number);
    const std::map<int, double> weights = mesh.mean_lift();
    follower = static_cast<int>(mesh.numbers().size()) + 1;
    const int mover = follower + 1;

    Writer out;
    write_nodes(out, mesh, plate.thickness_in);
    out.line("{},0.,0.,0.\n{},0.,0.,1.", follower, mover);
    const std::string listed = elements.take();
    out.line("{}", number > plastic ? listed : listed.substr(0, listed.find("*ELEMENT,TYPE=C3D15,ELSET=HELD")));
    write_metal(out, plate, number > plastic);
    out.line("*ELEMENT,TYPE=SPRING2,ELSET=PULL\n{},{},{}\n*SPRING,ELSET=PULL\n3,3\n{:.6e}", number, follower, mover,
             spring_lb_per_in);
    out.line("*NSET,NSET=FIXED");
    for (const int node : mesh.clamped()) out.line("{}", node);
    out.line("*BOUNDARY\nFIXED,1,3\n{},1,2\n{},1,2", follower, mover);
    out.line("*EQUATION\n{}\n{},3,1.", weights.size() + 1, follower);
    for (const auto& [node, weight] : weights) out.line("{},3,{:.10e}", node, -weight);
    out.line("*NSET,NSET=READ\n{}", follower);
    out.line("*STEP,INC=200\n*STATIC\n.1,1.,1.e-4,.2\n*BOUNDARY\n{},3,3,{:.10e}", mover, moved_in);
    out.line("*NODE PRINT,NSET=READ,FREQUENCY=200\nU\n*END STEP");
    return out.take();
}

}  // namespace

Collapse collapse_of(const PlasticPlate& plate, double moved_in) {
    int follower = 0;
    const std::string deck = text_of(plate, moved_in, follower);
    const CcxRun run = run_ccx(deck);
    const auto force = [&](double moved, double followed) {
        return spring_lb_per_in * (moved - followed) / static_cast<double>(plate.pulled.size());
    };
    const double end = run.displacements.at(static_cast<std::size_t>(follower))[2];
    return {force(moved_in, end), run.seconds};
}

}  // namespace toehold::test
