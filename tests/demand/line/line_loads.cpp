// Line loads and the rail itself on posts that hardly give, against a continuous beam's published coefficients; and
// movement in closed form.
#include "demand/line/lines.h"
#include "support/compare.h"

using namespace toehold;
using test::line_demand_of;
using test::straight_line;

namespace {

/// Posts a thousand times as stiff as the rail between them, 72 in apart.
demand::LineInput on_stiff_posts(std::size_t posts) { return straight_line(posts, 72.0, 1e6, 1e12); }

double spans(const demand::LineDemand& demand, std::size_t post) {
    return demand.posts.at(post).line_length_in.value / 72.0;
}

}  // namespace

// Beams over equal spans, uniform load on the worst spans: reactions at supports over w L (the continuous beam tables
// of the AISC Manual, from memory, and the theorem of three moments by hand: two spans 5/4 and 7/16; three spans 6/5
// inside and 9/20 outside).
TEST_CASE("a line load's length at a post is the continuous beam's reaction", "[closed-form]") {
    const demand::LineDemand two = line_demand_of(on_stiff_posts(3));
    CHECK_CLOSE(spans(two, 1), 5.0 / 4.0, 1e-3, 0.0);
    CHECK_CLOSE(spans(two, 0), 7.0 / 16.0, 1e-3, 0.0);
    const demand::LineDemand three = line_demand_of(on_stiff_posts(4));
    CHECK_CLOSE(spans(three, 1), 6.0 / 5.0, 1e-3, 0.0);
    CHECK_CLOSE(spans(three, 0), 9.0 / 20.0, 1e-3, 0.0);
    const demand::LineDemand many = line_demand_of(on_stiff_posts(8));
    for (std::size_t post = 1; post < 7; ++post) {
        CHECK(spans(many, post) > 1.1);
        CHECK(spans(many, post) < 1.25);
    }
}

TEST_CASE("loads from all round are no worse on a straight line than across and along", "[property]") {
    demand::LineInput line = on_stiff_posts(3);
    line.directions = model::Directions::all_round;
    CHECK_CLOSE(spans(line_demand_of(line), 1), 5.0 / 4.0, 1e-3, 0.0);
}

// A beam over two equal spans: 0.2074 P L in a span under a push at 0.432 L, 0.0962 P L over the support for one at
// 0.577 L; 49/512 w L^2 with one span loaded, w L^2/8 over the support with both (AISC Manual, from memory; by hand
// with the theorem of three moments: x (1 - x) (4 - x (1 + x))/4 and x (1 - x^2)/4).
TEST_CASE("the rail bends as a continuous beam on posts that hardly give, upright on any posts", "[closed-form]") {
    const demand::LineSpan span = line_demand_of(on_stiff_posts(3)).spans.at(0);
    CHECK_CLOSE(span.push.moment_lb_in.value, 0.2074 * 72.0, 2e-3, 0.0);
    CHECK_CLOSE(span.push.moment_lb_in.along_in, 0.432 * 72.0, 0.02, 0.0);
    CHECK_CLOSE(span.line.moment_lb_in.value, 72.0 * 72.0 / 8.0, 1e-3, 0.0);
    CHECK_CLOSE(span.push.shear_lb.value, 1.0, 1e-6, 0.0);
    CHECK_CLOSE(span.line.shear_lb.value, 5.0 / 8.0 * 72.0, 1e-3, 0.0);
    const demand::LineSpan soft = line_demand_of(straight_line(3, 72.0, 1e6, 1e4)).spans.at(0);
    CHECK_CLOSE(soft.upright_push.moment_lb_in.value, 0.2074 * 72.0, 2e-3, 0.0);
    CHECK_CLOSE(soft.upright_line.moment_lb_in.value, 72.0 * 72.0 / 8.0, 1e-3, 0.0);
    CHECK(soft.push.moment_lb_in.value > 1.5 * span.push.moment_lb_in.value);
}

TEST_CASE("between joints a rail is a simple beam", "[closed-form]") {
    demand::LineInput line = straight_line(3, 72.0, 1e6, 1e5);
    line.run = model::RailRun::between;
    for (const demand::LineSpan& span : line_demand_of(line).spans) {
        for (const demand::RailActions* push : {&span.push, &span.upright_push})
            CHECK_CLOSE(push->moment_lb_in.value, 72.0 / 4.0, 1e-5, 0.0);
        for (const demand::RailActions* load : {&span.line, &span.upright_line}) {
            CHECK_CLOSE(load->moment_lb_in.value, 72.0 * 72.0 / 8.0, 1e-5, 0.0);
            CHECK_CLOSE(load->shear_lb.value, 36.0, 1e-5, 0.0);
        }
    }
}

TEST_CASE("a push along a straight rail goes to its posts alike, and what it passes is in the rail", "[closed-form]") {
    demand::LineInput line = straight_line(4, 72.0, 1e6, 1e6);
    line.run = model::RailRun::broken;
    line.directions = model::Directions::all_round;
    const demand::LineDemand demand = line_demand_of(line);
    // Three of four posts take their fourth of a push at the end post by way of the first span.
    CHECK_CLOSE(demand.spans[0].push.axial_lb.value, 0.75, 1e-3, 0.0);
    CHECK_CLOSE(demand.posts[0].connection.push_along.value, 0.25, 1e-3, 0.0);
    // A line load along all of the rail: a fourth of 216 in each; across, 72 in at an inner post.
    CHECK_CLOSE(demand.posts[0].line_length_in.value, 216.0 / 4.0, 1e-3, 0.0);
    CHECK_CLOSE(demand.posts[1].line_length_in.value, 72.0, 1e-3, 0.0);
}

TEST_CASE("movement is the sum of rail, connection, post and base", "[closed-form]") {
    demand::LineInput line = straight_line(2, 72.0, 1e6, 2e6);
    line.run = model::RailRun::broken;
    line.connection_lb_per_in = 500.0;
    for (demand::LinePost& post : line.posts) post.base.soft = {2e5, 1e5, 3e5, 3e5};
    const demand::LineDemand demand = line_demand_of(line);
    const double bends = std::pow(42.0, 3) / (3.0 * 2e6), turns = 42.0 * 42.0 / 1e5;
    const demand::LineMovement& post = demand.posts[0].movement;
    CHECK_CLOSE(post.post_in, bends, 1e-6, 0.0);
    CHECK_CLOSE(post.base_in, turns, 1e-6, 0.0);
    CHECK_CLOSE(post.connection_in, 1.0 / 500.0, 1e-6, 0.0);
    CHECK(post.rail_in == 0.0);
    // In the middle each post has half of the push, and the rail follows the mean of both.
    const demand::LineMovement& middle = demand.spans[0].movement;
    CHECK_CLOSE(middle.post_in, bends / 2.0, 1e-6, 0.0);
    CHECK_CLOSE(middle.base_in, turns / 2.0, 1e-6, 0.0);
    CHECK_CLOSE(middle.rail_in, std::pow(72.0, 3) / (48.0 * 1e6), 1e-6, 0.0);
    CHECK_CLOSE(middle.total_in(), middle.rail_in + (bends + turns + 1.0 / 500.0) / 2.0, 1e-6, 0.0);
}

// Wind is square to each stretch whatever directions the other loads have: on a straight line the reaction across is
// the continuous beam's 5/4, and nothing passes along the rail.
TEST_CASE("wind loads a straight line across alone", "[closed-form]") {
    demand::LineInput line = on_stiff_posts(3);
    line.directions = model::Directions::all_round;
    const demand::LineDemand demand = line_demand_of(line);
    CHECK_CLOSE(demand.posts[1].connection.wind_across.value / 72.0, 5.0 / 4.0, 1e-3, 0.0);
    CHECK(demand.posts[1].connection.wind_along.value < 1e-6);
    CHECK(demand.posts[1].connection.line_along.value > 1.0);
    CHECK_CLOSE(demand.spans[0].wind.moment_lb_in.value, 72.0 * 72.0 / 8.0, 1e-3, 0.0);
    CHECK_CLOSE(demand.spans[0].wind.shear_lb.value, 5.0 / 8.0 * 72.0, 1e-3, 0.0);
}
