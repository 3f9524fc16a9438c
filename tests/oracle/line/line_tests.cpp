// Guard lines as demand/line solves them, against Z88 (line_in_z88.h): posts with their bases and connections, a
// corner, a return to a wall, a rail with a splice, broken at a post or let in between all, and a stair.
#include "demand/line/influence.h"
#include "demand/line/quantities.h"
#include "oracle/line/line_projects.h"
#include "support/compare.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace {

using namespace toehold;
using demand::LineCorner;
using demand::LineDemand;
using demand::PlanVector;
using test::LineProject;
using test::LineSolution;
using test::RailPlace;
using test::RailPush;
using test::unit_vector;

constexpr double quarter = 0.5 * std::numbers::pi, a_thousandth = 1e-3;

/// demand/line's frame at a corner, asked at one station of the rail.
class OurLine {
  public:
    OurLine(const demand::LineInput& line, const LineCorner& corner)
        : layout_(demand::lay_out(line, false)),
          rail_(demand::loaded_rail(layout_, line.directions)),
          frame_(demand::solve_frame(line, layout_, corner)) {
        REQUIRE(frame_.stable);
        CHECK(frame_.residual < 1e-8);
    }

    [[nodiscard]] RailPush push(std::size_t station, double direction_rad) const {
        const demand::Station& of = rail_.stations.at(station);
        const demand::RailPiece& piece = layout_.pieces[of.piece];
        return {{piece.span, piece.from_in + of.at * piece.plan_in}, direction_rad};
    }

    [[nodiscard]] PlanVector post(std::size_t post, std::size_t station, const PlanVector& push) const {
        return {at(post_force(frame_, layout_, post, PlanVector::UnitX()), station, push),
                at(post_force(frame_, layout_, post, PlanVector::UnitY()), station, push)};
    }

    [[nodiscard]] test::RailSection section(std::size_t piece, double part, std::size_t station,
                                            const PlanVector& push) const {
        const demand::PieceEnd end = part < 0.5 ? demand::PieceEnd::from : demand::PieceEnd::to;
        return {
            std::abs(at(axial_force(frame_, layout_, piece, end), station, push)),
            std::abs(at(shear_force(frame_, layout_, piece, end), station, push)),
            std::abs(at(moment(frame_, layout_, piece, part), station, push)) * layout_.pieces[piece].true_over_plan};
    }

    [[nodiscard]] const std::vector<demand::RailPiece>& pieces() const { return layout_.pieces; }

  private:
    [[nodiscard]] double at(const demand::Response& quantity, std::size_t station, const PlanVector& push) const {
        return influence_line(frame_, rail_, quantity).at(station).dot(push);
    }

    demand::LineLayout layout_;
    demand::LoadedRail rail_;
    demand::LineFrame frame_;
};

/// Sections of a piece, its ends first.
constexpr std::array<double, 5> parts = {0.0, 1.0, 0.25, 0.5, 0.75};

void check_push(const LineProject& project, const LineCorner& corner, std::size_t station, double direction_rad) {
    const OurLine ours(project.line, corner);
    const RailPush push = ours.push(station, direction_rad);
    const PlanVector way = unit_vector(direction_rad);
    const LineSolution theirs = solve_line_with_z88(project, corner, push);
    INFO("span " << push.at.span << " at " << push.at.along_in << " toward " << direction_rad);
    double largest = 0.0;
    for (const Eigen::Vector2d& force : theirs.posts) largest = std::max(largest, force.norm());
    for (std::size_t post = 0; post < theirs.posts.size(); ++post) {
        INFO("post " << post << ": " << theirs.posts[post].transpose());
        CHECK_CLOSE((ours.post(post, station, way) - theirs.posts[post]).norm(), 0.0, 0.0, a_thousandth * largest);
    }
    std::vector<std::pair<test::RailSection, test::RailSection>> sections;
    double moment = 1.0;  // at least: a push over a post may bend nothing
    for (std::size_t piece = 0; piece < ours.pieces().size(); ++piece) {
        const demand::RailPiece& of = ours.pieces()[piece];
        for (const double part : parts) {
            const RailPlace place{of.span, of.from_in + part * of.plan_in};
            sections.emplace_back(ours.section(piece, part, station, way), theirs.section(place, part > 0.5));
            if (part != 0.0 && part != 1.0) sections.back().first.axial_lb = sections.back().first.shear_lb = NAN;
            moment = std::max(moment, sections.back().second.moment_lb_in);
        }
    }
    for (const auto& [we, they] : sections) {
        CHECK_CLOSE(we.moment_lb_in, they.moment_lb_in, 0.0, a_thousandth * moment);
        if (std::isnan(we.axial_lb)) continue;  // those of the piece's ends alone
        CHECK_CLOSE(we.axial_lb, they.axial_lb, 0.0, a_thousandth);
        CHECK_CLOSE(we.shear_lb, they.shear_lb, 0.0, a_thousandth);
    }
}

/// Level lengths of the line's spans.
std::vector<double> plans_of(const LineProject& project) {
    const demand::LineLayout layout = demand::lay_out(project.line, false);
    std::vector<double> plans;
    for (const demand::LaidSpan& span : layout.spans) plans.push_back(span.plan_in);
    return plans;
}

LineSolution at_largest(const LineProject& project, const demand::LineLargest& found) {
    return solve_line_with_z88(project, found.corner, {{found.span, found.along_in}, found.direction_rad});
}

/// The largest moment in a span is at an end or under the push.
double largest_moment(const LineSolution& theirs, const demand::LineLargest& found, std::size_t span, double plan_in) {
    double largest = 0.0;
    for (const double at : {0.0, plan_in, found.span == span ? found.along_in : 0.0})
        largest = std::max(largest, theirs.section({span, at}, true).moment_lb_in);
    return largest;
}

/// Every number where and under what it is said to be found. A moment is found between sections, a push between
/// stations: both a little off the place.
void check_posts(const LineProject& project, const LineDemand& demand) {
    const std::vector<double> plans = plans_of(project);
    for (std::size_t post = 0; post < demand.posts.size(); ++post) {
        INFO("post " << post);
        const demand::PostShares& shares = demand.posts[post];
        const PlanVector force = at_largest(project, shares.share).posts[post];
        CHECK_CLOSE(shares.share.value, force.norm(), a_thousandth, 0.0);
        CHECK_CLOSE((unit_vector(shares.force_direction_rad) - force.normalized()).norm(), 0.0, 0.0, 0.01);
        const RailPlace over = post < plans.size() ? RailPlace{post, 0.0} : RailPlace{post - 1, plans.back()};
        const LineSolution pushed = solve_line_with_z88(project, {}, {over, shares.movement.direction_rad});
        CHECK_CLOSE(shares.movement.total_in(), pushed.post_motions[post].norm(), a_thousandth, 0.0);
    }
}

void check_wall(const LineProject& project, const LineDemand& demand) {
    if (!demand.last_wall) return;
    const RailPlace at_wall{demand.spans.size() - 1, plans_of(project).back()};
    const auto theirs = [&](const demand::LineLargest& found) {
        return at_largest(project, found).section(at_wall, true);
    };
    CHECK_CLOSE(demand.last_wall->push_across.value, theirs(demand.last_wall->push_across).shear_lb, a_thousandth, 0.0);
    CHECK_CLOSE(demand.last_wall->push_along.value, theirs(demand.last_wall->push_along).axial_lb, a_thousandth, 0.0);
}

void check_spans(const LineProject& project, const LineDemand& demand) {
    const std::vector<double> plans = plans_of(project);
    for (std::size_t span = 0; span < demand.spans.size(); ++span) {
        INFO("span " << span);
        const demand::RailActions& most = demand.spans[span].push;
        const double plan = plans[span];
        CHECK_CLOSE(most.moment_lb_in.value,
                    largest_moment(at_largest(project, most.moment_lb_in), most.moment_lb_in, span, plan),
                    2.0 * a_thousandth, 0.0);
        const auto either_side = [&](const demand::LineLargest& found, double test::RailSection::*part) {
            const LineSolution theirs = at_largest(project, found);
            double largest = 0.0;
            for (const double at : {0.0, plan, found.span == span ? found.along_in : 0.0}) {
                for (const bool with_push : {false, true})
                    largest = std::max(largest, theirs.section({span, at}, with_push).*part);
            }
            return largest;
        };
        CHECK_CLOSE(most.shear_lb.value, either_side(most.shear_lb, &test::RailSection::shear_lb), a_thousandth, 0.0);
        CHECK_CLOSE(most.axial_lb.value, either_side(most.axial_lb, &test::RailSection::axial_lb), a_thousandth, 1e-4);
    }
}

/// Nothing along the rail is worse than what is called the largest.
void check_nothing_worse(const LineProject& project, const LineDemand& demand) {
    const std::vector<double> plans = plans_of(project);
    for (std::size_t span = 0; span < demand.spans.size(); ++span) {
        for (const double part : {0.3, 0.8}) {
            const OurLine any(project.line, {});
            const demand::RailPiece* piece = &any.pieces().front();
            for (const demand::RailPiece& one : any.pieces()) {
                if (one.span == span) piece = &one;
            }
            const RailPush push{{span, part * plans[span]}, std::atan2(piece->cosine, -piece->sine)};
            const LineSolution theirs = solve_line_with_z88(project, {}, push);
            for (std::size_t post = 0; post < demand.posts.size(); ++post)
                CHECK(theirs.posts[post].norm() < demand.posts[post].share.value * (1.0 + a_thousandth));
            CHECK(theirs.section(push.at, true).moment_lb_in <
                  demand.spans[span].push.moment_lb_in.value * (1.0 + a_thousandth));
        }
    }
}

LineDemand largest_of_line(const LineProject& project) {
    const demand::LineOutcome outcome = demand::find_line_demand(project.line);
    REQUIRE(outcome.demand);
    return *outcome.demand;
}

}  // namespace

TEST_CASE("pushes on a line with a corner, a return, a splice and a break give what Z88 gives", "[oracle]") {
    const LineProject project = test::spliced();
    const LineCorner soft, mixed{2, true, false, true};
    check_push(project, soft, 5, quarter);
    check_push(project, soft, 16, 0.7);
    check_push(project, mixed, 21, -quarter);
    check_push(project, soft, 40, 0.0);
    check_push(project, mixed, 59, 2.0);
    check_push(project, soft, 76, 0.4);
    check_push(project, soft, 98, -1.1);
}

TEST_CASE("pushes on a rail let in between its posts give what Z88 gives", "[oracle]") {
    const LineProject project = test::let_in();
    for (const std::size_t station : {3U, 25U, 34U, 60U, 80U, 95U}) check_push(project, {}, station, 0.6);
}

TEST_CASE("pushes on a line that goes down a stair give what Z88 gives", "[oracle]") {
    const LineProject project = test::stair();
    for (const std::size_t station : {8U, 23U, 42U}) check_push(project, {}, station, quarter);
    check_push(project, {2, true, false, true}, 29, -quarter);
    check_push(project, {}, 60, 0.0);
    check_push(project, {}, 84, 0.0);
}

TEST_CASE("what is called the largest along a line, Z88 finds where it is said to be", "[oracle]") {
    for (const LineProject& project : {test::spliced(), test::let_in(), test::stair()}) {
        const LineDemand demand = largest_of_line(project);
        check_posts(project, demand);
        check_spans(project, demand);
        check_wall(project, demand);
        check_nothing_worse(project, demand);
    }
}
