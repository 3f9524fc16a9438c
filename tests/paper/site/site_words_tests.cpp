// What a builder reads on the sheet, found there by a reader of others, against figures worked by hand.
#include "paper/read_back.h"
#include "paper/site/instructions.h"
#include "paper/site/site_sample.h"
#include "paper/site/wording.h"
#include "paper/words.h"
#include "support/compare.h"
#include "support/example.h"

#include <algorithm>

using namespace toehold;
using test::contains;
using units::System;

namespace {

std::string sheet_text(const std::string& demo, System system) {
    return test::read_site_sheet(test::reviewed_demo(demo), system);
}

std::string joined(const paper::site::Instructions& instructions) {
    std::string all;
    for (const auto& one : instructions) all += format::english(one.lead) + " " + format::english(one.words) + "\n";
    return all;
}

}  // namespace

TEST_CASE("Lag screws into deep blocks: blocks, ends, anchors and pilot holes in inches", "[closed-form]") {
    const std::string text = sheet_text("heron-landing-lags-in-deep-blocks", System::us);
    // 3 1/2 x 7 1/4 in is a 4x8 dressed (NDS Supplement 2018 Table 1B, from memory). From face to face of J2 at -8 and
    // J3 at 8, 1 1/2 in thick: 16 - 1 1/2 = 14 1/2 in.
    CHECK(contains(text, "Blocks B1 and B2: 4x8 on edge, 14 1/2 in long."));
    CHECK(contains(text, "3 1/2 wide x 7 1/4 in deep. Southern Pine No. 2, treated."));
    // Rim's inner face at 9 3/4 - 3/4 = 9 in; B2's outer face at 3 3/4 + 1 3/4 = 5 1/2, B1's at -2 in.
    CHECK(contains(text, "Clear of rim R1: B1 11 in; B2 3 1/2 in."));
    CHECK(contains(text, "Each end of B1 and B2: angle on both sides of the block."));
    CHECK(contains(text, "Required allowable, lb: 1600 up, 1600 down, 700 lateral and 900 pull-off."));
    CHECK(contains(text, "4 lag screws 7/16 in x 8 in, into B1 (A, B) and B2 (C, D)."));
    // G = 0.55: 60 to 75 % of 7/16 is 0.263 to 0.328 in, and 5/16 = 0.3125 is in it (NDS 2018 12.1.4). Under the head
    // stand 5/8 in of plate and 0.083 in of washer: 8 - 0.708 = 7.292 in below the plate, 7 5/16 to the nearest
    // sixteenth; 6 5/16 below the 1 in boards. Thread 8/2 + 1/2 = 4 1/2 in, so shank 3 1/2 - 0.708 = 2.792, 2 13/16 in.
    CHECK(contains(text, "Pilot holes: 7/16 in, then 5/16 in."));
    CHECK(
        contains(text, "7/16 in to 2 13/16 in deep for the shank, then 5/16 in to 7 5/16 in deep (NDS 2018 12.1.4)."));
    CHECK(contains(text, "Under each head: washer 1 1/4 in across, 0.083 in thick."));
    // 4 1/2 - 9/32 of tip = 4.219 in.
    CHECK(contains(text, "In the wood: 6 5/16 in, of it 4 1/4 in full thread."));
    CHECK(contains(text, "hammer in a lag screw (NDS 2018 12.1.4)."));
}

TEST_CASE("The same sheet in millimeters keeps the trade's names of lumber", "[closed-form]") {
    const std::string text = sheet_text("heron-landing-lags-in-deep-blocks", System::si);
    CHECK(contains(text, "Blocks B1 and B2: 4x8 on edge, 368 mm long."));
    CHECK(contains(text, "89 wide x 184 mm deep."));
    CHECK(contains(text, "Clear of rim R1: B1 279 mm; B2 89 mm."));
    // 1600 lb x 4.4482 = 7117 N.
    CHECK(contains(text, "Required allowable, N: 7117 up"));
    CHECK(contains(text, "4 lag screws 7/16 in (11.1 mm) x 203 mm"));
    // 6.67 to 8.33 mm: 8 is nearer to the middle, 7.501, than 7. 7/16 in is 11.1 mm. 7.292 in is 185.2 mm.
    CHECK(contains(text, "Pilot holes: 11.1 mm, then 8 mm."));
    CHECK(contains(text, "then 8 mm to 185 mm deep"));
    CHECK(contains(text, "Millimeters."));
}

TEST_CASE("End nails, angles with bolts and through-bolts in the trade's words", "[closed-form]") {
    // 0.162 x 3 1/2 in is a 16d common nail (NDS 2018 Appendix L, Table L4, from memory); three over 4 in: 2 in apart.
    const std::string nailed = sheet_text("heron-landing-end-nailed-blocks", System::us);
    CHECK(contains(nailed, "Blocks B1 and B2: 2x8 on edge, 14 1/2 in long."));
    CHECK(contains(nailed, "Each end of B1 and B2: 3 nails 16d common, 0.162 x 3 1/2 in."));
    CHECK(contains(nailed, "one above the other 2 in apart."));
    const std::string angles = sheet_text("heron-landing-bolted-angles", System::us);
    CHECK(contains(angles, "steel angle 1/4 in thick on both sides; 3 bolts 3/8 in in each leg."));
    CHECK(contains(angles, "Fasteners 1 3/4 in apart, 1 1/2 in from the corner."));
    // 3/8 + 1/32 to 3/8 + 1/16 in (NDS 2018 12.1.3): 7/16.
    CHECK(contains(angles, "Bolt holes 7/16 in;"));
    const std::string bolts = sheet_text("heron-landing-two-flat-blocks", System::us);
    CHECK(contains(bolts, "4x8 laid flat, 14 1/2 in long."));
    CHECK(contains(bolts, "4 bolts 7/16 in ASTM A307"));
    CHECK(contains(bolts, "a steel plate 2 1/2 x 2 1/2 x 1/4 in."));
    // 0.083 of washer, 5/8 of plate, 1 of boards, 3 1/2 of block, 1/4 of steel: 5.458 in.
    CHECK(contains(bolts, "Grip, head to nut: 5 7/16 in."));
    CHECK(contains(bolts, "Bolt holes: 1/2 in."));
}

TEST_CASE("What has nothing under it, or nothing that holds it, is said in capitals", "[unit]") {
    CHECK(contains(sheet_text("heron-landing-decking-only", System::us), "NO FRAMING UNDER THEM."));
    CHECK(contains(sheet_text("heron-landing-decking-only", System::us), "No blocks are specified."));
    CHECK(contains(sheet_text("heron-landing-decking-only", System::us), "4 wood screws No. 14 x 2 1/2 in"));
    model::BaseDetail detail = test::demo_detail("heron-landing-lags-in-deep-blocks");
    detail.framing.blocks.at(0).to_end.connection = std::monostate{};
    const std::string text = test::read_site_sheet(test::reviewed(detail), System::us);
    CHECK(contains(text, "Ends of B1 at J3: NO FASTENERS ARE SPECIFIED."));
    CHECK(contains(text, "Ends of B1 at J2, B2 at J2 and B2 at J3: angle on both sides"));
}

TEST_CASE("A block against a rim is tight against it", "[unit]") {
    // Rim's inner face at 6 1/2 - 3/4 = 5 3/4 in, B2's outer face at 3 3/4 + 1 3/4 = 5 1/2 in.
    CHECK(contains(sheet_text("heron-landing-beside-the-rim", System::us), "Clear of rim R1: B1 7 3/4 in; B2 1/4 in."));
    model::BaseDetail detail = test::demo_detail("heron-landing-beside-the-rim");
    detail.framing.blocks.at(1).across_in = 4.0;
    CHECK(contains(test::read_site_sheet(test::reviewed(detail), System::us), "B1 7 3/4 in; B2 tight against it."));
}

TEST_CASE("Lists hold only what the detail has", "[unit]") {
    const catalog::Resolved lags = test::reviewed_demo("heron-landing-lags-in-deep-blocks").resolved;
    const catalog::Resolved bolts = test::reviewed_demo("heron-landing-two-flat-blocks").resolved;
    using namespace paper::site;
    CHECK(contains(joined(do_not({lags})), "hammer in a lag screw"));
    CHECK(!contains(joined(do_not({bolts})), "hammer"));
    CHECK(contains(joined(look_for({bolts})), "Nuts snug"));
    CHECK(!contains(joined(look_for({lags})), "Nuts"));
    CHECK(contains(joined(do_not({lags})), "shim: no shim is drawn"));
    catalog::Resolved changed = lags;
    on_deck(changed.detail).layers.shims = {{"shim-hdpe", 0.125}};
    changed.detail.framing.preservative_treated = false;
    CHECK(contains(joined(do_not({changed})), "add shims that are not drawn"));
    CHECK(!contains(joined(look_for({changed})), "galvanized"));
    CHECK(!contains(joined(look_for({changed})), "preservative"));
}

TEST_CASE("Toe-nails start a third of their length from the end, at about 30 degrees", "[published][A19]") {
    // The rule was read in a public transcription (NDS 2018 12.1.6.3). Two on each side, 2 in from the upper to the
    // lower.
    const model::EndConnection nails = model::ToeNails{0.131, 2.5, 4, 2.0};
    const paper::site::Fastening words =
        paper::site::fastening_words(nails, model::MemberKind::joist, 0.55, System::us);
    CHECK(format::english(words.what) == "4 toe-nails 8d common, 0.131 x 2 1/2 in.");
    // 2.5 / 3 = 0.833, 13/16 to the nearest sixteenth.
    CHECK(contains(format::english(words.how),
                   "Half on each side of the block, 2 in apart. Start 13/16 in from its end, at about 30 degrees"));
    // 0.5.0 named 12.1.6.4.
    CHECK(contains(format::english(words.how), "NDS 2018 12.1.6.3"));
}

TEST_CASE("Nominal sizes are named only where the dressed size is theirs", "[memory]") {
    // NDS Supplement 2018 Tables 1A and 1B (from memory): 2 to 4 in thick lose 1/2 in, faces of 8 in and more 3/4 in;
    // timbers lose 1/2 in green, dry as much as lumber less than 5 in thick.
    using paper::site::nominal_size;
    CHECK(nominal_size(1.5, 5.5) == "2x6");
    CHECK(nominal_size(1.5, 7.25) == "2x8");
    CHECK(nominal_size(1.5, 11.25) == "2x12");
    CHECK(nominal_size(3.5, 3.5) == "4x4");
    CHECK(nominal_size(3.5, 9.25) == "4x10");
    CHECK(nominal_size(5.5, 5.5) == "6x6");
    CHECK(nominal_size(5.5, 7.5) == "6x8");
    CHECK(nominal_size(5.5, 7.25) == "6x8");
    CHECK(nominal_size(5.5, 7.0).empty());
    CHECK(nominal_size(1.5, 7.5).empty());
    CHECK(nominal_size(1.75, 7.25).empty());
}

TEST_CASE("Lengths are a tape's", "[unit]") {
    using namespace paper::site;
    CHECK(tape_words(5.4375, System::us) == "5 7/16 in");
    CHECK(tape_words(5.45, System::us) == "5 7/16 in");
    CHECK(tape_words(0.02, System::us) == "0 in");
    CHECK(tape_words(14.5, System::si) == "368 mm");
    CHECK(toehold::paper::bit_words(0.2625, 0.328, System::us) == "5/16 in");
    CHECK(toehold::paper::bit_words(0.15, 0.26, System::us) == "3/16 in");
    CHECK(toehold::paper::bit_words(0.15, 0.26, System::si) == "5 mm");
    CHECK(toehold::paper::bit_words(1.0, 1.1, System::us) == "1 1/16 in");
    CHECK(format::english(format::phrase("{}", toehold::paper::listed({"A", "B", "C"}))) == "A, B and C");
    CHECK(penny_size(0.148, 3.0) == "10d");
    CHECK(penny_size(0.148, 3.5).empty());
}

TEST_CASE("The builder reads what packing goes through the boards, and of one piece below all bolts", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    on_deck(resolved.detail).layers.packing =
        model::Packing{model::PackingShape::rectangle, 2.0, 1.5, "packing-steel", 0.0, {}};
    on_deck(resolved).packing = catalog::DeckingMaterial{
        "packing-steel", "Steel packing", catalog::DeckingKind::metal, 29e6, true, 32400.0, "", {}};
    CHECK(
        contains(joined(paper::site::look_for({resolved, System::us})),
                 "Packing through the boards: Steel packing, 2 x 1 1/2 in, tight under the plate, down on the wood."));
    for (catalog::Anchor& anchor : resolved.anchors) {
        anchor.kind = catalog::FastenerKind::through_bolt;
        anchor.bolt_grade = catalog::BoltGrade{"a307", "ASTM A307", 45000.0, 27000.0, {}};
        anchor.lower = model::LowerPlate{model::LowerShape::plate, {}, 8.0, 3.0, 0.25, 0.0, "steel-a36"};
        anchor.embedment_in = 5.5;
    }
    CHECK(contains(joined(paper::site::anchor_instructions({resolved, System::us})),
                   "Under the wood one piece 8 x 3 x 1/4 in for all bolts."));
}
