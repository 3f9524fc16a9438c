// From a detail's file through the shipped catalogs: the problem of an unknown id stands on the line of its element.
#include "catalog/resolve.h"
#include "support/shipped.h"
#include "xml/detail/detail_file.h"

#include <catch2/catch.hpp>

using namespace toehold;

namespace {

/// One element a line, so that lines can be counted here.
const std::string detail_text = R"(<base-detail xmlns="urn:toehold:base-detail:1" name="test">
<guard height="42 in"/>
<post shape="wood" width="3.5 in" depth="3.5 in" species="southern-pine" grade="no-2" notched="no">
<shoe attachment="welded" width="3.75 in" depth="3.75 in" wall="1/8 in" height="4 in" metal="steel-a36"/></post>
<plate id="P1" metal="steel-a36" thickness="3/8 in"><rectangle width="8 in" depth="8 in"/>
<hole id="A" x="-3 in" y="-3 in" diameter="7/16 in"/>
<hole id="B" x="3 in" y="-3 in" diameter="5/16 in"/></plate>
<anchors holes="B"><lag-screw size="lag-1/4" length="5 in"/></anchors>
<anchors><lag-screw size="lag-3/8" length="6 in"/>
<washer size="washer-wide-3/8"/></anchors>
<layers><decking material="wood-redwood" thickness="1 in"/></layers>
<framing>
<block id="B1" along="x" width="3.5 in" depth="5.5 in" species="hem-fir" grade="no-2" from="-8 in" to="8 in" across="-3 in"/>
</framing>
</base-detail>
)";

std::string with(const std::string& text, const std::string& replacement) {
    std::string changed = detail_text;
    const std::size_t at = changed.find(text);
    REQUIRE(at != std::string::npos);
    return changed.replace(at, text.size(), replacement);
}

int line_of_problem(const std::string& text) {
    const xml::DetailRead read = xml::read_detail_text(text, "detail.xml");
    for (const model::Problem& problem : read.problems) UNSCOPED_INFO(model::sentence(problem));
    REQUIRE(read.detail);
    catalog::Resolution resolution = catalog::resolve(*read.detail, test::shipped_catalog());
    xml::locate(resolution.problems, "detail.xml", read.lines);
    REQUIRE(resolution.problems.size() == 1);
    CHECK(resolution.problems.front().file == "detail.xml");
    return resolution.problems.front().line;
}

}  // namespace

TEST_CASE("A detail's file resolves with the shipped catalogs", "[catalog][unit]") {
    const xml::DetailRead read = xml::read_detail_text(detail_text, "detail.xml");
    for (const model::Problem& problem : read.problems) UNSCOPED_INFO(model::sentence(problem));
    REQUIRE(read.detail);
    const catalog::Resolution resolution = catalog::resolve(*read.detail, test::shipped_catalog());
    REQUIRE(resolution.resolved);
    REQUIRE(resolution.resolved->anchors.size() == 2);
    CHECK(resolution.resolved->anchors[0].name == "3/8 in lag screw x 6 in");
    CHECK(resolution.resolved->anchors[1].name == "1/4 in lag screw x 5 in");
}

TEST_CASE("An unknown id is reported on the line that names it", "[catalog][bad-input]") {
    CHECK(line_of_problem(with("species=\"southern-pine\"", "species=\"pine\"")) == 3);
    CHECK(line_of_problem(with("metal=\"steel-a36\"/>", "metal=\"steel\"/>")) == 4);
    CHECK(line_of_problem(with("P1\" metal=\"steel-a36\"", "P1\" metal=\"steel\"")) == 5);
    CHECK(line_of_problem(with("<hole id=\"B\" x=\"3 in\" y=\"-3 in\" diameter=\"5/16 in\"",
                               "<hole id=\"B\" x=\"3 in\" y=\"-3 in\" diameter=\"3/16 in\"")) == 7);
    CHECK(line_of_problem(with("lag-1/4", "lag-1/5")) == 8);
    CHECK(line_of_problem(with("lag-3/8", "lag-9")) == 9);
    CHECK(line_of_problem(with("washer-wide-3/8", "washer")) == 10);
    CHECK(line_of_problem(with("wood-redwood", "redwood")) == 11);
    CHECK(line_of_problem(with("grade=\"no-2\" from", "grade=\"no-4\" from")) == 13);
}
