// The page itself: one sheet, legible, nothing over anything else and nothing cut off, whatever the detail.
#include "paper/issue.h"
#include "paper/read_back.h"
#include "paper/site/site_page.h"
#include "paper/site/site_sample.h"
#include "support/compare.h"

#include <algorithm>

using namespace toehold;

namespace {

/// Returns what stands on it.
std::vector<test::SheetWords> check_page(const review::Review& review, units::System system) {
    const paper::Sheet sheet = paper::site_sheet(review, test::issue_in(system));
    std::vector<test::SheetWords> words = test::words_on(sheet);
    CHECK(test::overlaps(words) == std::vector<std::string>{});
    CHECK(test::off_the_page(sheet) == std::vector<std::string>{});
    for (const test::SheetWords& one : words) CHECK(one.size_mm >= paper::site::least_lettering_mm * (1.0 - 1e-9));
    return words;
}

const test::SheetWords& largest(const std::vector<test::SheetWords>& words) {
    return *std::max_element(
        words.begin(), words.end(),
        [](const test::SheetWords& one, const test::SheetWords& other) { return one.size_mm < other.size_mm; });
}

bool any_more_line(const std::vector<test::SheetWords>& words) {
    return std::any_of(words.begin(), words.end(),
                       [](const test::SheetWords& one) { return test::contains(one.words, "More in the report"); });
}

/// Ten blocks of ten lengths, on end connections that all differ.
model::BaseDetail crowded() {
    model::BaseDetail detail = test::demo_detail("heron-landing-lags-in-deep-blocks");
    const model::Block like = detail.framing.blocks.front();
    for (int index = 0; index < 10; ++index) {
        model::Block block = like;
        block.id = "B" + std::to_string(index + 3);
        block.across_in = -12.0 - 4.0 * index;
        block.from_in += 0.01 * (index + 1);
        block.from_end.connection = model::ToeNails{0.131, 2.5, 2 + 2 * index, 1.0 + index};
        block.to_end.connection =
            model::EndGrainFasteners{model::EndGrainFasteners::Kind::nail, 0.162, 3.5, 2 + index, 3.0};
        detail.framing.blocks.push_back(block);
    }
    return detail;
}

}  // namespace

TEST_CASE("Every shipped detail has its site sheet on one page, all of it, nothing over anything else", "[property]") {
    for (const std::string& name : test::demo_names()) {
        const review::Review& review = test::reviewed_demo(name);
        for (const units::System system : {units::System::us, units::System::si}) {
            CAPTURE(name, system == units::System::si);
            const auto words = check_page(review, system);
            const bool lists_cut = std::any_of(words.begin(), words.end(), [](const test::SheetWords& one) {
                return test::contains(one.words, "not all of it fits here");
            });
            CHECK(!lists_cut);
        }
    }
}

TEST_CASE("A site sheet is one page of the paper asked for", "[oracle]") {
    const review::Review& review = test::reviewed_demo("heron-landing-corner");
    for (const units::System system : {units::System::us, units::System::si}) {
        std::vector<paper::Sheet> sheets = {paper::site_sheet(review, test::issue_in(system))};
        const std::string bytes = paper::pdf({{"Site sheet", "", "", ""}, std::move(sheets), {}});
        CHECK(test::pdf_pages(bytes) == 1);
        CHECK(
            test::contains(test::read_by("pdfinfo", bytes, "pdf"), system == units::System::us ? "(letter)" : "(A4)"));
        for (const test::PdfFont& font : test::pdf_fonts(bytes)) CHECK(font.embedded);
    }
}

TEST_CASE("A detail with more than a page holds is cut with a plain word, in the least lettering", "[bad-input]") {
    const review::Review review = test::reviewed(crowded());
    CHECK(any_more_line(check_page(review, units::System::us)));
    check_page(review, units::System::si);
    const std::string text = test::read_site_sheet(review, units::System::us);
    CHECK(test::contains(text, "not all of it fits here"));
    CHECK(test::contains(text, "close up before this is signed"));
}

TEST_CASE("Long names neither run off the page nor over anything", "[bad-input]") {
    model::BaseDetail detail = test::demo_detail("heron-landing-bolted-angles");
    for (int times = 0; times < 30; ++times) {
        detail.name += " and a name that does not end";
        detail.project += "Project";
        detail.note += " a note that goes on";
        on_deck(detail).anchors.front().corrosion_protection += " zinc";
    }
    const review::Review review = test::reviewed(detail);
    check_page(review, units::System::us);
    check_page(review, units::System::si);
}

TEST_CASE("Only an adequate detail may be built as drawn, and the others say so in the largest letters", "[unit]") {
    const auto banner = [](const review::Review& review) {
        return largest(test::words_on(paper::site_sheet(review, test::issue_in(units::System::us)))).words;
    };
    const std::string refusal = "DO NOT BUILD THIS AS DRAWN";
    const review::Review& adequate = test::reviewed_demo("heron-landing-lags-in-deep-blocks");
    REQUIRE(adequate.verdict == review::Verdict::adequate);
    CHECK(banner(adequate) == "ADEQUATE: build exactly as drawn");
    CHECK(!test::contains(test::read_site_sheet(adequate, units::System::us), refusal));

    const review::Review& inadequate = test::reviewed_demo("heron-landing-decking-only");
    REQUIRE(inadequate.verdict == review::Verdict::inadequate);
    CHECK(banner(inadequate) == refusal);
    CHECK(test::contains(test::read_site_sheet(inadequate, units::System::us), "INADEQUATE. 15 checks fail."));

    model::BaseDetail silent = test::demo_detail("heron-landing-lags-in-deep-blocks");
    on_deck(silent).anchors.front().corrosion_protection.clear();
    const review::Review incomplete = test::reviewed(silent);
    REQUIRE(incomplete.verdict == review::Verdict::incomplete);
    CHECK(banner(incomplete) == refusal);
    const std::string text = test::read_site_sheet(incomplete, units::System::us);
    CHECK(test::contains(text, "INCOMPLETE. The lumber is treated"));
    CHECK(test::contains(text, "Corrosion protection is not specified: ASK"));
}

TEST_CASE("The same review gives the same site sheet", "[property]") {
    const review::Review& review = test::reviewed_demo("heron-landing-corner");
    const auto bytes = [&] { return paper::svg(paper::site_sheet(review, test::issue_in(units::System::us))); };
    CHECK(bytes() == bytes());
}
