// The letter as a value and as a file: every remark with what it speaks of, and none lost.
#include "paper/issue.h"
#include "paper/read_back.h"
#include "paper/report/report_sample.h"
#include "review/review.h"
#include "support/compare.h"
#include "support/contains.h"

using namespace toehold;
using model::Remark;
using test::contains;

namespace {

review::Review remarked(std::vector<Remark> remarks) {
    review::Review review = test::reported("end-nailed-blocks");
    review.resolved.detail.remarks = std::move(remarks);
    return review;
}

paper::Document letter_of(const std::vector<Remark>& remarks) {
    return paper::comment_letter(remarked(remarks), test::report_issue("end-nailed-blocks"));
}

std::vector<std::string> titles(const paper::Document& letter) {
    std::vector<std::string> words;
    for (const paper::Heading& heading : test::headings_of(letter)) words.push_back(heading.words);
    return words;
}

}  // namespace

TEST_CASE("A letter without remarks says so in one sentence", "[unit]") {
    const paper::Document letter = letter_of({});
    CHECK(contains(test::words_of(letter), "The file has no comments of a reviewer."));
    CHECK(test::headings_of(letter).empty());
    CHECK(contains(test::words_of(letter), test::reported("end-nailed-blocks").input_sha256));
}

TEST_CASE("Open remarks are numbered first, settled ones follow", "[unit]") {
    const paper::Document letter =
        letter_of({{"", "", "Send the revised block.", "A. Reviewer", "2026-11-20", Remark::State::settled},
                   {"anchor-withdrawal", "anchor B", "Show the pilot holes.", "A. Reviewer", "", Remark::State::open},
                   {"end-grain-withdrawal", "", "Hardware is needed.", "B. Checker", "", Remark::State::open}});
    CHECK(titles(letter) == std::vector<std::string>{"Open comments", "C1  Anchor withdrawal, anchor B",
                                                     "C2  Fasteners in end grain", "Settled comments",
                                                     "C3  The detail as a whole"});
    CHECK(contains(test::words_of(letter), "A. Reviewer and B. Checker"));
    CHECK(contains(test::words_under(letter, "remark-3"), "A. Reviewer, 2026-11-20"));
    // Room for an answer stands under what is open, and under nothing else.
    CHECK(contains(test::words_under(letter, "remark-1"), "ANSWER"));
    CHECK_FALSE(contains(test::words_under(letter, "remark-3"), "ANSWER"));
}

TEST_CASE("A remark stands with the result it speaks of", "[unit]") {
    const review::Review& review = test::reported("end-nailed-blocks");
    const paper::Document letter = letter_of({{"anchor-withdrawal", "anchor B", "Show the pilot holes.", "", "", {}},
                                              {"member-end-connection", "", "Nails alone do not do.", "", "", {}}});
    const std::string first = test::words_under(letter, "remark-1");
    CHECK(contains(first, "Show the pilot holes."));
    CHECK(contains(first, "anchor B"));
    CHECK(contains(first, "NDS 2018 12.2"));
    CHECK(contains(first, "0.84"));  // 985 lb over 1166 lb
    // Of every title the worst, once; that of the first is the worst of all the check's.
    const std::string second = test::words_under(letter, "remark-2");
    INFO(second);
    const checks::CheckResult* of_check = nullptr;
    for (const checks::CheckResult& result : review.checks) {
        if (result.id == "member-end-connection" && (of_check == nullptr || result.ratio > of_check->ratio))
            of_check = &result;
    }
    REQUIRE(of_check != nullptr);
    const std::string governing = format::english(model::part_name(of_check->part));
    CHECK(contains(second, governing + " (worst of 4)"));
    CHECK(contains(second, "FAIL"));
    CHECK(second.find(governing) == second.rfind(governing));
}

TEST_CASE("A remark whose result is gone is kept, and said to be so", "[unit]") {
    const paper::Document letter = letter_of({{"head-pull-through", "", "Check the heads.", "", "", {}},
                                              {"anchor-withdrawal", "anchor Z", "And this one?", "", "", {}},
                                              {"a-check-of-a-plug-in", "anchor A", "Where did it go?", "", "", {}}});
    const std::string words = test::words_of(letter);
    CHECK(contains(words, "Check the heads."));
    CHECK(contains(words, "The review no longer has a result of this; the remark is kept."));
    CHECK(contains(words, "The review no longer has a result for anchor Z; the remark is kept."));
    CHECK(contains(words, "C3  a-check-of-a-plug-in, anchor A"));
}

TEST_CASE("The letter can be read back from its file", "[process]") {
    const std::string pdf = paper::pdf(
        paper::lay_out(letter_of({{"anchor-withdrawal", "anchor B", "Show the pilot holes.", "A. Reviewer", "", {}}})));
    const std::string text = test::pdf_text(pdf);
    CHECK(test::contains(text, "Show the pilot holes."));
    CHECK(test::contains(text, "INADEQUATE"));
    CHECK(test::contains(text, test::reported("end-nailed-blocks").input_sha256));
    CHECK(test::pdf_pages(pdf) == 1);
}
