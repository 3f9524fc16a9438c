// The report as a value, held against the review it is made from.
#include "format/figures.h"
#include "paper/issue.h"
#include "paper/layout/symbols.h"
#include "paper/report/report_sample.h"
#include "paper/report/standards.h"
#include "review/shipped_reviews.h"
#include "support/compare.h"
#include "support/contains.h"
#include "wording/outcomes.h"
#include "wording/status.h"

#include <algorithm>
#include <regex>
#include <set>

using namespace toehold;
using paper::layout::written_math;
using paper::layout::written_number;
using test::contains;

namespace {

paper::Document report_of(const std::string& name) {
    return paper::calculation_report(test::reported(name), test::report_issue(name));
}

}  // namespace

TEST_CASE("The report's sections stand in their order, with names of their own", "[unit]") {
    const paper::Document report = report_of("end-nailed-blocks");
    std::vector<std::string> sections;
    std::set<std::string> names;
    for (const paper::Heading& heading : test::headings_of(report)) {
        CHECK(names.insert(heading.name).second);
        CHECK(std::regex_match(heading.name, std::regex("[A-Za-z0-9-]+")));
        if (heading.level == 1) sections.push_back(heading.words);
    }
    CHECK(sections == std::vector<std::string>{"1  Summary", "2  The detail", "3  Loads and stiffness",
                                               "4  Demand at the anchors", "5  Load path", "6  Checks", "7  Findings",
                                               "8  Remedies", "9  Assumptions and alternatives",
                                               "10  Cautions and sources"});
}

TEST_CASE("Every check of the review has a heading, and every step its value under it", "[unit]") {
    for (const char* name : {"lags-in-deep-blocks", "short-lags-in-flat-block", "decking-only"}) {
        const review::Review& review = test::reported(name);
        const paper::Document report = report_of(name);
        std::set<std::string> met;
        for (const checks::CheckResult& result : review.checks) {
            if (!met.insert(result.id).second) continue;  // of every check the worst subject stands first
            const std::string words = test::words_under(report, "check-" + result.id);
            INFO(name << ", " << result.id << "\n" << words);
            REQUIRE(contains(words, format::english(result.title)));
            CHECK(contains(words, format::english(model::part_name(result.part))));
            CHECK(contains(words, format::english(wording::word(result.status))));
            for (const checks::Step& step : result.steps) {
                INFO(step.symbol << " = " << step.value);
                CHECK(contains(words, written_math(step.symbol)));
                CHECK(contains(words, "= " + written_number(format::number_text(step.value))));
            }
        }
    }
}

TEST_CASE("Every result's ratio stands under its check", "[unit]") {
    const review::Review& review = test::reported("short-lags-in-flat-block");
    const paper::Document report = report_of("short-lags-in-flat-block");
    for (const checks::CheckResult& result : review.checks) {
        const std::string words = test::words_under(report, "check-" + result.id);
        INFO(result.id << ", " << model::key(result.part) << "\n" << words);
        CHECK(contains(words, format::ratio_text(result.ratio)));
        // An infinite ratio reads as in the text output.
        if (result.status == checks::Status::no_path) CHECK(contains(words, "-"));
    }
    CHECK_FALSE(std::regex_search(test::words_of(report), std::regex("[ =-](inf|nan)\\b")));
}

TEST_CASE("Of more than five remedies the report gives the best and counts the rest", "[unit]") {
    review::Review review = test::reported_with_remedies();
    while (review.remedies.size() < 7) review.remedies.push_back(review.remedies.front());
    const paper::Document report = paper::calculation_report(review, test::report_issue("end-nailed-blocks"));
    CHECK(contains(test::words_under(report, "remedies"), "2 others did less"));
}

TEST_CASE("Findings, remedies, assumptions and cautions are all there", "[unit]") {
    const review::Review& review = test::reported_with_remedies();
    const paper::Document report = paper::calculation_report(review, test::report_issue("end-nailed-blocks"));
    REQUIRE(review.findings.size() == 3);
    const std::string findings = test::words_under(report, "findings");
    for (const checks::Finding& finding : review.findings) CHECK(contains(findings, format::english(finding.message)));
    const std::string remedies = test::words_under(report, "remedies");
    REQUIRE_FALSE(review.remedies.empty());
    for (const review::Remedy& remedy : review.remedies) CHECK(contains(remedies, format::english(remedy.text)));
    const std::string assumptions = test::words_under(report, "assumptions");
    const auto written = [](const format::Phrase& plain) {
        return written_math(std::regex_replace(format::english(plain), std::regex(" ft2"), " ft²"));
    };
    for (const review::Assumption& one : review.assumptions) {
        CHECK(contains(assumptions, written(one.text)));
        CHECK(contains(assumptions, written(wording::other_choice(one))));
    }
    const std::string cautions = test::words_under(report, "cautions");
    for (const format::Phrase& caution : review.cautions) CHECK(contains(cautions, format::english(caution)));
}

TEST_CASE("The title block names what was reviewed", "[unit]") {
    const review::Review& review = test::reported("lags-in-deep-blocks");
    paper::Issue issue = test::report_issue("lags-in-deep-blocks");
    const auto words = [&] { return test::words_of(paper::calculation_report(review, issue)); };
    CHECK(contains(words(), review.input_sha256));
    CHECK(contains(words(), "heron-landing-lags-in-deep-blocks.xml"));
    CHECK(contains(words(), "Toehold 0.5.0; in, lb, psi"));
    CHECK(contains(words(), "ASD, load duration factor 1"));
    CHECK(contains(words(), "2026-11-25"));
    CHECK_FALSE(contains(words(), "PROJECT"));
    issue.project = "An invented boardwalk";
    issue.locale.system = units::System::si;
    CHECK(contains(words(), "PROJECT\nAn invented boardwalk"));
    CHECK(contains(words(), "mm, N, MPa"));
}

TEST_CASE("In SI the demand is in newtons, and the steps keep the units of their formulas", "[unit]") {
    const review::Review& review = test::reported("lags-in-deep-blocks");
    paper::Issue issue = test::report_issue("lags-in-deep-blocks");
    issue.locale.system = units::System::si;
    const paper::Document report = paper::calculation_report(review, issue);
    // 200 lb is 889.6 N (NIST SP 811: 1 lbf = 4.448 222 N); 42 in is 1067 mm.
    const std::string loads = test::words_under(report, "loads");
    CHECK(contains(loads, "889.6"));
    CHECK(contains(loads, "1067"));
    // 8 in of length under the head is 203.2 mm.
    CHECK(contains(test::words_under(report, "check-anchor-withdrawal"),
                   "L = 8 in, length under the head, tip included (203.2 mm)"));
}

TEST_CASE("A review without a demand says why in the section of the demand", "[bad-input]") {
    review::Review review = test::reported("decking-only");
    review.demand.reset();
    review.no_demand = format::phrase("nothing described can balance the push");
    review.checks.clear();
    review.load_path.clear();
    const paper::Document report = paper::calculation_report(review, test::report_issue("decking-only"));
    CHECK(
        contains(test::words_under(report, "demand"), "No demand was found: nothing described can balance the push."));
    CHECK(contains(test::words_under(report, "checks"), "No check could be made."));
    CHECK(contains(test::words_under(report, "load-path"), "No link of the load path could be followed."));
    CHECK_NOTHROW(static_cast<void>(paper::lay_out(report)));
}

TEST_CASE("Every clause names a standard of the list, or says what else it rests on", "[unit]") {
    const std::vector<std::string> others = {"input",   "demand",       "common practice", "statics",
                                             "report:", "geometry",     "Saint-Venant",    "assumption",
                                             "catalog", "Source: ours", "limit analysis"};
    for (const std::string& name : test::reported_names()) {
        for (const checks::CheckResult& result :
             review::evaluate(test::shipped_detail("heron-landing-" + name), "").checks) {
            for (const checks::Step& step : result.steps) {
                const bool known =
                    step.clause.empty() ||
                    std::any_of(
                        paper::report::known_standards().begin(), paper::report::known_standards().end(),
                        [&](const auto& standard) { return contains(step.clause, std::string(standard.name)); }) ||
                    std::any_of(others.begin(), others.end(),
                                [&](const auto& word) { return contains(step.clause, word); });
                INFO(result.id << ": " << step.clause);
                CHECK(known);
            }
        }
    }
}

TEST_CASE("The load path leads to the checks that stand for its links", "[unit]") {
    const paper::Document report = report_of("lags-in-deep-blocks");
    std::set<std::string> names;
    for (const paper::Heading& heading : test::headings_of(report)) names.insert(heading.name);
    std::size_t links = 0;
    for (const paper::Block& block : report.blocks) {
        const auto* table = std::get_if<paper::Table>(&block);
        if (table == nullptr || table->columns.front().title != "from") continue;
        for (const auto& row : table->rows) {
            CHECK(names.contains(row[2].link));
            ++links;
        }
    }
    CHECK(links >= 10);
}

TEST_CASE("Under LRFD the report says so, and the loads carry their factor", "[memory]") {
    catalog::Resolved resolved = test::shipped_detail("heron-landing-decking-only");
    resolved.detail.basis.method = model::Method::lrfd;
    const review::Review review = review::evaluate(resolved, "");
    const paper::Document report = paper::calculation_report(review, test::report_issue("decking-only"));
    CHECK(contains(test::words_of(report), "LRFD, time effect factor 0.8"));
    // 1.6 L, ASCE 7-16 2.3.1 (from memory): 1.6 x 200 lb = 320 lb.
    CHECK(contains(test::words_under(report, "loads"), "\n320\n"));
    CHECK(contains(test::words_under(report, "loads"), "\n1.6\n"));
    CHECK(contains(test::words_of(report), "φ"));
    CHECK_NOTHROW(static_cast<void>(paper::lay_out(report)));
}
