// The inputs of a detail: what each sets, what follows it, and how their values are typed. No solve.
#include "study/field.h"

#include "model/base_detail.h"
#include "model/placement.h"
#include "model/validate.h"
#include "study/judged.h"
#include "support/compare.h"
#include "support/contains.h"
#include "support/shipped.h"

#include <algorithm>

using namespace toehold;
using study::Field;

namespace {

/// Deep blocks between the joists of a demo, lag screws with washers.
struct Demo {
    catalog::Resolved resolved = test::shipped_detail("heron-landing-lags-in-deep-blocks");
    study::Subject subject{resolved, test::shipped_catalog()};
    std::vector<Field> fields = study::fields(subject);

    [[nodiscard]] const Field& field(const std::string& id) const {
        const Field* const found = study::find_field(fields, id);
        if (found == nullptr) throw std::runtime_error("no field " + id);
        return *found;
    }
    [[nodiscard]] model::BaseDetail set(const std::string& id, double value) const {
        const study::Made made = field(id).set(resolved.detail, value);
        if (!made.detail) throw std::runtime_error(format::english(made.refusal));
        return *made.detail;
    }
    [[nodiscard]] std::string refusal(const std::string& id, double value) const {
        return format::english(field(id).set(resolved.detail, value).refusal);
    }
    [[nodiscard]] std::string bad(const std::string& text) const {
        const study::ValuesRead read = study::read_values(fields, text);
        CHECK_FALSE(read.asked);
        return format::english(read.refusal);
    }
    [[nodiscard]] std::vector<double> values(const std::string& text) const {
        const study::ValuesRead read = study::read_values(fields, text);
        INFO(format::english(read.refusal));
        REQUIRE(read.asked);
        return read.asked->values;
    }
};

const model::Hole& hole(const model::BaseDetail& detail, const std::string& id) {
    const std::vector<model::Hole>& holes = on_deck(detail).plate.holes;
    return *std::find_if(holes.begin(), holes.end(), [&id](const model::Hole& one) { return one.id == id; });
}

}  // namespace

TEST_CASE("A field set to what it is changes nothing but the plate's reference", "[property]") {
    for (const std::string& name : test::demo_names()) {
        const catalog::Resolved resolved = test::shipped_detail(name);
        const study::Subject subject{resolved, test::shipped_catalog()};
        const std::vector<Field> before = study::fields(subject);
        for (const Field& field : before) {
            INFO(name << ", " << field.id);
            CHECK(field.range.least < field.range.most);
            if (!field.now) continue;
            CHECK(*field.now >= field.range.least);
            CHECK(*field.now <= field.range.most);
            const study::Made made = field.set(resolved.detail, *field.now);
            INFO(format::english(made.refusal));
            REQUIRE(made.detail);
            const catalog::Resolution resolution = catalog::resolve(*made.detail, test::shipped_catalog());
            REQUIRE(resolution.resolved);
            const std::vector<Field> after = study::fields({*resolution.resolved, test::shipped_catalog()});
            REQUIRE(after.size() == before.size());
            for (std::size_t i = 0; i < after.size(); ++i) {
                CHECK(after[i].id == before[i].id);
                REQUIRE(after[i].now.has_value() == before[i].now.has_value());
                if (after[i].now) CHECK_CLOSE(*after[i].now, *before[i].now, 1e-12, 1e-12);
            }
        }
    }
}

TEST_CASE("Every customary value of every field makes a valid detail, or says in one sentence why not", "[property]") {
    for (const std::string& name : test::demo_names()) {
        const catalog::Resolved resolved = test::shipped_detail(name);
        const study::Subject subject{resolved, test::shipped_catalog()};
        for (const Field& field : study::fields(subject)) {
            const std::vector<double> values = study::customary_values(field);
            CHECK(values.size() >= 2);
            CHECK(std::is_sorted(values.begin(), values.end()));
            for (const double value : values) {
                const study::Made made = field.set(resolved.detail, value);
                INFO(name << ", " << field.id << " " << value << ": " << format::english(made.refusal));
                CHECK(made.detail.has_value() == made.refusal.empty());
                if (made.detail) CHECK(model::validate(*made.detail).empty());
            }
        }
    }
}

TEST_CASE("A larger plate keeps its anchors' edge distance, and the edge distance moves the anchors alone",
          "[closed-form]") {
    // HL-95 is 9 1/2 in square with holes at 3 3/4 in: 1 in from its edges.
    const Demo demo;
    CHECK_CLOSE(*demo.field("edge-x").now, 1.0, 0.0, 1e-12);
    const model::BaseDetail wider = demo.set("plate-width", 10.5);
    CHECK_CLOSE(model::extent_in(on_deck(wider).plate.outline, model::PlanAxis::x), 10.5, 0.0, 1e-12);
    CHECK_CLOSE(model::extent_in(on_deck(wider).plate.outline, model::PlanAxis::y), 9.5, 0.0, 1e-12);
    CHECK(hole(wider, "A").center == model::Position{-4.25, -3.75});
    CHECK(hole(wider, "C").center == model::Position{4.25, 3.75});
    CHECK_FALSE(on_deck(wider).plate_reference);
    const model::BaseDetail inward = demo.set("edge-y", 1.5);
    CHECK(hole(inward, "A").center == model::Position{-3.75, -3.25});
    CHECK_CLOSE(model::extent_in(on_deck(inward).plate.outline, model::PlanAxis::y), 9.5, 0.0, 1e-12);
    CHECK(test::contains(demo.refusal("edge-y", 4.75), "would meet"));
    CHECK(test::contains(demo.refusal("edge-y", 0.125), "the hole cuts the plate's edge"));
}

TEST_CASE("A larger anchor takes the hole's clearance and the washer's kind with it", "[closed-form]") {
    // A 7/16 in lag screw in its hole; the 1/2 in one is 1/16 in larger.
    const Demo demo;
    const double before = std::get<model::RoundHole>(hole(demo.resolved.detail, "A").shape).diameter_in;
    const model::BaseDetail larger = demo.set("anchor-size", 0.5);
    CHECK(std::get<model::LagScrew>(on_deck(larger).anchors.front().fastener).size == "lag-1/2");
    CHECK(on_deck(larger).anchors.front().washer->size == "washer-wide-1/2");
    CHECK_CLOSE(std::get<model::RoundHole>(hole(larger, "A").shape).diameter_in, before + 0.0625, 0.0, 1e-12);
    CHECK(test::contains(demo.refusal("anchor-size", 0.45), "no size of that measure"));
}

TEST_CASE("Joists at another spacing take blocks and rims with them, the post in the middle of its bay",
          "[closed-form]") {
    // Joists 1 1/2 in wide at -24, -8, 8, 24 in; blocks from face to face, -7 1/4 to 7 1/4 in; rim to +-24 3/4 in.
    const Demo demo;
    CHECK_CLOSE(*demo.field("joist-spacing").now, 16.0, 0.0, 1e-12);
    const model::Framing framing = demo.set("joist-spacing", 24.0).framing;
    CHECK_CLOSE(framing.joists->members[0].offset_in, -36.0, 0.0, 1e-12);
    CHECK_CLOSE(framing.joists->members[2].offset_in, 12.0, 0.0, 1e-12);
    CHECK_CLOSE(framing.blocks[0].from_in, -11.25, 0.0, 1e-12);
    CHECK_CLOSE(framing.blocks[0].to_in, 11.25, 0.0, 1e-12);
    CHECK_CLOSE(framing.rims[0].from_in, -36.75, 0.0, 1e-12);
    CHECK_CLOSE(framing.rims[0].to_in, 36.75, 0.0, 1e-12);
}

TEST_CASE("Lumber changes by nominal sizes with the other side kept", "[published]") {
    // 3 1/2 in wide, no deeper than the 9 1/4 in joists: 4x2 lies flat, then 3x4, 4x4, 4x6, 4x8 and 4x10 (PS 20).
    const Demo demo;
    std::vector<std::string> names;
    for (const study::Size& size : demo.field("block-depth").sizes) names.push_back(size.name);
    CHECK(names == std::vector<std::string>{"2x4", "3x4", "4x4", "4x6", "4x8", "4x10"});
    const model::BaseDetail deeper = demo.set("block-depth", 9.25);
    CHECK(deeper.framing.blocks[1].depth_in == 9.25);
    CHECK(deeper.framing.blocks[1].size == "4x10");
}

TEST_CASE("The tributary length carries the line load and the stated wind area", "[closed-form]") {
    Demo demo;
    demo.resolved.detail.loads.line = model::LineLoad{50.0, 4.0, 0.0};
    demo.resolved.detail.loads.wind = model::WindLoad{20.0, false, 12.0, {}, {}, {}, true};
    const model::BaseDetail wider = demo.set("tributary", 72.0);
    CHECK_CLOSE(wider.loads.line->spacing_ft, 6.0, 0.0, 1e-12);
    CHECK_CLOSE(*wider.loads.wind->area_ft2, 18.0, 0.0, 1e-12);
    CHECK(wider.guard.tributary_length_in == 72.0);
}

TEST_CASE("Values are typed as a field, a range with a step, or a list", "[closed-form]") {
    const Demo demo;
    CHECK(demo.values("height=30..36/2") == std::vector<double>{30.0, 32.0, 34.0, 36.0});
    CHECK(demo.values("height=30..35/2") == std::vector<double>{30.0, 32.0, 34.0, 35.0});
    CHECK(demo.values("height = 3'-0\" .. 42 in / 3 in") == std::vector<double>{36.0, 39.0, 42.0});
    CHECK(demo.values("height=42,36,36") == std::vector<double>{36.0, 42.0});
    CHECK(demo.values("plate-thickness=1/4..1/2/1/8") == std::vector<double>{0.25, 0.375, 0.5});
    CHECK(demo.values("plate-thickness=1/4 in..1/2 in/1/8 in") == std::vector<double>{0.25, 0.375, 0.5});
    CHECK(demo.values("anchor-size=3/8..1/2") == std::vector<double>{0.375, 0.4375, 0.5});
    CHECK(demo.values("anchor-size=3/8, 5/8") == std::vector<double>{0.375, 0.625});
    CHECK(demo.values("block-depth=4x6,4x8") == std::vector<double>{5.5, 7.25});
    CHECK(demo.values("height").front() == 30.0);
    CHECK_CLOSE(demo.values("height=762 mm..914.4 mm/76.2 mm")[1], 33.0, 1e-12, 0.0);
}

TEST_CASE("A bad field or range gets one sentence with what is accepted", "[bad-input]") {
    const Demo demo;
    CHECK(test::contains(demo.bad("hight=30..48"), "no field \"hight\"; it has: height, tributary, push"));
    for (const char* const text :
         {"height=", "height=48..30", "height=30", "height=30..48/0", "height=30..48/-1", "height=30..x",
          "height=0..48", "height=-3..48/3", "height=nan..48", "height=30 lb..48 lb"}) {
        INFO(text);
        CHECK(test::contains(demo.bad(text), "accepted: FROM..TO or FROM..TO/STEP, FROM less than TO"));
    }
    CHECK(test::contains(demo.bad("anchor-size=3/8..4"), "1/4, 5/16, 3/8"));
    CHECK(test::contains(demo.bad("anchor-size=1/4..1/2/1/8"), "is no range of sizes for anchor-size"));
    CHECK(test::contains(demo.bad("height=1..1000/1"), "at most 200 values"));
    CHECK(test::contains(demo.refusal("height", 0.0), "above 0"));
    CHECK(test::contains(demo.refusal("height", 500.0), "guard"));
}

TEST_CASE("A detail's name in a study leads back to it", "[property]") {
    const Demo demo;
    const study::Settings settings = {{"height", 37.3}, {"anchor-size", 0.5}};
    const std::string id = study::id_of(demo.fields, settings);
    CHECK(id == "height=37.3 in; anchor-size=0.5 in");
    const study::Made made = study::detail_of(demo.subject, id);
    REQUIRE(made.detail);
    CHECK(made.detail->guard.height_in == 37.3);
    CHECK(std::get<model::LagScrew>(on_deck(*made.detail).anchors.front().fastener).size == "lag-1/2");
    CHECK(study::detail_of(demo.subject, "").detail == demo.resolved.detail);
    for (const char* const bad : {"height", "height=36", "height=x in", "none=1 in", "height=36 in;"}) {
        INFO(bad);
        CHECK_FALSE(study::detail_of(demo.subject, bad).detail);
    }
}
