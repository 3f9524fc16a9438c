// Sweep, tornado and map on a light detail, against proportion by hand and against the engine asked at one point.
#include "study/study.h"

#include "study/light_detail.h"
#include "support/compare.h"
#include "support/contains.h"

#include <algorithm>
#include <atomic>
#include <cmath>

using namespace toehold;
using study::Judged;

namespace {

const catalog::Resolved& light() {
    static const catalog::Resolved resolved = test::light_resolved();
    return resolved;
}

study::Subject subject() { return {light(), test::shipped_catalog()}; }

const std::vector<study::Field>& fields() {
    static const std::vector<study::Field> all = study::fields(subject());
    return all;
}

study::Asked asked(const std::string& text) { return *study::read_values(fields(), text).asked; }

double ratio_of(const Judged& judged, const std::string& check) {
    for (const study::CheckRatio& one : judged.checks) {
        if (one.check == check) return one.ratio;
    }
    throw std::runtime_error("no check " + check);
}

}  // namespace

TEST_CASE("Withdrawal grows in proportion to the push's height and to the push", "[closed-form]") {
    // Under a push alone every force is in proportion to its moment, 200 lb x h; the capacity of the thread stays.
    const study::Asked heights = asked("height=30,45,60");
    const study::Sweep sweep = study::sweep(subject(), heights.field, heights.values);
    REQUIRE(sweep.points.size() == 3);
    CHECK_FALSE(sweep.stopped);
    const double at_30 = ratio_of(sweep.points[0].judged, "anchor-withdrawal");
    CHECK(at_30 > 0.0);
    CHECK_CLOSE(ratio_of(sweep.points[1].judged, "anchor-withdrawal"), 1.5 * at_30, 1e-6, 0.0);
    CHECK_CLOSE(ratio_of(sweep.points[2].judged, "anchor-withdrawal"), 2.0 * at_30, 1e-6, 0.0);
    const study::Asked pushes = asked("push=200,300");
    const study::Sweep by_push = study::sweep(subject(), pushes.field, pushes.values);
    CHECK_CLOSE(ratio_of(by_push.points[1].judged, "anchor-withdrawal"),
                1.5 * ratio_of(by_push.points[0].judged, "anchor-withdrawal"), 1e-6, 0.0);
}

TEST_CASE("The lines of a sweep are the worst of each check, the largest first", "[property]") {
    const study::Asked heights = asked("height=36,42");
    const study::Sweep sweep = study::sweep(subject(), heights.field, heights.values);
    const std::vector<study::Line> lines = study::lines(sweep);
    REQUIRE(lines.size() > 5);
    for (std::size_t i = 1; i < lines.size(); ++i) CHECK(lines[i - 1].largest >= lines[i].largest);
    const auto withdrawal = std::find_if(lines.begin(), lines.end(),
                                         [](const study::Line& line) { return line.check == "anchor-withdrawal"; });
    REQUIRE(withdrawal != lines.end());
    for (std::size_t i = 0; i < 2; ++i)
        CHECK(withdrawal->ratios[i] == ratio_of(sweep.points[i].judged, "anchor-withdrawal"));
}

TEST_CASE("A value that no detail has leaves a point without a number and a sentence", "[bad-input]") {
    const study::Asked edges = asked("edge-y=1/8,1");
    const study::Sweep sweep = study::sweep(subject(), edges.field, edges.values);
    CHECK_FALSE(sweep.points[0].judged.known());
    CHECK(test::contains(format::english(sweep.points[0].judged.refusal), "the hole cuts the plate's edge"));
    CHECK_FALSE(sweep.points[0].judged.holds());
    CHECK(sweep.points[1].judged.known());
}

TEST_CASE("A study that is stopped says so, and one thread finds what several do", "[property]") {
    const study::Asked heights = asked("height=36,39,42");
    study::Run one;
    one.jobs = 1;
    std::size_t told = 0;
    one.progress = [&told](std::size_t done, std::size_t all) {
        CHECK(done == ++told);
        CHECK(all == 3);
    };
    const study::Sweep alone = study::sweep(subject(), heights.field, heights.values, one);
    study::Run several;
    several.jobs = 3;
    const study::Sweep together = study::sweep(subject(), heights.field, heights.values, several);
    for (std::size_t i = 0; i < 3; ++i) CHECK(alone.points[i].judged.ratio() == together.points[i].judged.ratio());
    std::atomic<int> asked_so_far{0};
    study::Run stopped;
    stopped.jobs = 1;
    stopped.stop = [&asked_so_far] { return ++asked_so_far > 1; };
    const study::Sweep part = study::sweep(subject(), heights.field, heights.values, stopped);
    CHECK(part.stopped);
    CHECK(part.points.size() == 1);
}

TEST_CASE("A higher guard and a longer arm move the governing ratio the way statics says", "[closed-form]") {
    const study::Tornado tornado = study::tornado(subject());
    REQUIRE(tornado.now.governing);
    const double now = tornado.now.governing->ratio;
    const auto swing = [&tornado](const std::string& id) -> const study::Swing& {
        return *std::find_if(tornado.swings.begin(), tornado.swings.end(),
                             [&id](const study::Swing& one) { return one.field.id == id; });
    };
    const study::Swing& height = swing("height");
    CHECK_CLOSE(height.up.value, 1.1 * 42.0, 1e-12, 0.0);
    CHECK(height.up.judged.governing->ratio > now);
    CHECK(height.down.judged.governing->ratio < now);
    // Anchors further from the edges stand nearer to each other.
    CHECK(ratio_of(swing("edge-y").up.judged, "anchor-withdrawal") >
          ratio_of(swing("edge-y").down.judged, "anchor-withdrawal"));
    CHECK(swing("anchor-size").down.value == 0.375);
    CHECK(swing("anchor-size").up.value == 0.5);
    for (std::size_t i = 1; i < tornado.swings.size(); ++i) CHECK(tornado.swings[i - 1].size >= tornado.swings[i].size);
    // A dwelling has no load along its rail, and no tributary length to change.
    CHECK(std::none_of(tornado.swings.begin(), tornado.swings.end(),
                       [](const study::Swing& one) { return one.field.id == "tributary"; }));
}

TEST_CASE("What holds over spacing and height follows the code's loads", "[closed-form]") {
    // IBC 2021 1607.9.1 and ASCE 7-16 4.5.1: 200 lb, or 50 lb/ft over the tributary length: 400 lb over 96 in.
    model::BaseDetail detail = light().detail;
    detail.guard.occupancy = model::Occupancy::other;
    detail.basis.code = model::BuildingCode::ibc_2021;
    const catalog::Resolved resolved = test::resolved_by_shipped(detail);
    const study::Subject of{resolved, test::shipped_catalog()};
    const std::vector<study::Field> all = study::fields(of);
    const auto ask = [&all](const char* text) { return *study::read_values(all, text).asked; };
    const study::HoldingMap map = study::holding_map(of, ask("tributary=36,48,96"), ask("height=42,60"));
    const auto withdrawal = [&map](std::size_t column, std::size_t row) {
        return ratio_of(map.at(column, row).judged, "anchor-withdrawal");
    };
    CHECK_CLOSE(withdrawal(1, 0), withdrawal(0, 0), 1e-9, 0.0);
    CHECK_CLOSE(withdrawal(2, 0), 2.0 * withdrawal(1, 0), 1e-6, 0.0);
    CHECK_CLOSE(withdrawal(1, 1), 60.0 / 42.0 * withdrawal(1, 0), 1e-6, 0.0);
    CHECK(map.not_steady.empty());
}

TEST_CASE("A border is found to a quarter of an inch, and holds on its one side", "[property]") {
    const study::HoldingMap map = study::holding_map(subject(), asked("anchor-length=7,9"), asked("height=36,60"));
    CHECK(map.not_steady.empty());
    REQUIRE(map.borders.size() >= 2);
    for (const study::MapBorder& border : map.borders) {
        CHECK(border.steady);
        CHECK(std::abs(border.holds - border.fails) <= study::border_within_in * (1.0 + 1e-9));
        CHECK_FALSE(border.limit.id.empty());
        // Asked again, apart from the map.
        const study::Made holding = study::detail_of(subject(), border.detail);
        REQUIRE(holding.detail);
        CHECK(study::judge(test::resolved_by_shipped(*holding.detail)).holds());
    }
}
