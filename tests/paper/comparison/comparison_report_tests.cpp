// Two reviews on paper beside each other, held against the reviews themselves.
#include "format/figures.h"
#include "paper/issue.h"
#include "paper/read_back.h"
#include "paper/report/report_sample.h"
#include "review/comparison.h"
#include "review/shipped_reviews.h"
#include "support/compare.h"
#include "support/contains.h"

using namespace toehold;
using test::contains;

namespace {

review::Review evaluated(const std::string& name) {
    return review::evaluate(test::shipped_detail("heron-landing-" + name), "hash-of-" + name);
}

paper::Document compared(const std::string& first, const std::string& second) {
    return paper::comparison_report(review::compare(evaluated(first), "as submitted", evaluated(second), "our own"),
                                    test::report_issue(first));
}

}  // namespace

TEST_CASE("The verdict's turn is said in one bold sentence", "[unit]") {
    const paper::Document report = compared("end-nailed-blocks", "lags-in-deep-blocks");
    const std::string sentence = "The verdict changes: as submitted is INADEQUATE, our own is ADEQUATE.";
    bool bold = false;
    for (const paper::Block& block : report.blocks) {
        const auto* paragraph = std::get_if<paper::Paragraph>(&block);
        if (paragraph != nullptr && paragraph->words == sentence) bold = paragraph->bold;
    }
    CHECK(bold);
    const std::string words = test::words_of(report);
    CHECK(contains(words, "hash-of-end-nailed-blocks"));
    CHECK(contains(words, "hash-of-lags-in-deep-blocks"));
}

TEST_CASE("Checks that hold on one side alone stand first, with both ratios", "[unit]") {
    const review::Review first = evaluated("end-nailed-blocks"), second = evaluated("lags-in-deep-blocks");
    const paper::Document report = compared("end-nailed-blocks", "lags-in-deep-blocks");
    for (const paper::Block& block : report.blocks) {
        const auto* table = std::get_if<paper::Table>(&block);
        if (table == nullptr || table->columns.front().title != "check") continue;
        REQUIRE(table->rows.size() > 12);
        CHECK(table->rows.front()[0].bold);
        bool bold = true;
        for (const auto& row : table->rows) {
            CHECK((bold || !row[0].bold));
            bold = row[0].bold;
        }
        // Block B2 at joist J2: nails in end grain against hardware.
        const auto ratio = [](const review::Review& review) {
            for (const checks::CheckResult& result : review.checks) {
                if (result.id == "member-end-connection" && model::key(result.part) == "block B2 at joist J2")
                    return format::ratio_text(result.ratio);
            }
            return std::string();
        };
        bool met = false;
        for (const auto& row : table->rows) {
            if (row[0].words != "Block end connection" || row[1].words != "block B2 at joist J2") continue;
            met = true;
            CHECK(row[2].words == ratio(first));
            CHECK(row[4].words == ratio(second));
            CHECK(row[3].frame == checks::Status::fails);
        }
        CHECK(met);
    }
}

TEST_CASE("Findings that came or went are named with their side", "[unit]") {
    const std::string words = test::words_under(compared("end-nailed-blocks", "lags-in-deep-blocks"), "findings");
    CHECK(contains(words, "as submitted"));
    CHECK(contains(words, "end grain"));
    CHECK_FALSE(contains(words, "our own"));
}

TEST_CASE("A detail beside itself differs in nothing", "[unit]") {
    const paper::Document report = compared("decking-only", "decking-only");
    const std::string words = test::words_of(report);
    CHECK(contains(words, "The verdict is the same: both are INADEQUATE."));
    CHECK(contains(test::words_under(report, "input"), "Nothing differs."));
    CHECK(contains(test::words_under(report, "checks"), "No result differs."));
    CHECK(contains(test::words_under(report, "findings"), "The findings are the same."));
}

TEST_CASE("The comparison can be read back from its file", "[process]") {
    const std::string pdf = paper::pdf(paper::lay_out(compared("end-nailed-blocks", "lags-in-deep-blocks")));
    const std::string text = test::pdf_text(pdf);
    CHECK(test::contains(text, "The verdict changes"));
    CHECK(test::contains(text, "hash-of-end-nailed-blocks"));
    for (const test::PdfFont& font : test::pdf_fonts(pdf)) CHECK(font.embedded);
}
