#include "export/json/review_json.h"

#include "export/fake_review.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <limits>

using namespace toehold;
using Json = nlohmann::ordered_json;

namespace {

Json document(const review::Review& review) { return Json::parse(exporting::review_json(review)); }

std::vector<std::string> keys(const Json& object) {
    std::vector<std::string> all;
    for (const auto& item : object.items()) all.push_back(item.key());
    return all;
}

/// A reader of schema 1 finds these names in this order; others may only follow them.
void check_begins_with(const Json& object, const std::vector<std::string>& agreed) {
    std::vector<std::string> found = keys(object);
    REQUIRE(found.size() >= agreed.size());
    found.resize(agreed.size());
    CHECK(found == agreed);
}

}  // namespace

TEST_CASE("the document carries the names of schema toehold.review/1", "[unit]") {
    const Json review = document(test::fake_review());
    check_begins_with(review, {"schema", "detail", "input_sha256", "verdict", "governing", "anchors", "bearing",
                               "checks", "findings", "load_path", "proof", "assumptions", "cautions"});
    CHECK(keys(review).size() == 32);
    CHECK(review["ties"].empty());
    CHECK(review["hand_couples"].empty());
    CHECK(review["first_finding"].is_null());
    CHECK(review["schema"] == "toehold.review/1");
    CHECK(review["groups"][0]["worst"] == 0);
    CHECK(review["groups"][0]["checks"][0] == 0);
    CHECK(review["range_ends"]["bed"].is_null());  // the fake review's demand has no range
    check_begins_with(review["governing"], {"check", "ratio", "direction_deg"});
    check_begins_with(review["anchors"][0], {"id", "x_in", "y_in", "tension_lb", "shear_lb", "direction_deg",
                                             "hand_tension_lb", "rigid_tension_lb", "flexible_tension_lb"});
    check_begins_with(review["bearing"], {"peak_psi", "contact_area_in2", "direction_deg"});
    check_begins_with(review["checks"][0], {"id", "title", "subject", "clause", "demand", "capacity", "unit", "ratio",
                                            "status", "direction_deg", "steps"});
    check_begins_with(review["checks"][1]["steps"][0], {"symbol", "meaning", "formula", "value", "unit", "clause"});
    check_begins_with(review["findings"][0], {"id", "severity", "clause", "message"});
    check_begins_with(review["load_path"][0], {"from", "to", "by", "demand", "capacity", "unit", "ratio", "status"});
    check_begins_with(review["proof"], {"force_residual", "moment_residual", "complementarity_residual"});
}

TEST_CASE("values reach the document whole and under the right name", "[unit]") {
    review::Review source = test::fake_review();
    source.demand->anchors[0].tension_lb = 1.0 / 3.0;
    const Json review = document(source);
    const Json& anchor = review["anchors"][0];
    CHECK(anchor["tension_lb"].get<double>() == 1.0 / 3.0);
    CHECK(anchor["hand_tension_lb"] == 1510.0);
    CHECK(anchor["hand_to_anchor_tension_lb"] == 1800.0);
    CHECK(anchor["rigid_tension_lb"] == source.demand->anchors[0].rigid_tension_lb);
    CHECK(anchor["tension_low_lb"] == source.demand->anchors[0].tension_low_lb);
    CHECK(anchor["flexible_tension_lb"].is_null());
    CHECK(anchor["direction_deg"] == 15.0);
    CHECK(review["bearing"]["contact_area_in2"] == 20.0);
    CHECK(review["verdict"] == "inadequate");
    CHECK(review["checks"][1]["status"] == "fails");
    CHECK(review["checks"][3]["status"] == "missing_evidence");
    CHECK(review["findings"][1]["severity"] == "caution");
    CHECK(review["assumptions"][0]["text"] == "Lumber is wet in service.");
}

TEST_CASE("an infinite ratio is null", "[unit]") {
    const Json review = document(test::fake_review());
    CHECK(review["checks"][0]["status"] == "no_path");
    CHECK(review["checks"][0]["ratio"].is_null());
    CHECK(review["load_path"][2]["ratio"].is_null());
    CHECK(review["governing"]["ratio"].is_null());
    CHECK(review["governing"]["direction_deg"].is_null());
}

TEST_CASE("without a demand the document says why and gives no forces", "[unit]") {
    const Json review = document(test::fake_review_without_demand());
    CHECK(keys(review) == keys(document(test::fake_review())));
    CHECK(review["no_demand"] == "the plate turns over at 45 degrees");
    CHECK(review["anchors"].empty());
    CHECK(review["anchors"].is_array());
    CHECK(review["bearing"].is_null());
    CHECK(review["proof"].is_null());
    CHECK(review["governing"].is_null());
    CHECK(review["checks"].is_array());
    CHECK(document(test::fake_review())["no_demand"].is_null());
}

TEST_CASE("text that is not UTF-8, quotes and line ends give a document that parses", "[bad-input]") {
    for (const char* text : {"\xFF\xFE", "\"quoted\" \\ back", "line\nend\t\x01", "\u00E9\u6F22", ""}) {
        CHECK_NOTHROW(document(test::fake_review_saying(text)));
    }
    CHECK(document(test::fake_review_saying("\u00E9 \"x\"\n"))["detail"] == "\u00E9 \"x\"\n");
}
