// The sheet of a load test: its loads are the code's, its boxes are empty, its words stand on the page.
#include "paper/issue.h"
#include "paper/proof/load_steps.h"
#include "paper/proof/test_sheet.h"
#include "paper/read_back.h"
#include "study/proof_load/movement.h"
#include "support/compare.h"
#include "support/contains.h"
#include "support/example_detail.h"
#include "support/shipped.h"

using namespace toehold;
using test::contains;

namespace {

paper::Issue issue() {
    paper::Issue made;
    made.program = "Toehold";
    made.file = "example.xml";
    return made;
}

std::string sheet_of(const model::BaseDetail& detail, const study::ComputedMovement* computed) {
    const catalog::Resolved resolved = test::resolved_by_shipped(detail);
    return paper::pdf(paper::lay_out(paper::test_sheet({resolved, "0123abcd", computed}, issue())));
}

}  // namespace

TEST_CASE("A load test's sheet holds twice and ends at 2.5 times 200 lb, by the code's clause", "[unit]") {
    study::ComputedMovement computed;
    computed.height_in = 42.0;
    computed.soft = {0.001, 0.004, 0.0};
    computed.stiff = {0.001, 0.001, 0.0};
    const std::string pdf = sheet_of(test::example_detail(), &computed);
    CHECK(test::pdf_pages(pdf) <= 2);
    const std::string text = test::pdf_text(pdf);
    for (const char* const words : {"Load test of a guard post", "400 lb / 500 lb", "at least 24 h", "within 24 h",
                                    "1709", "75%", "42 in", "at least 60 s", "0123abcd"})
        CHECK(contains(text, words));
    CHECK(contains(text, "0.40 – 1.00"));  // 200 lb at 0.002 and 0.005 in/lb
}

TEST_CASE("Without a computed movement the sheet says none", "[unit]") {
    CHECK_FALSE(contains(test::pdf_text(sheet_of(test::example_detail(), nullptr)), " – "));
}

TEST_CASE("A longer stretch of rail raises the loads of the test", "[closed-form]") {
    model::BaseDetail detail = test::example_detail();
    CHECK(paper::proof::design_load_lb(detail) == 200.0);
    detail.guard.tributary_length_in = 72.0;
    // 50 lb/ft over 6 ft
    CHECK(paper::proof::design_load_lb(detail) == Approx(300.0));
    CHECK(paper::proof::up_to_the_hold_lb(300.0).back() == Approx(600.0));
}
