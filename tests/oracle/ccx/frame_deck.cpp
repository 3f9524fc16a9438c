#include "oracle/ccx/frame_deck.h"

#include "oracle/ccx/writer.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>
#include <optional>
#include <set>
#include <utility>

namespace toehold::test {
namespace {

using mechanics::GridMember;
using mechanics::Point;

// The material is a carrier only: the section's constants bring each member's stiffness.
constexpr double modulus = 1e6, shear_modulus = 0.5 * modulus;
// P (see the header) where a member is said not to shear.
constexpr double no_shear = 1e-7;

class FrameWriter {
  public:
    FrameWriter(const Frame& frame, double element_in) : frame_(frame), element_in_(element_in) {
        out_.line("*USER ELEMENT,TYPE=U1,NODES=2,INTEGRATION POINTS=2,MAXDOF=6");
        out_.line("*MATERIAL,NAME=CARRIER\n*ELASTIC\n{:.10e},0.", modulus);
        for (const Point node : frame.nodes) numbers_.push_back(new_node(node));
    }

    /// Returns the numbers of the stations on this member, in their order.
    std::vector<std::size_t> member(int index, const std::vector<double>& stations) {
        const GridMember& member = frame_.members[static_cast<std::size_t>(index)];
        const Point a = frame_.nodes[static_cast<std::size_t>(member.from)];
        const Point b = frame_.nodes[static_cast<std::size_t>(member.to)];
        const double length = std::hypot(b.x - a.x, b.y - a.y);
        const std::vector<double> cuts = cuts_of(index, length, stations);
        std::vector<std::size_t> nodes = {number(member.from)};
        for (std::size_t i = 1; i + 1 < cuts.size(); ++i) {
            const double part = cuts[i] / length;
            nodes.push_back(new_node({a.x + (b.x - a.x) * part, a.y + (b.y - a.y) * part}));
        }
        nodes.push_back(number(member.to));
        for (std::size_t i = 0; i + 1 < nodes.size(); ++i) {
            out_.line("*ELEMENT,TYPE=U1,ELSET=M{}\n{},{},{}", index, ++elements_, nodes[i], nodes[i + 1]);
        }
        section(index, member, length / static_cast<double>(nodes.size() - 1));
        const auto node_at = [&](double at) {
            const auto found = std::lower_bound(cuts.begin(), cuts.end(), std::min(at, length));
            return nodes[static_cast<std::size_t>(found - cuts.begin())];
        };
        for (const mechanics::MemberLoad& load : frame_.member_loads) {
            if (load.member != index) continue;
            loads_.push_back({node_at(load.at_in), {load.up_lb, load.about_x_lb_in, load.about_y_lb_in}});
        }
        std::vector<std::size_t> result;
        for (const double at : stations) result.push_back(node_at(at));
        return result;
    }

    void joint(const mechanics::GridJoint& joint) {
        std::vector<Term> apart = lift(joint.second, joint.at, 1.0);
        const std::vector<Term> of_first = lift(joint.first, joint.at, -1.0);
        apart.insert(apart.end(), of_first.begin(), of_first.end());
        const std::size_t first = number(joint.first), second = number(joint.second);
        spring(apart, joint.vertical_lb_per_in);
        spring({{second, 4, 1.0}, {first, 4, -1.0}}, joint.about_x_lb_in);
        spring({{second, 5, 1.0}, {first, 5, -1.0}}, joint.about_y_lb_in);
    }

    void support(const mechanics::GridSupport& support) {
        const std::size_t node = number(support.node);
        spring({{node, 3, 1.0}}, support.vertical_lb_per_in);
        spring({{node, 4, 1.0}}, support.about_x_lb_in);
        spring({{node, 5, 1.0}}, support.about_y_lb_in);
    }

    [[nodiscard]] FrameDeck take(std::vector<std::size_t> stations) {
        for (const mechanics::GridLoad& load : frame_.loads)
            loads_.push_back({number(load.node), {load.up_lb, load.about_x_lb_in, load.about_y_lb_in}});
        out_.line("*STEP\n*STATIC\n*CLOAD");
        for (const Load& load : loads_) {
            for (std::size_t i = 0; i < 3; ++i) out_.line("{},{},{:.10e}", load.node, i + 3, load.values[i]);
        }
        out_.line("*NSET,NSET=READ");
        for (const std::size_t node : numbers_) out_.line("{}", node);
        for (const std::size_t node : stations) out_.line("{}", node);
        out_.line("*NODE PRINT,NSET=READ\nU\n*END STEP");
        return {out_.take(), numbers_, std::move(stations)};
    }

  private:
    struct Term {
        std::size_t node = 0;
        int freedom = 0;
        double factor = 0.0;
    };
    struct Load {
        std::size_t node = 0;
        std::array<double, 3> values = {};
    };

    [[nodiscard]] std::size_t number(int node) const { return numbers_[static_cast<std::size_t>(node)]; }

    /// A node that does not move in the plane.
    std::size_t new_place(Point at) {
        ++nodes_;
        out_.line("*NODE\n{0},{1:.10e},{2:.10e},0.\n*BOUNDARY\n{0},1,2", nodes_, at.x, at.y);
        return nodes_;
    }

    /// Nor turns in it.
    std::size_t new_node(Point at) {
        const std::size_t node = new_place(at);
        out_.line("{},6,6", node);
        return node;
    }

    [[nodiscard]] std::vector<double> cuts_of(int index, double length, const std::vector<double>& stations) const {
        std::set<double> marks = {0.0, length};
        for (const double at : stations) marks.insert(std::min(at, length));
        for (const mechanics::MemberLoad& load : frame_.member_loads)
            if (load.member == index) marks.insert(std::min(load.at_in, length));
        std::vector<double> cuts = {0.0};
        for (auto next = std::next(marks.begin()); next != marks.end(); ++next) {
            const double from = *std::prev(next), span = *next - from;
            const int pieces = std::max(1, static_cast<int>(std::lround(span / element_in_)));
            for (int i = 1; i < pieces; ++i) cuts.push_back(from + span * i / pieces);
            cuts.push_back(*next);
        }
        return cuts;
    }

    void section(int index, const GridMember& member, double element) {
        const double upright = member.bending_lb_in2 / modulus;
        const double shear =
            member.shear_lb > 0.0 ? member.shear_lb : 12.0 * member.bending_lb_in2 / (no_shear * element * element);
        out_.line("*BEAM SECTION,ELSET=M{},MATERIAL=CARRIER,SECTION=GENERAL", index);
        out_.line("1.,{:.10e},0.,{:.10e},{:.10e}\n0.,0.,1.", upright, member.torsion_lb_in2 / shear_modulus - upright,
                  shear / shear_modulus);
    }

    /// The lift of a place that a node carries: w + rx dy - ry dx.
    [[nodiscard]] std::vector<Term> lift(int node, std::optional<Point> place, double sense) const {
        const std::size_t own = number(node);
        if (!place) return {{own, 3, sense}};
        const Point at = frame_.nodes[static_cast<std::size_t>(node)];
        return {{own, 3, sense}, {own, 4, sense * (place->y - at.y)}, {own, 5, sense * (at.x - place->x)}};
    }

    /// Resists a sum of motions: they are those of a node of its own, which an equation ties to them. Springs on
    /// rotations themselves do nothing in version 2.20.
    void spring(const std::vector<Term>& motions, double stiffness) {
        if (stiffness == 0.0) return;
        const std::size_t own = new_place({0.0, 0.0});
        out_.line("*EQUATION\n{}\n{},3,1.", motions.size() + 1, own);
        for (const Term& term : motions) out_.line("{},{},{:.10e}", term.node, term.freedom, -term.factor);
        out_.line("*ELEMENT,TYPE=SPRING1,ELSET=S{0}\n{0},{1}\n*SPRING,ELSET=S{0}\n3\n{2:.10e}", ++elements_, own,
                  stiffness);
    }

    const Frame& frame_;
    double element_in_;
    Writer out_;
    std::size_t nodes_ = 0, elements_ = 0;
    std::vector<std::size_t> numbers_;
    std::vector<Load> loads_;
};

}  // namespace

FrameDeck frame_deck(const Frame& frame, const std::vector<Station>& stations, double element_in) {
    FrameWriter writer(frame, element_in);
    std::vector<std::size_t> numbers(stations.size());
    for (int index = 0; index < static_cast<int>(frame.members.size()); ++index) {
        std::vector<double> here;
        std::vector<std::size_t> places;
        for (std::size_t i = 0; i < stations.size(); ++i) {
            if (stations[i].member != index) continue;
            here.push_back(stations[i].at_in);
            places.push_back(i);
        }
        const std::vector<std::size_t> found = writer.member(index, here);
        for (std::size_t i = 0; i < places.size(); ++i) numbers[places[i]] = found[i];
    }
    for (const mechanics::GridJoint& joint : frame.joints) writer.joint(joint);
    for (const mechanics::GridSupport& support : frame.supports) writer.support(support);
    return writer.take(std::move(numbers));
}

}  // namespace toehold::test
