// Tables for a spreadsheet, read back by a reader of RFC 4180 written here from the standard.
#include "export/csv/review_csv.h"

#include "export/csv/cells.h"

#include "export/fake_review.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <charconv>

using namespace toehold;

namespace {

using Cells = std::vector<std::string>;

/// RFC 4180, section 2: records end with CRLF, a quoted field may hold anything, a quote in it is doubled.
std::vector<Cells> records(const std::string& text) {
    std::vector<Cells> all(1, Cells(1));
    bool quoted = false;
    for (std::size_t at = 0; at < text.size(); ++at) {
        std::string& cell = all.back().back();
        if (quoted && text[at] == '"' && at + 1 < text.size() && text[at + 1] == '"') {
            cell += text[++at];
        } else if (text[at] == '"') {
            quoted = !quoted;
        } else if (quoted) {
            cell += text[at];
        } else if (text[at] == ',') {
            all.back().emplace_back();
        } else if (text[at] == '\r') {
            REQUIRE(text.substr(at, 2) == "\r\n");
            ++at;
            all.emplace_back(1);
        } else {
            REQUIRE(text[at] != '\n');
            cell += text[at];
        }
    }
    REQUIRE_FALSE(quoted);
    REQUIRE(all.back() == Cells{""});
    all.pop_back();
    return all;
}

std::size_t column(const std::vector<Cells>& table, const std::string& name) {
    const auto found = std::find(table.front().begin(), table.front().end(), name);
    INFO(name);
    REQUIRE(found != table.front().end());
    return static_cast<std::size_t>(found - table.front().begin());
}

double number(const std::string& cell) {
    double value = 0.0;
    const auto read = std::from_chars(cell.data(), cell.data() + cell.size(), value);
    INFO(cell);
    REQUIRE((read.ec == std::errc() && read.ptr == cell.data() + cell.size()));
    return value;
}

void check_rectangular(const std::vector<Cells>& table) {
    for (const Cells& row : table) CHECK(row.size() == table.front().size());
}

}  // namespace

TEST_CASE("anchors: one row each, numbers to the last digit", "[unit]") {
    review::Review review = test::fake_review();
    review.demand->anchors[0].tension_lb = 0.1 + 0.2;
    const std::vector<Cells> table = records(exporting::anchors_csv({{"a.xml", &review}, {"b.xml", &review}}));
    REQUIRE(table.size() == 1 + 2 * review.demand->anchors.size());
    check_rectangular(table);
    CHECK(table[1][0] == "a.xml");
    CHECK(table[1 + review.demand->anchors.size()][0] == "b.xml");
    CHECK(table[1][1] == review.detail);
    CHECK(number(table[1][column(table, "tension used (lb)")]) == 0.1 + 0.2);
    CHECK(number(table[2][column(table, "tension used (lb)")]) == 1800.0);
    CHECK(number(table[2][column(table, "least tension (lb)")]) == 1350.0);
    CHECK(number(table[1][column(table, "push toward (deg)")]) == 15.0);
    CHECK(number(table[1][column(table, "x (in)")]) == review.resolved.anchors[0].at.x_in);
    CHECK(table[1][column(table, "flexible base at nominal stiffness (lb)")].empty());
}

TEST_CASE("checks: one row a result; what is infinite or not known is empty", "[unit]") {
    const review::Review review = test::fake_review();
    const std::vector<Cells> table = records(exporting::checks_csv({{"a.xml", &review}}));
    REQUIRE(table.size() == 1 + review.checks.size());
    check_rectangular(table);
    const std::size_t ratio = column(table, "demand over capacity");
    const std::size_t capacity = column(table, "capacity (in unit)");
    CHECK(table[1][column(table, "status")] == "no_path");
    CHECK(table[1][column(table, "subject")] == "block B1 at joist J1");
    CHECK(table[1][ratio].empty());
    CHECK(number(table[1][capacity]) == 0.0);
    CHECK(number(table[2][ratio]) == 1.873);
    CHECK(table[2][column(table, "by")] == "lag screw threads");
    CHECK(table[4][column(table, "status")] == "missing_evidence");
    CHECK(table[4][ratio].empty());
    CHECK(table[4][capacity].empty());
}

TEST_CASE("a detail without a demand has no rows of anchors", "[unit]") {
    const review::Review review = test::fake_review_without_demand();
    CHECK(records(exporting::anchors_csv({{"a.xml", &review}})).size() == 1);
    CHECK(records(exporting::checks_csv({})).size() == 1);
}

TEST_CASE("text a spreadsheet would take for a formula is made harmless; other text comes back as it was",
          "[bad-input]") {
    for (const std::string formula : {"=1+1", "+1", "-1", "@SUM(A1)", "=HYPERLINK(\"x\",\"y\")", "\t=1", "\r=1"}) {
        const std::vector<Cells> table = records(exporting::csv_cell(formula) + "\r\n");
        CHECK(table[0][0] == "'" + formula);
    }
    for (const std::string text : {"", "anchor A", "a, b", "say \"so\"", "two\r\nlines", "1-2", "\u00D8 50", " =1"}) {
        CHECK(records(exporting::csv_cell(text) + "\r\n")[0][0] == text);
    }
    CHECK(exporting::csv_cell("plain") == "plain");
    CHECK(exporting::csv_cell("a\"b") == "\"a\"\"b\"");
    review::Review review = test::fake_review_saying("=cmd|' /C calc'!A0,\"\n");
    const std::vector<Cells> table = records(exporting::checks_csv({{"-a.xml", &review}}));
    check_rectangular(table);
    for (std::size_t row = 1; row < table.size(); ++row) {
        CHECK(table[row][0] == "'-a.xml");
        for (const std::string& cell : table[row]) CHECK((cell.empty() || cell.front() != '='));
    }
}

TEST_CASE("a place left of the post is a number and stays one", "[unit]") {
    review::Review review = test::fake_review();
    review.resolved.anchors[0].at.x_in = -1.875;
    const std::string text = exporting::anchors_csv({{"a.xml", &review}});
    CHECK(text.find(",-1.875,") != std::string::npos);
}
