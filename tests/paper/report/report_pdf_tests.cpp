// The report as a file, read back with poppler's tools.
#include "paper/issue.h"
#include "paper/read_back.h"
#include "paper/report/report_sample.h"
#include "review/review.h"
#include "support/compare.h"

#include <regex>

using namespace toehold;

namespace {

std::string pdf_of(const std::string& name) {
    return paper::pdf(paper::lay_out(paper::calculation_report(test::reported(name), test::report_issue(name))));
}

void check_pages(const std::string& pdf) {
    CHECK(test::pdf_pages(pdf) >= 6);
    CHECK(test::pdf_pages(pdf) <= 14);
    for (const test::PdfFont& font : test::pdf_fonts(pdf)) {
        CHECK(font.embedded);
        CHECK(font.to_unicode);
    }
}

void check_half(std::size_t first) {
    const std::vector<std::string> names = test::reported_names();
    for (std::size_t index = first; index < names.size(); index += 2) {
        INFO(names[index]);
        check_pages(pdf_of(names[index]));
    }
}

}  // namespace

// Two cases, since each takes the reviews of half the details.
TEST_CASE("The report of every other demo detail has 6 to 14 pages, with its fonts in it", "[process]") {
    check_half(0);
}
TEST_CASE("The reports of the rest have 6 to 14 pages, with their fonts in them", "[process]") { check_half(1); }

TEST_CASE("The report with remedies in it has 6 to 14 pages", "[process]") {
    check_pages(paper::pdf(paper::lay_out(
        paper::calculation_report(test::reported_with_remedies(), test::report_issue("end-nailed-blocks")))));
}

TEST_CASE("The report's text can be searched: hash, Greek, signs and verdict", "[process]") {
    const review::Review& review = test::reported("lags-in-deep-blocks");
    const std::string text = test::pdf_text(pdf_of("lags-in-deep-blocks"));
    CHECK(test::contains(text, review.input_sha256));
    CHECK(test::contains(text, "ADEQUATE"));
    CHECK(test::contains(text, "α"));
    CHECK(test::contains(text, "Ω"));
    CHECK(test::contains(text, "φ"));
    CHECK(test::contains(text, "√("));
    CHECK(test::contains(text, "π"));
    CHECK(test::contains(text, "Anchor edge distance"));
    CHECK(test::contains(text, "Page 1 of"));
}

TEST_CASE("The report's contents lead to its sections", "[process]") {
    const std::string pdf = pdf_of("lags-in-deep-blocks");
    const std::string destinations = test::read_by("pdfinfo -dests", pdf, "pdf");
    for (const char* name : {"summary", "detail", "loads", "demand", "load-path", "checks", "findings", "remedies",
                             "assumptions", "cautions", "check-anchor-withdrawal"})
        CHECK(test::contains(destinations, "\"" + std::string(name) + "\""));
}

TEST_CASE("The same review gives the same bytes", "[property]") {
    CHECK(pdf_of("decking-only") == pdf_of("decking-only"));
}
