// Charts of studies with stored numbers: words that stand clear of each other, what is where, and what a click finds.
#include "drawing/charts/chart.h"

#include "drawing/charts/word_boxes.h"
#include "drawing/scene_reading.h"
#include "support/compare.h"
#include "support/contains.h"
#include "support/invented_studies.h"
#include "support/shipped.h"

#include <cmath>

using namespace toehold;
using drawing::Chart;
using drawing::ChartRoom;

namespace {

const ChartRoom letter_us{250.0, 140.0, {}};
const ChartRoom rooms[] = {
    letter_us, {250.0, 140.0, {units::System::si, nullptr}}, {110.0, 80.0, {}}, {400.0, 260.0, {}}};

struct Fields {
    explicit Fields(const std::string& demo)
        : resolved(test::shipped_detail(demo)), fields(study::fields({resolved, test::shipped_catalog()})) {}
    catalog::Resolved resolved;
    std::vector<study::Field> fields;
    [[nodiscard]] study::Asked asked(const std::string& text) const { return *study::read_values(fields, text).asked; }
};

const Fields& corner() {
    static const Fields fields("heron-landing-corner");
    return fields;
}

void check_clear(const Chart& chart, const std::string& what) {
    INFO(what);
    CHECK(test::sound(chart.scene));
    const std::vector<std::string> all = test::collisions(chart.scene);
    std::string listed;
    for (const std::string& one : all) listed += one + "\n";
    INFO(listed);
    CHECK(all.empty());
}

/// Height of the limit's line, mm.
double limit_mm(const Chart& chart) {
    for (const test::WordBox& box : test::word_boxes(chart.scene)) {
        if (box.words == "limit 1.00") return box.mm.low.y - 1.6;
    }
    return -1.0;
}

}  // namespace

TEST_CASE("No word of a chart covers another, whatever the field, the room and the units", "[property]") {
    for (const std::string& demo : test::demo_names()) {
        const Fields of(demo);
        for (const ChartRoom& room : rooms) {
            const std::string where = demo + " " + std::to_string(room.width_mm);
            for (const study::Field& field : of.fields) {
                const std::vector<double> values = study::customary_values(field);
                check_clear(drawing::ratio_chart(test::invented_sweep(field, values, 1.3), room),
                            where + " " + field.id);
            }
            check_clear(drawing::tornado_chart(test::invented_tornado(of.fields, 0.93), room), where + " tornado");
            const study::MapAsked map = study::customary_map(of.fields);
            check_clear(drawing::map_chart(test::invented_map(map.across, map.up), room), where + " map");
        }
    }
}

TEST_CASE("Every chart of a far too large ratio, of few values and of many is drawn clear", "[property]") {
    for (const double largest : {1e-3, 0.5, 1.0, 2.9, 30.0, 1e6}) {
        for (const char* const text : {"height=36,42", "height=30..48/2", "height=1..100/0.5"}) {
            const study::Asked asked = corner().asked(text);
            check_clear(drawing::ratio_chart(test::invented_sweep(asked.field, asked.values, largest), letter_us),
                        text);
        }
        check_clear(drawing::tornado_chart(test::invented_tornado(corner().fields, largest), letter_us), "tornado");
    }
}

TEST_CASE("The limit stands at a ratio of 1 and what is above it is hatched", "[closed-form]") {
    const study::Asked asked = corner().asked("height=36,42");
    study::Sweep sweep = test::invented_sweep(asked.field, asked.values, 2.0);
    // One check alone, from 0.5 to 1.5: its line crosses the limit half way.
    for (std::size_t i = 0; i < 2; ++i) {
        study::Judged& judged = sweep.points[i].judged;
        judged.checks.resize(1);
        judged.checks[0].ratio = i == 0 ? 0.5 : 1.5;
    }
    const Chart chart = drawing::ratio_chart(sweep, letter_us);
    std::vector<drawing::Point> ends;
    for (const drawing::Item& item : chart.scene.items) {
        const auto* const circle = std::get_if<drawing::Circle>(&item);
        if (circle != nullptr) ends.push_back({circle->center.at.x * 25.4, circle->center.at.y * 25.4});
    }
    REQUIRE(ends.size() == 2);
    CHECK_CLOSE(limit_mm(chart), 0.5 * (ends[0].y + ends[1].y), 0.0, 1e-6);
    bool hatched = false;
    for (const drawing::Item& item : chart.scene.items) {
        const auto* const path = std::get_if<drawing::Path>(&item);
        if (path == nullptr || path->fill != drawing::Fill::failing) continue;
        hatched = hatched || std::abs(test::box(*path).low.y * 25.4 - limit_mm(chart)) < 1e-6;
    }
    CHECK(hatched);
}

TEST_CASE("Each point of a chart leads to its detail", "[property]") {
    const drawing::View view{{}, {10.0, 500.0}, 25.4 * 2.0, 2.0};
    const auto middle_of = [&view](const drawing::Spot& spot) {
        return to_surface(
            view, drawing::Point{(spot.low_mm.x + spot.high_mm.x) / 50.8, (spot.low_mm.y + spot.high_mm.y) / 50.8});
    };
    const study::Asked asked = corner().asked("height=36..42/2");
    const study::MapAsked map = study::customary_map(corner().fields);
    for (const Chart& chart : {drawing::ratio_chart(test::invented_sweep(asked.field, asked.values, 1.2), letter_us),
                               drawing::tornado_chart(test::invented_tornado(corner().fields, 0.9), letter_us),
                               drawing::map_chart(test::invented_map(map.across, map.up), letter_us)}) {
        INFO(chart.scene.name);
        CHECK(chart.spots.size() >= 4);
        for (const drawing::Spot& spot : chart.spots) {
            const drawing::Spot* const found = drawing::spot_at(chart, view, middle_of(spot));
            REQUIRE(found != nullptr);
            CHECK(found->detail == spot.detail);
            CHECK_FALSE(spot.words.empty());
        }
        CHECK(drawing::spot_at(chart, view, {-1e4, -1e4}) == nullptr);
    }
}

TEST_CASE("A chart says what it does not draw", "[property]") {
    const study::Asked asked = corner().asked("height=30..48/6");
    study::Sweep sweep = test::invented_sweep(asked.field, asked.values, 0.8);
    sweep.points[0].judged = {};
    sweep.points[0].judged.refusal = format::phrase("the guard is nothing");
    sweep.points[1].judged.no_path = {sweep.points[1].judged.checks.front()};
    sweep.points[1].judged.checks.front().status = checks::Status::no_path;
    sweep.stopped = true;
    std::string notes;
    for (const format::Phrase& note : drawing::ratio_chart(sweep, letter_us).notes)
        notes += format::english(note) + "\n";
    CHECK(test::contains(notes, "ADEQUATE at the values computed: 36 in to 48 in."));
    CHECK(test::contains(notes, "No number at 30 in: the guard is nothing."));
    CHECK(test::contains(notes, "No load path, and so no ratio to draw, at 36 in: "));
    CHECK(test::contains(notes, "more checks, of which none exceeds"));
    CHECK(test::contains(notes, "Stopped before all of it was computed."));
}

TEST_CASE("A study without a number is an empty chart with its reason", "[bad-input]") {
    const study::Asked asked = corner().asked("height=36,42");
    CHECK(test::sound(drawing::ratio_chart({asked.field, {}, true}, letter_us).scene));
    study::Tornado nothing;
    nothing.now.refusal = format::phrase("stopped");
    const Chart chart = drawing::tornado_chart(nothing, letter_us);
    CHECK(test::sound(chart.scene));
    REQUIRE(chart.notes.size() == 1);
    CHECK(format::english(chart.notes.front()) == "stopped.");
}
