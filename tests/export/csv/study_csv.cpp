// The tables of studies read back, cell by cell, against the numbers they were made from.
#include "export/csv/study_csv.h"

#include "study/study.h"
#include "support/contains.h"

#include <limits>
#include <sstream>

using namespace toehold;

namespace {

using Table = std::vector<std::vector<std::string>>;

/// No cell of these tests has a comma within.
Table read(const std::string& text) {
    Table table;
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) {
        REQUIRE(line.back() == '\r');
        line.pop_back();
        std::vector<std::string>& cells = table.emplace_back();
        std::istringstream row(line + ",");
        for (std::string cell; std::getline(row, cell, ',');) cells.push_back(cell);
    }
    return table;
}

std::string cell(const Table& table, std::size_t row, const std::string& column) {
    for (std::size_t i = 0; i < table.front().size(); ++i) {
        if (table.front()[i] == column) return table.at(row).at(i);
    }
    throw std::runtime_error("no column " + column);
}

study::Field height() {
    study::Field field;
    field.id = "height";
    field.name = format::phrase("guard height");
    field.now = 42.0;
    return field;
}

study::Judged judged(double first, double second) {
    study::Judged made;
    made.detail = "height=1 in";
    made.verdict = first > 1.0 ? review::Verdict::inadequate : review::Verdict::adequate;
    const model::PartId part = model::anchor_part("A");
    made.checks = {{"anchor-withdrawal", format::phrase("Withdrawal"), part, first, checks::Status::holds, false},
                   {"post-bending", format::phrase("Bending"), part, second, checks::Status::holds, false}};
    made.governing = made.checks.front();
    made.limit = {"anchor-withdrawal", format::phrase("Withdrawal"), part};
    return made;
}

study::Judged refused() {
    study::Judged made;
    made.refusal = format::phrase("the plate would have no size");
    return made;
}

}  // namespace

TEST_CASE("The table of a sweep is the sweep, to the last digit", "[property]") {
    study::Sweep sweep{
        height(), {{30.0, judged(0.1 + 0.2, 1.0 / 3.0)}, {36.5, judged(1.25, 0.5)}, {42.0, refused()}}, false};
    const Table table = read(exporting::sweep_csv(sweep));
    REQUIRE(table.size() == 4);
    for (std::size_t row = 1; row <= 2; ++row) {
        const study::SweepPoint& point = sweep.points[row - 1];
        CHECK(std::stod(cell(table, row, "height (in)")) == point.value);
        CHECK(std::stod(cell(table, row, "anchor-withdrawal")) == point.judged.checks[0].ratio);
        CHECK(std::stod(cell(table, row, "post-bending")) == point.judged.checks[1].ratio);
        CHECK(std::stod(cell(table, row, "governing demand over capacity")) == *point.judged.ratio());
        CHECK(cell(table, row, "limit") == "anchor-withdrawal");
        CHECK(cell(table, row, "subject of limit") == "anchor A");
        CHECK(cell(table, row, "detail") == point.judged.detail);
    }
    CHECK(cell(table, 1, "verdict") == "adequate");
    CHECK(cell(table, 2, "verdict") == "inadequate");
    CHECK(cell(table, 3, "verdict").empty());
    CHECK(cell(table, 3, "post-bending").empty());
    CHECK(cell(table, 3, "note") == "the plate would have no size");
}

TEST_CASE("What has no load path has no number and says so", "[property]") {
    study::Sweep sweep{height(), {{30.0, judged(0.5, 0.25)}}, false};
    study::CheckRatio& ratio = sweep.points[0].judged.checks[1];
    ratio.ratio = std::numeric_limits<double>::infinity();
    ratio.status = checks::Status::no_path;
    sweep.points[0].judged.no_path = {ratio};
    const Table table = read(exporting::sweep_csv(sweep));
    CHECK(cell(table, 1, "post-bending").empty());
    CHECK(cell(table, 1, "governing demand over capacity").empty());
    CHECK(cell(table, 1, "note") == "no load path");
}

TEST_CASE("The table of a tornado and that of a map have their numbers", "[property]") {
    study::Tornado tornado;
    tornado.now = judged(0.9, 0.5);
    tornado.swings.push_back({height(), {37.8, judged(0.8, 0.5)}, {46.2, judged(1.1, 0.5)}, 0.2});
    const Table inputs = read(exporting::tornado_csv(tornado));
    CHECK(cell(inputs, 1, "input") == "height");
    CHECK(std::stod(cell(inputs, 1, "now")) == 42.0);
    CHECK(std::stod(cell(inputs, 1, "ratio less")) == 0.8);
    CHECK(std::stod(cell(inputs, 1, "ratio more")) == 1.1);
    CHECK(std::stod(cell(inputs, 1, "largest change")) == 0.2);

    study::HoldingMap map;
    map.up = height();
    map.across = height();
    map.across.id = "tributary";
    map.across_values = {36.0, 48.0};
    map.up_values = {36.0, 42.0};
    for (const double up : map.up_values) {
        for (const double across : map.across_values) map.nodes.push_back({across, up, judged(up / 40.0, 0.5)});
    }
    study::MapBorder border;
    border.column = 1;
    border.holds = 39.875;
    border.fails = 40.0625;
    border.limit = {"anchor-withdrawal", format::phrase("Withdrawal"), model::anchor_part("A")};
    map.borders = {border};
    const Table points = read(exporting::map_csv(map));
    REQUIRE(points.size() == 6);
    CHECK(std::stod(cell(points, 4, "tributary (in)")) == 48.0);
    CHECK(std::stod(cell(points, 4, "height (in)")) == 42.0);
    CHECK(std::stod(cell(points, 4, "governing demand over capacity")) == 42.0 / 40.0);
    CHECK(cell(points, 5, "kind") == "border");
    CHECK(std::stod(cell(points, 5, "tributary (in)")) == 48.0);
    CHECK(std::stod(cell(points, 5, "holds at")) == 39.875);
    CHECK(std::stod(cell(points, 5, "fails at")) == 40.0625);
    CHECK(cell(points, 5, "steady") == "yes");
}
