// Bases of every shape the model allows, drawn at random: each ends in a review or in a clear refusal, never in a
// fault.
#include "catalog/resolve.h"
#include "export/json/review_json.h"
#include "export/text/review_text.h"
#include "model/validate.h"
#include "review/review.h"
#include "support/shipped.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <random>
#include <sstream>

namespace {

using namespace toehold;

class Draw {
  public:
    explicit Draw(unsigned seed) : engine_(seed) {}
    double between(double low, double high) { return std::uniform_real_distribution<double>(low, high)(engine_); }
    int one_of(int count) { return std::uniform_int_distribution<int>(0, count - 1)(engine_); }

  private:
    std::mt19937 engine_;
};

model::Outline outline(Draw& draw, double width, double depth) {
    switch (draw.one_of(4)) {
        case 0:
            return model::RectangleOutline{width, depth, draw.between(0.0, 1.0), {}};
        case 1:
            return model::CircleOutline{width, {}};
        case 2:
            return model::PolygonOutline{{{-width / 2, -depth / 2},
                                          {width / 2, -depth / 2},
                                          {width / 2, depth / 6},
                                          {width / 4, depth / 6},
                                          {width / 4, depth / 2},
                                          {-width / 2, depth / 2}}};
        default:
            return model::RectangleOutline{width, depth, 0.0, {draw.between(-0.8, 0.8), 0.0}};
    }
}

model::Post post(Draw& draw, double width) {
    const double size = draw.between(1.0, 0.6 * width);
    switch (draw.one_of(3)) {
        case 0:
            return model::RectangularTube{size, 0.8 * size, 0.125, "steel-a500-b"};
        case 1:
            return model::RoundTube{size, 0.125, "steel-a500-b"};
        default: {
            model::WoodPost wood{3.5, 3.5, "southern-pine", "no-2", false, {}};
            wood.shoe = {model::ShoeAttachment::welded, 4.0, 4.0, 0.1875, 6.0, "steel-a36", {}, ""};
            return wood;
        }
    }
}

model::AnchorGroup anchors(Draw& draw) {
    model::AnchorGroup group;
    if (draw.one_of(2) == 0) {
        group.fastener = model::LagScrew{"lag-3/8", draw.between(2.0, 9.0), {}};
    } else {
        group.fastener = model::ThroughBolt{"bolt-3/8", "a307", model::Washer{"washer-wide-3/8"}};
    }
    group.washer = model::Washer{"washer-wide-3/8"};
    if (draw.one_of(5) == 0) group.preload_lb = draw.between(10.0, 2000.0);
    return group;
}

model::Block block(Draw& draw, int place) {
    model::Block made;
    made.id = "B" + std::to_string(place);
    made.from_in = -7.25;
    made.to_in = 7.25;
    made.across_in = -3.6 + 3.6 * place;
    made.width_in = draw.one_of(2) == 0 ? 1.5 : 3.5;
    made.depth_in = draw.one_of(2) == 0 ? 1.5 : 7.25;
    made.species = "southern-pine";
    made.grade = "no-2";
    made.from_end = {"J1", model::ReportedConnector{"angle", "test", 900.0, 900.0, 300.0, 3.0}};
    made.to_end = {"J2", model::EndGrainFasteners{model::EndGrainFasteners::Kind::nail, 0.162, 3.5, 3, 1.0}};
    return made;
}

model::BaseDetail random_base(unsigned seed) {
    Draw draw(seed);
    model::BaseDetail detail;
    detail.name = "random base";
    detail.guard.height_in = draw.between(30.0, 60.0);
    const double width = draw.between(4.5, 11.0), depth = draw.between(4.5, 11.0);
    on_deck(detail).plate = {"P", "", "steel-a36", draw.between(0.1, 0.8), outline(draw, width, depth), {}};
    const int count = 1 + draw.one_of(6);
    for (int hole = 0; hole < count; ++hole) {
        const model::Position at{draw.between(-0.45, 0.45) * width, draw.between(-0.45, 0.45) * depth};
        on_deck(detail).plate.holes.push_back(
            {std::string(1, static_cast<char>('A' + hole)), at, model::RoundHole{0.4375}});
    }
    detail.post = post(draw, width);
    on_deck(detail).weld = model::Weld{0.1875, "e70"};
    on_deck(detail).anchors = {anchors(draw)};
    if (draw.one_of(3) != 0) on_deck(detail).layers.decking = model::Decking{"wood-southern-pine", 1.0, ""};
    detail.framing.joists =
        model::Joists{model::PlanAxis::y, 1.5, 9.25, "southern-pine", "no-2", {{"J1", -8.0}, {"J2", 8.0}}};
    const int blocks = draw.one_of(4);
    for (int place = 0; place < blocks; ++place) detail.framing.blocks.push_back(block(draw, place));
    if (draw.one_of(3) == 0) {
        detail.loads.stated = true;
        detail.loads.user = {{"weight", draw.between(0.0, 300.0), draw.between(-1500.0, 1500.0), {}, "test"}};
    }
    if (draw.one_of(3) == 0) detail.basis.method = model::Method::lrfd;
    return detail;
}

void check_output(const review::Review& made) {
    CHECK(exporting::review_json(made).size() > 100);
    std::istringstream text(exporting::review_text(made, units::System::us));
    for (std::string line; std::getline(text, line);) CHECK(line.size() <= 100);
}

}  // namespace

TEST_CASE("every base drawn at random ends in a review", "[property]") {
    int reviewed = 0;
    for (unsigned seed = 1; reviewed < 20; ++seed) {
        const model::BaseDetail detail = random_base(seed);
        if (!model::validate(detail).empty()) continue;
        INFO("seed " << seed);
        const catalog::Resolution resolution = catalog::resolve(detail, test::shipped_catalog());
        REQUIRE(resolution.resolved);
        const review::Review made = review::review(*resolution.resolved, "");
        CHECK((made.demand.has_value() || !made.no_demand.empty()));
        check_output(made);
        ++reviewed;
    }
}
