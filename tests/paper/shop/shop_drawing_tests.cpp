// The shop drawing read back with poppler's tools and measured in its scenes: what it says against the model and
// against numbers worked by hand, where its views stand, and that no words meet.
#include "drawing/scene/shapes.h"
#include "drawing/scene/view.h"
#include "format/phrase.h"
#include "paper/read_back.h"
#include "paper/shop/shop_notes.h"
#include "paper/shop/weld_symbol.h"
#include "plain_svg.h"
#include "shop_samples.h"
#include "support/compare.h"
#include "support/example.h"

#include <algorithm>
#include <cmath>
#include <regex>

using namespace toehold;
using test::contains;
using test::shop::drawn;

namespace {

constexpr double mm_per_in = 25.4, points_per_mm = 72.0 / 25.4;

std::string pdf_of(const paper::Sheet& sheet) { return paper::pdf({{}, {sheet}, {}}); }

struct Word {
    double left = 0.0, top = 0.0, right = 0.0, bottom = 0.0;
    std::string words;
};

/// As poppler finds them, points from the page's top left corner.
std::vector<Word> words_of(const std::string& pdf) {
    const std::string boxes = test::read_by("pdftotext -bbox FILE -", pdf, "pdf");
    const std::regex word("<word xMin=\"([^\"]+)\" yMin=\"([^\"]+)\" xMax=\"([^\"]+)\" yMax=\"([^\"]+)\">(.*)</word>");
    std::vector<Word> words;
    for (std::sregex_iterator at(boxes.begin(), boxes.end(), word), end; at != end; ++at)
        words.push_back({std::stod((*at)[1]), std::stod((*at)[2]), std::stod((*at)[3]), std::stod((*at)[4]), (*at)[5]});
    return words;
}

/// A font's box is higher than its letters by about this share on either side.
Word letters(Word word) {
    const double air = 0.18 * std::min(word.right - word.left, word.bottom - word.top);
    return {word.left + air, word.top + air, word.right - air, word.bottom - air, word.words};
}

bool meet(const Word& one, const Word& other) {
    return one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
}

void check_words_keep_clear(const paper::Sheet& sheet) {
    constexpr double border_pt = 9.0 * points_per_mm;
    std::vector<Word> words = words_of(pdf_of(sheet));
    REQUIRE(words.size() > 80);
    std::transform(words.begin(), words.end(), words.begin(), letters);
    for (std::size_t index = 0; index < words.size(); ++index) {
        const Word& word = words[index];
        INFO(word.words);
        CHECK(word.left > border_pt);
        CHECK(word.top > border_pt);
        CHECK(word.right < sheet.size.width_mm * points_per_mm - border_pt);
        CHECK(word.bottom < sheet.size.height_mm * points_per_mm - border_pt);
        for (std::size_t other = index + 1; other < words.size(); ++other) {
            if (!meet(word, words[other])) continue;
            FAIL_CHECK("\"" << word.words << "\" meets \"" << words[other].words << "\" at " << word.left << ", "
                            << word.top);
        }
    }
}

const paper::Placed& view_named(const paper::Sheet& sheet, const std::string& name) {
    const auto found = std::find_if(sheet.placed.begin(), sheet.placed.end(),
                                    [&](const paper::Placed& placed) { return placed.scene.name == name; });
    REQUIRE(found != sheet.placed.end());
    return *found;
}

/// Where a point of the plate stands on the sheet, mm.
drawing::Point on_sheet(const paper::Placed& placed, double x_in, double y_in) {
    const drawing::View view{placed.center_in, placed.at_mm, placed.scale * mm_per_in, placed.lettering};
    return drawing::to_surface(view, drawing::Point{x_in, y_in});
}

std::string text_of(const std::string& detail, units::System system) {
    return test::pdf_text(pdf_of(drawn(test::shop::shipped(detail), system)));
}

/// Runs of blanks as one.
std::string squeezed(const std::string& text) { return std::regex_replace(text, std::regex(" +"), " "); }

}  // namespace

TEST_CASE("No words of a shop drawing meet, on any shipped detail", "[property]") {
    for (const test::shop::ShopSample& sample : test::shop::all_shipped()) {
        for (const units::System system : {units::System::us, units::System::si}) {
            INFO(sample.name << (system == units::System::si ? ", SI" : ", US"));
            check_words_keep_clear(drawn(sample.resolved, system));
        }
    }
}

TEST_CASE("No words of a shop drawing meet, on plates of all shapes", "[property]") {
    for (const test::shop::ShopSample& sample : test::shop::plates_of_all_shapes()) {
        for (const units::System system : {units::System::us, units::System::si}) {
            INFO(sample.name << (system == units::System::si ? ", SI" : ", US"));
            check_words_keep_clear(drawn(sample.resolved, system));
        }
    }
}

TEST_CASE("The views stand in third-angle alignment at one customary scale", "[property]") {
    for (const test::shop::ShopSample& sample : test::shop::plates_of_all_shapes()) {
        INFO(sample.name);
        const paper::Sheet sheet = drawn(sample.resolved, units::System::us);
        const paper::Placed& plan = view_named(sheet, "Plan");
        const paper::Placed& front = view_named(sheet, "Front");
        const paper::Placed& side = view_named(sheet, "Right side");
        CHECK(format::english(paper::scale_words(plan.scale)) != "not to scale");
        CHECK_CLOSE(front.scale, plan.scale, 0.0, 0.0);
        CHECK_CLOSE(side.scale, plan.scale, 0.0, 0.0);
        // The same x stands on one upright line, plan above; the same height on one level line, right side to the
        // right.
        CHECK_CLOSE(on_sheet(front, 1.5, 0.0).x, on_sheet(plan, 1.5, 2.0).x, 0.0, 1e-9);
        CHECK_CLOSE(on_sheet(side, -1.0, 0.25).y, on_sheet(front, 3.0, 0.25).y, 0.0, 1e-9);
        CHECK(on_sheet(plan, 0.0, plan.scene.bounds.low.y).y < on_sheet(front, 0.0, front.scene.bounds.high.y).y);
        CHECK(on_sheet(front, front.scene.bounds.high.x, 0.0).x < on_sheet(side, side.scene.bounds.low.x, 0.0).x);
        // From +x the outward direction, +y, is to the reader's right.
        CHECK(on_sheet(side, 1.0, 0.0).x > on_sheet(side, 0.0, 0.0).x);
    }
}

TEST_CASE("A length on the sheet is the plate's at the scale written", "[closed-form]") {
    // Through-bolts: an 8 in plate at 1:2 is 4 in, 101.6 mm, on paper.
    const paper::Sheet sheet = drawn(test::shop::shipped("heron-landing-through-bolts"), units::System::us);
    const paper::Placed& plan = view_named(sheet, "Plan");
    CHECK(format::english(paper::scale_words(plan.scale)) == "1:2");
    CHECK_CLOSE(on_sheet(plan, 4.0, 0.0).x - on_sheet(plan, -4.0, 0.0).x, 101.6, 0.0, 1e-9);
}

TEST_CASE("The sheet is tabloid or A3, lying, whatever smaller paper is asked for", "[process]") {
    const catalog::Resolved resolved = test::shop::shipped("heron-landing-through-bolts");
    const auto page = [](const paper::Sheet& sheet) { return test::read_by("pdfinfo", pdf_of(sheet), "pdf"); };
    CHECK(contains(squeezed(page(drawn(resolved, units::System::us))), "Page size: 1224 x 792 pts"));
    CHECK(contains(squeezed(page(drawn(resolved, units::System::si))), "Page size: 1190.55 x 841.89 pts (A3)"));
}

TEST_CASE("The shop drawing says what the detail says", "[process]") {
    // By hand from the file: 8 x 8 x 1/2 in, holes 1/2 in at +-2 3/4 in: 4 - 2.75 = 1 1/4 in from both edges, 5 1/2 in
    // apart. 7/16 in bolts: hole in wood 1/32 to 1/16 in larger, 15/32 to 1/2 in; 1/2 in is the sixteenth of the two.
    const std::string text = squeezed(text_of("heron-landing-through-bolts", units::System::us));
    for (const char* const words : {"A 1 1/4 1 1/4 \u2300 1/2 1 1/4",
                                    "C 6 3/4 6 3/4 \u2300 1/2 1 1/4",
                                    "post 4 4 center",
                                    "4 x \u2300 1/2",
                                    "4 x R 1/4",
                                    "PLAN 1:2",
                                    "FRONT 1:2",
                                    "RIGHT SIDE 1:2",
                                    "ASTM A36 steel",
                                    "Third-angle projection",
                                    "Tube 2 x 2 x 3/16 wall",
                                    "3/16 fillet all around, E70 electrode",
                                    "AWS D1.1",
                                    "Finish, not specified: by order",
                                    "60f0664738b9",
                                    "Toehold 0.5.0",
                                    "2026-11-25",
                                    "heron-landing.xml",
                                    "A, B, C, D 4 Bolt, nut 7/16 in",
                                    "ASTM A307",
                                    "hot-dip galvanized, ASTM A153",
                                    "kerf by the shop",
                                    "Common practice",
                                    "nothing of its strength"}) {
        INFO(words);
        CHECK(contains(text, words));
    }
    CHECK_FALSE(contains(text, "60f0664738b92"));
}

TEST_CASE("In SI the shop drawing has millimeters alone", "[process]") {
    // The same plate: 31.75 and 139.7 mm, thickness 12.7 mm, holes 12.7 mm.
    const std::string text = squeezed(text_of("heron-landing-through-bolts", units::System::si));
    for (const char* const words : {"A 31.8 31.8 \u2300 12.7 31.8", "12.7 mm", "Units", "\u00B1 0.8 mm"}) {
        INFO(words);
        CHECK(contains(text, words));
    }
    CHECK_FALSE(contains(text, "1/32 in"));
}

TEST_CASE("Lag screws come with the bits for shank and thread", "[process]") {
    // 7/16 in lag screw in southern pine, G = 0.55: 60 to 75 % of 0.4375 is 0.2625 to 0.328 in; the sixteenth inside is
    // 5/16 in. In mm 6.67 to 8.33, middle 7.501: 8 mm; shank 11.1 mm.
    CHECK(contains(squeezed(text_of("heron-landing-corner", units::System::us)), " 7/16 in 5/16 in"));
    CHECK(contains(squeezed(text_of("heron-landing-corner", units::System::si)), " 11.1 mm"));
}

TEST_CASE("The weld's sign is the fillet of the arrow's side, all round", "[memory]") {
    // AWS A2.4 (from memory): below the reference line for the arrow's side, upright leg to the left.
    const paper::Sheet sheet = drawn(test::shop::shipped("heron-landing-corner"), units::System::us);
    const paper::Placed& front = view_named(sheet, "Front");
    const model::PartId weld{model::PartKind::weld};
    const drawing::Path* triangle = nullptr;
    const drawing::Circle* ring = nullptr;
    const drawing::Path* reference = nullptr;
    for (const drawing::Item& item : front.scene.items) {
        if (const auto* const circle = std::get_if<drawing::Circle>(&item); circle != nullptr && circle->part == weld)
            ring = circle;
        const auto* const path = std::get_if<drawing::Path>(&item);
        if (path == nullptr || path->part != weld) continue;
        if (path->closed && path->fill == drawing::Fill::none) triangle = path;
        if (!path->closed) reference = path;
    }
    REQUIRE(triangle != nullptr);
    REQUIRE(ring != nullptr);
    REQUIRE(reference != nullptr);
    const double level = reference->contours.front().front().paper_mm.y;
    CHECK_CLOSE(ring->center.paper_mm.y, level, 0.0, 1e-9);
    CHECK_CLOSE(ring->center.paper_mm.x, reference->contours.front().front().paper_mm.x, 0.0, 1e-9);
    std::vector<drawing::Point> corners;
    for (const drawing::Place& place : triangle->contours.front()) corners.push_back(place.paper_mm);
    REQUIRE(corners.size() == 3);
    CHECK_CLOSE(corners[0].y, level, 0.0, 1e-9);
    CHECK_CLOSE(corners[1].x, corners[0].x, 0.0, 1e-9);
    CHECK(corners[1].y < level);
    CHECK(corners[2].x > corners[0].x);
    CHECK_CLOSE(corners[2].y, level, 0.0, 1e-9);
}

TEST_CASE("Other welds have the signs of their kind", "[memory]") {
    // AWS A2.4 (from memory): the single bevel of a groove, its effective throat in brackets, CJP in the tail; no
    // circle where the weld does not run all around, and a second sign above the line for the other face.
    using paper::shop::weld_sign;
    model::Weld weld{0.1875, "e70"};
    CHECK(weld_sign(weld, units::System::us, "").size == "3/16");
    CHECK(weld_sign(weld, units::System::us, "").all_around);
    weld.faces = model::WeldFaces::both;
    const paper::shop::WeldSign sides = weld_sign(weld, units::System::us, "on the outward and inward sides");
    CHECK(sides.both_faces);
    CHECK_FALSE(sides.all_around);
    CHECK(sides.tail == "on the outward and inward sides");
    weld.kind = model::WeldKind::partial_penetration;
    weld.throat_in = 0.125;
    CHECK(weld_sign(weld, units::System::us, "").size == "(1/8)");
    CHECK(weld_sign(weld, units::System::us, "").groove);
    weld.kind = model::WeldKind::complete_penetration;
    CHECK(weld_sign(weld, units::System::us, "").size.empty());
    CHECK(weld_sign(weld, units::System::us, "").tail == "CJP");

    const auto count = [](const paper::shop::WeldSign& sign) {
        drawing::Scene scene;
        add_weld_sign(scene, drawing::standing({0.0, 0.0}), sign);
        int paths = 0, circles = 0;
        for (const drawing::Item& item : scene.items) {
            paths += std::holds_alternative<drawing::Path>(item) ? 1 : 0;
            circles += std::holds_alternative<drawing::Circle>(item) ? 1 : 0;
        }
        return std::pair{paths, circles};
    };
    const auto fillet = count({"3/16", false, true, false, ""});
    CHECK(fillet.second == 1);
    // One more sign; a bevel is two lines where a triangle is one path; a tail is two lines more.
    CHECK(count({"3/16", false, true, true, ""}).first == fillet.first + 1);
    CHECK(count({"", true, true, false, "CJP"}).first == fillet.first + 3);
    CHECK(count({"3/16", false, false, false, "on the right side"}).second == 0);
}

TEST_CASE("A weld on two sides and gussets are in the shop's words", "[process]") {
    catalog::Resolved resolved = test::shop::shipped("heron-landing-corner");
    model::Weld& weld = *on_deck(resolved.detail).weld;
    weld.sides = {true, true, false, false};
    weld.faces = model::WeldFaces::both;
    weld.gussets = model::Gussets{{true, true, false, false}, 2.0, 1.5, 0.25, 0.125};
    const std::string words = format::english(paper::shop::weld_words(resolved, units::System::us));
    CHECK(contains(words, "fillet on the outward and inward sides, above and below the plate"));
    CHECK(contains(words, "2 gussets 2 in high x 1 1/2 in long x 1/4 in"));
    CHECK(contains(squeezed(test::pdf_text(pdf_of(drawn(resolved, units::System::us)))), "on the outward and inward"));
}

TEST_CASE("What is not described is not made up", "[process]") {
    for (const test::shop::ShopSample& sample : test::shop::plates_of_all_shapes()) {
        if (sample.name != "wood post") continue;
        const std::string text = squeezed(test::pdf_text(pdf_of(drawn(sample.resolved, units::System::us))));
        CHECK(contains(text, "none; shoe bolted, its bolts"));
        CHECK_FALSE(contains(text, "Weld to"));
        CHECK(contains(text, "Shoe 4 x 4 x 3/16 wall, 3 high"));
    }
}

TEST_CASE("Holes beyond the sheet's room are counted, not dropped in silence", "[process]") {
    for (const test::shop::ShopSample& sample : test::shop::plates_of_all_shapes()) {
        if (sample.name != "crowded") continue;
        const std::string text = squeezed(test::pdf_text(pdf_of(drawn(sample.resolved, units::System::us))));
        CHECK(std::regex_search(text, std::regex("[0-9]+ more holes: see the cutting file")));
    }
}

TEST_CASE("Corners of a plate with sides aslant are numbered and listed", "[process]") {
    // Corner 1 at 2 pi 0.3 / 14: x = 4.5 cos 0.13464 = 4.4593, y = 4 sin 0.13464 = 0.5370; leftmost -4.4593, lowest
    // -4 sin(2 pi 10.3 / 14 ...) = -3.9840: from there 8.919 and 4.521 in.
    for (const test::shop::ShopSample& sample : test::shop::plates_of_all_shapes()) {
        const std::string text = squeezed(test::pdf_text(pdf_of(drawn(sample.resolved, units::System::us))));
        CHECK(contains(text, "CORNERS OF THE OUTLINE") == (sample.name == "many-sided"));
        if (sample.name == "many-sided") CHECK(contains(text, " 1 8.919 4.521"));
    }
}

TEST_CASE("A steel plate's drawing and cutting file are as they were kept", "[process]") {
    const catalog::Resolved resolved = test::shop::shipped("heron-landing-through-bolts");
    CHECK(test::is_as_kept("through-bolts-shop-drawing.svg", test::plain_svg(drawn(resolved, units::System::us))));
    CHECK(test::is_as_kept("through-bolts-plate.dxf",
                           paper::cutting_file(on_deck(resolved.detail).plate, {units::System::us})));
}

TEST_CASE("The same detail gives the same drawing", "[property]") {
    const catalog::Resolved resolved = test::shop::shipped("heron-landing-corner");
    CHECK(paper::svg(drawn(resolved, units::System::us)) == paper::svg(drawn(resolved, units::System::us)));
    CHECK(pdf_of(drawn(resolved, units::System::us)) == pdf_of(drawn(resolved, units::System::us)));
}

TEST_CASE("The shop is told how many pieces of packing to cut, and how high", "[paper][unit]") {
    catalog::Resolved resolved = test::example_resolved();
    on_deck(resolved.detail).layers.packing =
        model::Packing{model::PackingShape::round, 1.5, 0.0, "packing-steel", 0.0, {}};
    const auto has = [&](const std::string& words) {
        const auto notes = paper::shop::shop_notes(resolved, {});
        return std::any_of(notes.begin(), notes.end(),
                           [&](const std::string& note) { return note.find(words) != std::string::npos; });
    };
    CHECK(has("Packing: 4 of packing-steel, ⌀ 1 1/2 x 1 high."));
    on_deck(resolved.detail).layers.packing.reset();
    CHECK_FALSE(has("Packing"));
}
