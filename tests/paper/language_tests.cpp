// Papers in another language: what the catalogue translates stands on them translated, and names a person gave stay.
#include "format/catalogue.h"
#include "paper/issue.h"
#include "paper/report/report_sample.h"
#include "paper/shop/shop_samples.h"
#include "paper/words.h"
#include "review/comparison.h"
#include "review/review.h"
#include "support/compare.h"
#include "support/contains.h"
#include "support/shipped.h"

using namespace toehold;
using test::contains;

namespace {

paper::Issue french_issue() {
    paper::Issue issue = test::report_issue("end-nailed-blocks");
    issue.locale.catalogue = std::make_shared<const format::Catalogue>(std::map<std::string, std::string, std::less<>>{
        {"anchor {}", "ancrage {}"},
        {"block {}", "cale {}"},
        {"joist {}", "solive {}"},
        {"{} at {}", "{} à {}"},
        {"{} and {}", "{} et {}"},
        {"FAIL", "NON CONFORME"},
        {"INADEQUATE", "INSUFFISANT"},
        {"Demand at the anchors", "Sollicitation des ancrages"},
        {"Page {} of {}", "Page {} sur {}"},
        {"not to scale", "sans échelle"},
        {"part", "pièce"},
        {"{} toe-nails {}, half on each side", "{} clous en biais {}"},
        {"Blocks {} are held at their ends.", "Les cales {} tiennent à leurs bouts."},
        {"DO NOT BUILD THIS AS DRAWN", "NE PAS CONSTRUIRE AINSI"},
        {"DO NOT", "NE PAS"},
        {"Blocks {}: {}, {} long.", "Cales {} : {}, longueur {}."},
        {"OUTWARD", "DEHORS"},
        {"HOLES AND SLOTS", "TROUS ET LUMIÈRES"},
        {"RIGHT SIDE", "CÔTÉ DROIT"},
        {"Third-angle projection", "Projection du troisième dièdre"},
        {"Open comments", "Remarques ouvertes"},
        {"The verdict changes: {} is {}, {} is {}.", "Le verdict change : {} est {}, {} est {}."}});
    return issue;
}

std::string words_of(const paper::Sheet& sheet) {
    std::string words;
    for (const paper::Placed& placed : sheet.placed) {
        for (const drawing::Item& item : placed.scene.items) {
            if (const auto* const text = std::get_if<drawing::Text>(&item)) words += text->words + "\n";
        }
    }
    return words;
}

}  // namespace

TEST_CASE("A report speaks the language of its issue", "[unit]") {
    const review::Review& review = test::reported("end-nailed-blocks");
    const paper::Document report = paper::calculation_report(review, french_issue());
    const std::string words = test::words_of(report);
    CHECK(contains(words, "INSUFFISANT"));
    CHECK(contains(words, "4  Sollicitation des ancrages"));
    CHECK(contains(words, "NON CONFORME"));
    CHECK(contains(words, "cale B2 à solive J2"));
    CHECK(contains(words, "Les cales B1 et B2 tiennent à leurs bouts."));
    CHECK(contains(words, review.detail));
    CHECK_FALSE(contains(words, "FAIL\n"));
    CHECK_FALSE(contains(words, "block B2 at joist J2"));
    const paper::Book book = paper::lay_out(report);
    CHECK(contains(words_of(book.sheets.back()),
                   "Page " + std::to_string(book.sheets.size()) + " sur " + std::to_string(book.sheets.size())));
    CHECK(contains(words_of(book.sheets.at(2)) + words_of(book.sheets.at(3)), "pièce") == contains(words, "pièce"));
}

TEST_CASE("A site sheet speaks the language of its issue", "[unit]") {
    const std::string words = words_of(paper::site_sheet(test::reported("end-nailed-blocks"), french_issue()));
    CHECK(contains(words, "NE PAS CONSTRUIRE AINSI"));
    CHECK(contains(words, "Cales B1 et B2 : "));
    CHECK(contains(words, "▲ DEHORS ▲"));
    CHECK(contains(words, "\nNE PAS\n"));
    CHECK_FALSE(contains(words, "Blocks B1"));
}

TEST_CASE("A shop drawing speaks the language of its issue", "[unit]") {
    const std::string words =
        words_of(paper::shop_drawing(test::shop::shipped("heron-landing-end-nailed-blocks"), "", french_issue()));
    CHECK(contains(words, "TROUS ET LUMIÈRES"));
    CHECK(contains(words, "CÔTÉ DROIT  1:"));
    CHECK(contains(words, "Projection du troisième dièdre"));
    CHECK_FALSE(contains(words, "HOLES AND SLOTS"));
}

TEST_CASE("A letter speaks the language of its issue, and keeps the reviewer's words", "[unit]") {
    review::Review review = test::reported("end-nailed-blocks");
    review.resolved.detail.remarks = {
        {"anchor-withdrawal", "anchor B", "Show the pilot holes.", "A. Reviewer", "", model::Remark::State::open}};
    const std::string words = test::words_of(paper::comment_letter(review, french_issue()));
    CHECK(contains(words, "Remarques ouvertes"));
    CHECK(contains(words, "C1  Anchor withdrawal, ancrage B"));
    CHECK(contains(words, "Show the pilot holes."));
}

TEST_CASE("A comparison speaks the language of its issue, and keeps the labels", "[unit]") {
    const review::Review& first = test::reported("end-nailed-blocks");
    review::Review second = first;
    second.verdict = review::Verdict::adequate;
    const std::string words =
        test::words_of(paper::comparison_report(review::compare(first, "FAIL", second, "our own"), french_issue()));
    CHECK(contains(words, "Le verdict change : FAIL est INSUFFISANT, our own est ADEQUATE."));
}

TEST_CASE("A quantity within a sentence is written as it is by hand", "[unit]") {
    using format::Dimension;
    using format::phrase;
    using format::Quantity;
    const format::Locale us, si{units::System::si};
    CHECK(paper::written(phrase("{} of contact", Quantity{1.5, "in2"}), us) == "1.5 in² of contact");
    CHECK(paper::written(phrase("a {}", phrase("residual {}", Quantity{3.61e-14, ""})), us) == "a residual 3.61·10⁻¹⁴");
    CHECK(paper::written(phrase("{}", format::Listed{{phrase("{}", Quantity{1000.0, "lb in"}), phrase("b")}}), us) ==
          "1000 lb·in and b");
    CHECK(paper::written(phrase("wall {}", Dimension{0.1875}), us) == "wall 3/16 in");
    CHECK(paper::written(phrase("wall {}", Dimension{0.25}), si) == "wall 6.35 mm");
}

TEST_CASE("Parts of one kind are named together", "[unit]") {
    using model::PartKind;
    const auto named = [](const std::vector<model::PartId>& parts) {
        return format::english(paper::named_together(parts));
    };
    const model::PartId first{PartKind::joist, "J1"}, second{PartKind::joist, "J2"}, beam{PartKind::beam, "S2"};
    CHECK(named({model::anchor_part("A"), model::anchor_part("B"), model::anchor_part("a name")}) ==
          "anchors A, B and a name");
    CHECK(named({model::held_at(first, beam), model::held_at(second, beam)}) == "joists J1 and J2 at beam S2");
    CHECK(named({model::anchor_part("A"), {PartKind::block, "B1"}}) == "anchor A and block B1");
    CHECK(named({{PartKind::weld}}) == "weld");
}
