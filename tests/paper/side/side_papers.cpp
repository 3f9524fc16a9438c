// The papers of a post beside a rim: words stand clear of each other, and what a builder needs is on them.
#include "drawing/annotation/overlay.h"
#include "drawing/drawings.h"
#include "drawing/render/lettering.h"
#include "drawing/scene/view.h"
#include "paper/bill/bill.h"
#include "paper/issue.h"
#include "paper/page/site_page.h"
#include "paper/paper_file.h"
#include "paper/project/plate_papers.h"
#include "paper/read_back.h"
#include "paper/report/report_sample.h"
#include "paper/site/instructions.h"
#include "paper/site/site_sample.h"
#include "support/beside_rim.h"
#include "support/contains.h"
#include "support/shipped.h"

#include <catch2/catch.hpp>

#include <numbers>

using namespace toehold;
using test::contains;

namespace {

constexpr units::System systems[] = {units::System::us, units::System::si};

/// Not solved: what the papers say of the detail itself.
review::Review unsolved(const model::BaseDetail& detail) {
    review::Review review;
    review.detail = detail.name;
    review.input_sha256 = "0123456789abcdef";
    review.resolved = test::resolved_by_shipped(detail);
    return review;
}

std::vector<model::BaseDetail> samples() {
    model::BaseDetail tied = test::beside_rim(), inside = test::beside_rim();
    on_side(tied).ties = {test::tie_to_joist()};
    on_side(inside).face = model::MemberFace::inside;
    inside.framing.rims.front().at_in = 3.25;
    return {test::beside_rim(), test::bracket_beside_rim(), tied, inside};
}

drawing::Overlay overlay_of(const catalog::Resolved& resolved) {
    drawing::Overlay overlay;
    overlay.push = drawing::PushShown{0.5 * std::numbers::pi, 500.0, 0.0, 37.0, true};
    for (const catalog::Anchor& anchor : resolved.anchors) {
        drawing::AnchorMark mark;
        mark.part = model::anchor_part(anchor.id);
        mark.tension_lb = mark.largest_tension_lb = 2000.0;
        mark.shear_lb = 100.0;
        mark.ratio = 1.25;
        mark.status = checks::Status::fails;
        mark.capacity_lb = 1600.0;
        overlay.anchors.push_back(mark);
    }
    overlay.bearings = {{{model::PartKind::rim, "R1"}, 2150.0, 400.0, 1.75, -9.25, -6.25}};
    overlay.ties_lb.assign(on_side(resolved.detail).ties.size(), 1200.0);
    return overlay;
}

/// As a report's figure: words that have no room stand aside.
paper::Sheet figure_of(drawing::Scene scene) {
    constexpr double lettering = 0.68;
    paper::Sheet sheet{{240.0, 200.0}, {}, {}, {}};
    sheet.placed.push_back(paper::placed_to_fit(std::move(scene), {20.0, 20.0, 110.0, 84.0}, lettering));
    paper::Placed& placed = sheet.placed.front();
    const drawing::View view{placed.center_in, {}, 25.4 * placed.scale / lettering, 1.0};
    for (drawing::Item& item : placed.scene.items) {
        if (auto* const text = std::get_if<drawing::Text>(&item))
            *text =
                drawing::placed(*text, drawing::text_width_mm(text->words, {text->size, text->bold, text->math}), view);
    }
    return sheet;
}

std::string all_words(const paper::site::Instructions& list) {
    std::string words;
    for (const paper::site::Instruction& one : list)
        words += format::english(one.lead) + " " + format::english(one.words) + "\n";
    return words;
}

}  // namespace

TEST_CASE("No words of a side's drawings stand over others", "[side][property]") {
    for (const model::BaseDetail& detail : samples()) {
        const catalog::Resolved resolved = test::resolved_by_shipped(detail);
        const drawing::Overlay forces = overlay_of(resolved);
        for (const drawing::Overlay* const overlay : {static_cast<const drawing::Overlay*>(nullptr), &forces}) {
            for (const units::System system : systems) {
                const drawing::Subject subject{detail, &resolved, overlay, {system, nullptr}};
                for (const drawing::Scene& scene : {drawing::plan(subject, {}), drawing::section(subject, {}),
                                                    drawing::elevation(subject), drawing::from_above(subject)}) {
                    INFO(scene.name << " with forces: " << (overlay != nullptr) << ", " << on_side(detail).ties.size());
                    CHECK(test::overlaps(test::words_on(figure_of(scene))) == std::vector<std::string>{});
                }
            }
        }
    }
}

TEST_CASE("A side's site sheet keeps its words apart and on the page", "[side][property]") {
    for (const model::BaseDetail& detail : samples()) {
        for (const units::System system : systems) {
            const paper::Sheet sheet = paper::site_sheet(unsolved(detail), test::issue_in(system));
            CHECK(test::overlaps(test::words_on(sheet)) == std::vector<std::string>{});
            CHECK(test::off_the_page(sheet) == std::vector<std::string>{});
        }
    }
}

// A bolt's grip: washer 0.109, post 3 1/2, rim 3, washer 0.109: 6.718, to a sixteenth 6 11/16.
TEST_CASE("The site sheet says where holes go, what they hold and what lies behind", "[side]") {
    model::BaseDetail detail = test::beside_rim();
    on_side(detail).ties = {test::tie_to_joist()};
    const catalog::Resolved resolved = test::resolved_by_shipped(detail);
    const paper::site::AllInstructions all = paper::site::all_instructions({resolved, units::System::us});
    const std::string in = all_words(all.in);
    for (const char* const words :
         {"Post: 4x4, ", "outside rim R1.", "Its lower end 9 1/4 in below the top of the member.",
          "U 2 in down, on the center line and L 6 1/2 in down, on the center line", "2 bolts 1/2 in",
          "Under each head: washer 1 3/8 in across", "Grip, head to nut: 6 11/16 in.",
          "Bored level and square through post and member together", "Tie T1: hold-down.",
          "T1 2 in down, 1 3/4 in left, to joist J2.", "Required allowable tension: 1800 lb"}) {
        INFO(words);
        CHECK(contains(in, words));
    }
    CHECK(contains(all_words(all.look), "Post tight on R1"));
    CHECK(contains(all_words(all.dont), "notch the post"));
    CHECK_FALSE(contains(in + all_words(all.look) + all_words(all.dont), "plate"));
}

TEST_CASE("A side's report describes its own parts", "[side]") {
    const std::string words = test::words_of(paper::calculation_report(unsolved(test::bracket_beside_rim()), {}));
    for (const char* const expected :
         {"What carries: post, tube 2 in x 2 in", "bracket plate 3/4 in thick, on the outside face of rim R1",
          "6 in wide, 7 in high, 3/4 in thick", "upper edge 1 in below its top edge", "Fastened",
          "from the top edge of the member: A 2 in below it, at x = -2 in", "1/2 in wide washer under the head"}) {
        INFO(expected);
        CHECK(contains(words, expected));
    }
    CHECK(test::words_of(paper::calculation_report(unsolved(test::beside_rim()), {})).find("underside of the plate") ==
          std::string::npos);
}

TEST_CASE("The shop makes a bracket's plate, and nothing where there is none", "[side]") {
    const review::Review bracket = unsolved(test::bracket_beside_rim()), post = unsolved(test::beside_rim());
    const paper::Sheet sheet = paper::shop_drawing(bracket.resolved, bracket.input_sha256, test::issue_in(systems[0]));
    CHECK(test::overlaps(test::words_on(sheet)) == std::vector<std::string>{});
    std::string words;
    for (const test::SheetWords& one : test::words_on(sheet)) words += one.words + "\n";
    for (const char* const expected : {"Bracket plate", "FACE, POST'S SIDE", "3/4 in", "ASTM A36", "3/16"}) {
        INFO(expected);
        CHECK(contains(words, expected));
    }
    CHECK(paper::why_not(paper::Kind::shop_drawing, bracket.resolved.detail).empty());
    CHECK(contains(format::english(paper::why_not(paper::Kind::shop_drawing, post.resolved.detail)),
                   "nothing to cut in metal"));
    CHECK_THROWS_AS(paper::paper_file(paper::Kind::shop_drawing, "pdf", post, {}), std::invalid_argument);
    const std::string cutting = paper::paper_file(paper::Kind::shop_drawing, "dxf", bracket, {});
    CHECK(contains(cutting, "CIRCLE"));
}

// 36 in of guard over boards 1 in thick on the rim: 37 in above the rim's top, and 9 1/4 below it.
TEST_CASE("The bill has the post's whole length, bolts with their washers and ties", "[side]") {
    model::BaseDetail detail = test::beside_rim();
    on_side(detail).ties = {test::tie_to_joist()};
    model::Project project;
    project.framing = detail.framing;
    model::PlacedPost post;
    post.id = "P1";
    post.mount = "M1";
    const std::vector<review::ResolvedPost> posts{{post, test::resolved_by_shipped(detail)}};
    const paper::Bill bill = paper::bill_of_materials(project, posts, units::System::us);
    REQUIRE(!bill.items.empty());
    CHECK(bill.items.front().length_in == 46.25);
    const std::string text = paper::bill_text(bill, {});
    for (const char* const words : {"Wood post 3 1/2 x 3 1/2 in", "1/2 in wide washer", "hold-down, report invented"}) {
        INFO(words);
        CHECK(contains(text, words));
    }
    CHECK_FALSE(contains(text, "Base plate"));
    CHECK_FALSE(contains(text, "together"));  // nothing is weighed
    CHECK(paper::plate_papers("pdf", posts, "", {}).empty());
}

TEST_CASE("Each view of a side's post becomes a file", "[side]") {
    const review::Review review = unsolved(test::beside_rim());
    for (const paper::Kind kind : {paper::Kind::plan, paper::Kind::section, paper::Kind::elevation})
        CHECK(contains(paper::paper_file(kind, "svg", review, test::issue_in(systems[0])), "<svg"));
    CHECK(contains(paper::paper_file(paper::Kind::site_sheet, "html", review, test::issue_in(systems[0])), "9 1/4 in"));
}
