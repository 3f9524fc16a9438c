// Findings about metals: the weld's least leg and its filler, corrosion in treated lumber, and metals that do not go
// together.
#include "checks/run_check.h"
#include "checks/steel_examples.h"

#include <catch2/catch.hpp>

using namespace toehold;
using catalog::MetalKind;
using checks::Finding;
using checks::Severity;
using test::run_finding;

namespace {

catalog::Resolved protected_by(const std::string& words) {
    catalog::Resolved resolved = test::example_resolved();
    on_deck(resolved.detail).anchors[0].corrosion_protection = words;
    return resolved;
}

/// The only finding of the rule, which there must be.
Finding only(const std::string& rule, const catalog::Resolved& resolved) {
    const std::vector<Finding> findings = run_finding(rule, resolved);
    REQUIRE(findings.size() == 1);
    return findings[0];
}

}  // namespace

// 0.5.0 passed this with a note.
TEST_CASE("A fillet below the table's least leg fails", "[unit][A4]") {
    // AISC 360-16 Table J2.4: wall 1/8 in, at least 1/8 in.
    catalog::Resolved resolved = test::example_resolved();
    CHECK(run_finding("weld-too-small", resolved).empty());
    on_deck(resolved.detail).weld->leg_in = 0.125;
    CHECK(run_finding("weld-too-small", resolved).empty());
    on_deck(resolved.detail).weld->leg_in = 0.0625;
    const Finding finding = only("weld-too-small", resolved);
    CHECK(finding.severity == Severity::fails);
    CHECK(test::about(finding) == "weld");
    CHECK(finding.clause.find("Table J2.4") != std::string::npos);
    CHECK(test::says(finding.message, "1/8"));
    // A 3/8 in plate under a 1/2 in wall: the plate is the thinner, at least 3/16 in.
    std::get<model::RectangularTube>(resolved.detail.post).wall_in = 0.5;
    on_deck(resolved.detail).weld->leg_in = 0.125;
    CHECK(only("weld-too-small", resolved).severity == Severity::fails);
    on_deck(resolved.detail).weld->leg_in = 0.1875;
    CHECK(run_finding("weld-too-small", resolved).empty());
}

TEST_CASE("A groove below the table's least throat fails", "[unit]") {
    // AISC 360-16 Table J2.3: wall 1/4 in, at least 1/8 in; a 3/8 in plate under a 1/2 in wall, at least 3/16.
    catalog::Resolved resolved = test::example_resolved();
    auto& wall_in = std::get<model::RectangularTube>(resolved.detail.post).wall_in;
    model::Weld& weld = *on_deck(resolved.detail).weld;
    weld.kind = model::WeldKind::partial_penetration;
    wall_in = 0.25;
    weld.throat_in = 0.125;
    CHECK(run_finding("weld-too-small", resolved).empty());
    weld.throat_in = 0.1;
    const Finding finding = only("weld-too-small", resolved);
    CHECK(finding.severity == Severity::fails);
    CHECK(finding.clause.find("Table J2.3") != std::string::npos);
    wall_in = 0.5;
    weld.throat_in = 0.125;
    CHECK(test::says(only("weld-too-small", resolved).message, "3/16"));
    weld.throat_in = 0.1875;
    CHECK(run_finding("weld-too-small", resolved).empty());
}

TEST_CASE("The table of least legs is not for aluminum, nor where nothing is welded", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    on_deck(resolved.detail).weld->leg_in = 0.0625;
    test::make_aluminum(resolved);
    CHECK(run_finding("weld-too-small", resolved).empty());
    catalog::Resolved bolted = test::wood_post_example();
    on_deck(bolted.detail).weld->leg_in = 0.0625;
    CHECK(run_finding("weld-too-small", bolted).size() == 1);
    std::get<model::WoodPost>(bolted.detail.post).shoe.attachment = model::ShoeAttachment::bolted;
    CHECK(run_finding("weld-too-small", bolted).empty());
    catalog::Resolved silent = test::example_resolved();
    on_deck(silent.detail).weld.reset();
    on_deck(silent).filler.reset();
    CHECK(run_finding("weld-too-small", silent).empty());
    CHECK(run_finding("filler-does-not-match", silent).empty());
}

// 0.5.0 called each of these evidence missing, which is less than wrong.
TEST_CASE("A filler of another metal fails", "[unit][A5]") {
    struct Joint {
        MetalKind filler, post, plate;
        bool matches;
    };
    constexpr MetalKind carbon = MetalKind::carbon_steel;
    constexpr MetalKind stainless = MetalKind::stainless_steel;
    constexpr MetalKind aluminum = MetalKind::aluminum;
    const Joint joints[] = {
        {carbon, carbon, carbon, true},       {stainless, carbon, carbon, true},
        {stainless, stainless, carbon, true}, {aluminum, aluminum, aluminum, true},
        {carbon, aluminum, aluminum, false},  {aluminum, carbon, carbon, false},
        {aluminum, stainless, carbon, false}, {carbon, stainless, stainless, false},
        {carbon, stainless, carbon, false},   {aluminum, aluminum, carbon, false},
        {carbon, carbon, aluminum, false},
    };
    for (const Joint& joint : joints) {
        INFO(static_cast<int>(joint.filler)
             << " " << static_cast<int>(joint.post) << " " << static_cast<int>(joint.plate));
        catalog::Resolved resolved = test::example_resolved();
        on_deck(resolved).filler->kind = joint.filler;
        resolved.post_metal.kind = joint.post;
        on_deck(resolved).plate_metal.kind = joint.plate;
        const std::vector<Finding> findings = run_finding("filler-does-not-match", resolved);
        REQUIRE(findings.empty() == joint.matches);
        if (!joint.matches) CHECK(findings[0].severity == Severity::fails);
    }
}

TEST_CASE("Aluminum and steel are told that no filler joins them", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.post_metal = test::example_aluminum();
    CHECK(test::says(only("filler-does-not-match", resolved).message, "cannot be welded to each other"));
}

// 0.5.0 passed these.
TEST_CASE("Plain and zinc-plated anchors in treated lumber fail", "[unit][A3]") {
    for (const char* words : {"none", "zinc plated, ASTM B633"}) {
        INFO(words);
        catalog::Resolved resolved = protected_by(words);
        const Finding finding = only("corrosion-too-little", resolved);
        CHECK(finding.severity == Severity::fails);
        CHECK(finding.clause == "IBC 2021 2304.10.6");
        CHECK(test::says(finding.message, "anchors A, B, C and D"));
        CHECK(run_finding("corrosion-not-stated", resolved).empty());
        resolved.detail.framing.preservative_treated = false;
        CHECK(run_finding("corrosion-too-little", resolved).empty());
    }
}

TEST_CASE("Galvanized, stainless and reported coatings are enough", "[unit]") {
    for (const char* words : {"hot-dip galvanized, ASTM A153", "stainless steel", "coating, evaluation report 3"}) {
        INFO(words);
        CHECK(run_finding("corrosion-too-little", protected_by(words)).empty());
        CHECK(run_finding("corrosion-not-stated", protected_by(words)).empty());
    }
    catalog::Resolved stainless = protected_by("none");
    for (catalog::Anchor& anchor : stainless.anchors) anchor.metal.kind = MetalKind::stainless_steel;
    CHECK(run_finding("corrosion-too-little", stainless).empty());
}

// 0.5.0 passed any words.
TEST_CASE("Words that name no known protection leave it open", "[bad-input][A3]") {
    const Finding finding = only("corrosion-not-stated", protected_by("galvanized"));
    CHECK(finding.severity == Severity::missing);
    CHECK(test::says(finding.message, "name none that is known"));
}

TEST_CASE("Mechanical galvanizing is for bolts by one code, and for all by the other", "[memory]") {
    // IBC 2304.10.6.1, read as 2304.9.5.1 of 2012; IRC R317.3.1 (from memory).
    catalog::Resolved resolved = protected_by("mechanically galvanized, ASTM B695 class 55");
    CHECK(only("corrosion-too-little", resolved).severity == Severity::fails);
    resolved.detail.basis.code = model::BuildingCode::irc_2021;
    CHECK(run_finding("corrosion-too-little", resolved).empty());
    resolved.detail.basis.code.reset();
    for (catalog::Anchor& anchor : resolved.anchors) anchor.kind = catalog::FastenerKind::through_bolt;
    CHECK(run_finding("corrosion-too-little", resolved).empty());
}

// 0.5.0 had no word on it.
TEST_CASE("Aluminum on treated wood is a caution, which a plastic shim ends", "[unit][A3]") {
    catalog::Resolved resolved = test::example_resolved();
    CHECK(run_finding("aluminum-on-treated-wood", resolved).empty());
    test::make_aluminum(resolved);
    CHECK(only("aluminum-on-treated-wood", resolved).severity == Severity::caution);
    on_deck(resolved).decking.reset();
    CHECK(test::about(only("aluminum-on-treated-wood", resolved)) == "plate");
    catalog::DeckingMaterial plastic;
    plastic.kind = catalog::DeckingKind::plastic_composite;
    on_deck(resolved).shims = {plastic};
    CHECK(run_finding("aluminum-on-treated-wood", resolved).empty());
    on_deck(resolved).shims.clear();
    resolved.detail.framing.preservative_treated = false;
    CHECK(run_finding("aluminum-on-treated-wood", resolved).empty());
    catalog::Resolved shoe = test::wood_post_example();
    CHECK(run_finding("aluminum-on-treated-wood", shoe).empty());
    shoe.post_metal = test::example_aluminum();
    CHECK(test::about(only("aluminum-on-treated-wood", shoe)) == "shoe");
    CHECK(only("aluminum-on-treated-wood", shoe).severity == Severity::caution);
}

// 0.5.0 had no word on it.
TEST_CASE("Bare steel anchors in an aluminum plate are a caution; stainless ones in a steel plate are not", "[unit]") {
    for (const char* words : {"", "zinc plated", "painted"}) {
        INFO(words);
        catalog::Resolved resolved = protected_by(words);
        CHECK(run_finding("dissimilar-metals", resolved).empty());
        test::make_aluminum(resolved);
        CHECK(only("dissimilar-metals", resolved).severity == Severity::caution);
    }
    for (const char* words : {"hot-dip galvanized", "stainless steel"}) {
        INFO(words);
        catalog::Resolved resolved = protected_by(words);
        CHECK(run_finding("dissimilar-metals", resolved).empty());
        test::make_aluminum(resolved);
        CHECK(run_finding("dissimilar-metals", resolved).empty());
    }
}

TEST_CASE("A gusset's fillet is held to the thinner of gusset and post", "[published]") {
    // AISC 360-16 Table J2.4: 1/8 in for a 1/4 in gusset beside a 1/2 in wall on a 3/8 in plate, whose own is 3/16.
    catalog::Resolved resolved = test::example_resolved();
    std::get<model::RectangularTube>(resolved.detail.post).wall_in = 0.5;
    model::Weld& weld = *on_deck(resolved.detail).weld;
    weld.gussets = model::Gussets{{}, 2.0, 1.0, 0.25, 0.125};
    CHECK(run_finding("weld-too-small", resolved).empty());
    weld.gussets->leg_in = 0.12;
    CHECK(only("weld-too-small", resolved).severity == Severity::fails);
}
