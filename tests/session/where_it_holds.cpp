#include "session/where_it_holds.h"

#include "solving/solve_service.h"
#include "support/parts.h"
#include "support/shipped.h"

#include <catch2/catch.hpp>

using namespace toehold;
namespace parts = toehold::test::parts;
using editing::Dragged;
using session::Session;
using session::WhereItHolds;

namespace {

const char* const sound = "heron-landing-lags-in-deep-blocks";

struct Workplace {
    Session session{test::shipped_catalog(), test::shipped_detail(sound).detail, [](const solving::Request&) {}};
    std::vector<Dragged> asked;
    int stopped = 0;
    WhereItHolds holds{session,
                       {[this](const model::BaseDetail&, const Dragged& dragged) {
                            asked.push_back(dragged);
                            return asked.size();
                        },
                        [this] { ++stopped; }},
                       [] {}};

    [[nodiscard]] editing::Handle handle(editing::HandleKind kind, editing::Sheet sheet = editing::Sheet::plan) const {
        const editing::SheetPlace place{sheet, drawing::section_plane(session.detail(), {})};
        for (const editing::Handle& one : editing::handles(session.detail(), place)) {
            if (one.id.kind == kind) return one;
        }
        throw std::runtime_error("no such handle");
    }
    void move_hole() {
        model::BaseDetail moved = session.detail();
        on_deck(moved).plate.holes.front().center.x_in += 0.125;
        session.change(format::verbatim("Move hole A"), std::move(moved), "drag", true);
    }
    void answer(std::uint64_t number, bool looked = true) {
        auto news = std::make_shared<solving::RegionNews>();
        news->number = number;
        news->last = true;
        news->looked = looked;
        holds.receive(std::move(news));
    }
};

}  // namespace

TEST_CASE("what a hand takes is looked over once for the whole drag", "[unit]") {
    Workplace place;
    place.holds.take(place.handle(editing::HandleKind::hole));
    REQUIRE(place.asked.size() == 1);
    CHECK(place.asked.front() == Dragged{Dragged::Kind::anchor, "A"});
    place.move_hole();
    place.move_hole();
    CHECK(place.asked.size() == 1);
    CHECK(place.holds.waits());
    place.answer(1);
    CHECK(place.holds.known() != nullptr);
    place.holds.let_go();
    CHECK(place.holds.known() == nullptr);
    CHECK(place.stopped == 1);
}

TEST_CASE("sides, blocks and screw tips are looked over too, corners are not", "[unit]") {
    Workplace place;
    place.holds.take(place.handle(editing::HandleKind::side));
    place.holds.take(place.handle(editing::HandleKind::block));
    place.holds.take(place.handle(editing::HandleKind::anchor_tip, editing::Sheet::section));
    REQUIRE(place.asked.size() == 3);
    CHECK(place.asked[0].kind == Dragged::Kind::edge);
    CHECK(place.asked[1].kind == Dragged::Kind::block);
    CHECK(place.asked[2].kind == Dragged::Kind::length);
    place.holds.take(place.handle(editing::HandleKind::corner));
    CHECK(place.asked.size() == 3);
    CHECK_FALSE(place.holds.waits());
}

TEST_CASE("where nothing can be looked for, nothing is waited for and nothing is known", "[unit]") {
    Workplace place;
    place.holds.take(place.handle(editing::HandleKind::hole));
    CHECK(place.holds.waits());
    place.answer(1, false);
    CHECK_FALSE(place.holds.waits());
    CHECK(place.holds.known() == nullptr);
    place.holds.let_go();
    place.holds.take(place.handle(editing::HandleKind::hole));
    CHECK(place.holds.waits());
}

TEST_CASE("words say what is shaded, what is not confirmed yet, and what stops it everywhere", "[unit]") {
    Workplace place;
    const auto told = [&](bool last, const study::Region& region) {
        auto news = std::make_shared<solving::RegionNews>();
        news->number = 1;
        news->last = last;
        news->region = region;
        place.holds.receive(std::move(news));
        return format::english(place.holds.words());
    };
    CHECK(place.holds.words().empty());
    place.holds.take(place.handle(editing::HandleKind::hole));
    CHECK(format::english(place.holds.words()) == "Looking for where every check passes.");
    study::Region region;
    region.likely.push_back({{0, 0}, {1, 0}, {1, 1}});
    CHECK(told(false, region).find("hatched") != std::string::npos);
    std::swap(region.holds, region.likely);
    CHECK(told(true, region) == "Every check passes in the shaded region.");
    region.holds.front() = {{0, 0}, {1, 0}, {1, 0}, {0, 0}};
    CHECK(told(true, region) == "Every check passes only along the line marked.");
    region.holds.clear();
    region.stops_most = study::Limit{"anchor-spacing", format::phrase("Anchor spacing"), {}};
    CHECK(told(true, region) == "Nowhere in its reach does every check pass: Anchor spacing.");
}

TEST_CASE("where the display wants it, the selected part is looked over, and again after an edit", "[unit]") {
    Workplace place;
    place.session.select({parts::anchor("B")});
    CHECK(place.asked.empty());
    session::Display display = place.session.display();
    display.holds = true;
    place.session.show(display);
    REQUIRE(place.asked.size() == 1);
    CHECK(place.asked.front() == Dragged{Dragged::Kind::anchor, "B"});
    place.move_hole();
    CHECK(place.asked.size() == 2);
    place.answer(1);
    CHECK(place.holds.known() == nullptr);  // of the detail before the edit
    place.answer(2);
    CHECK(place.holds.known() != nullptr);
    place.session.select({});
    CHECK(place.holds.known() == nullptr);
}
