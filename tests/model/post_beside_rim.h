#pragma once
// A post fastened to the side of a member, sound in every part: a 4x4 outside a doubled 2x10 rim, two bolts.
#include "model/base_detail.h"
#include "model/validate.h"
#include "support/problems.h"

#include <string>

namespace toehold::test {

/// Joists J1 and J2 run outward to a rim R1 along the rail, a block B1 behind it between them.
[[nodiscard]] inline model::Framing rim_framing() {
    using namespace model;
    Framing framing;
    framing.joists = Joists{PlanAxis::y, 1.5, 9.25, "southern-pine", "no-2", {{"J1", -8.0}, {"J2", 8.0}}};
    framing.joists->from_in = -96.0;
    framing.joists->to_in = -4.75;
    Rim rim;
    rim.id = "R1";
    rim.at_in = -3.25;
    rim.from_in = -48.0;
    rim.to_in = 48.0;
    rim.width_in = 1.5;
    rim.depth_in = 9.25;
    rim.plies = 2;
    framing.rims = {rim};
    Block block;
    block.id = "B1";
    block.from_in = -7.25;
    block.to_in = 7.25;
    block.across_in = -6.5;
    block.width_in = 3.5;
    block.depth_in = 7.25;
    block.from_end.joist = "J1";
    block.to_end.joist = "J2";
    framing.blocks = {block};
    return framing;
}

[[nodiscard]] inline model::BaseDetail post_beside_rim() {
    using namespace model;
    BaseDetail detail;
    detail.guard.height_in = 36.0;
    detail.post = WoodPost{3.5, 3.5, "southern-pine", "no-2", false, {}};
    SideFastened mount;
    mount.member = "R1";
    mount.post_bottom_below_top_in = 9.25;
    mount.places = {{"U", 0.0, 2.0}, {"L", 0.0, 6.5}};
    ThroughBolt bolt;
    bolt.size = "bolt-1/2";
    bolt.grade = "a307";
    mount.anchors = {AnchorGroup{{}, bolt, {}, ""}};
    detail.mount = mount;
    detail.framing = rim_framing();
    return detail;
}

/// A 2 in tube in its place, welded to a bracket 6 in wide with a bolt at each corner.
[[nodiscard]] inline model::BaseDetail tube_on_bracket() {
    using namespace model;
    BaseDetail detail = post_beside_rim();
    detail.post = RectangularTube{2.0, 2.0, 0.25, "steel-a500-b"};
    SideFastened& mount = on_side(detail);
    mount.bracket = BracketPlate{6.0, 7.0, 1.0, 0.75, "steel-a36", 0.1875, "e70"};
    mount.places = {{"A", -2.0, 2.0}, {"B", 2.0, 2.0}, {"C", -2.0, 7.0}, {"D", 2.0, 7.0}};
    return detail;
}

[[nodiscard]] inline model::TensionTie tie_to_joist() {
    return {"T1", "hold-down", "invented, table 1", 1.75, 2.0, 1800.0, 0.125, "J2", "", 1.25};
}

/// The only problem of a detail, as a sentence; empty without any.
[[nodiscard]] inline std::string told(const model::BaseDetail& detail) {
    const model::Problems problems = model::validate(detail);
    INFO(sentences(problems));
    CHECK(problems.size() <= 1);
    return problems.empty() ? "" : model::sentence(problems.front());
}

/// The same of a sound detail with its mount, or more, changed.
template <class Change>
[[nodiscard]] std::string told_of(model::BaseDetail detail, Change&& change) {
    change(detail, on_side(detail));
    return told(detail);
}

/// Whether the text holds the words; shows it where it does not.
[[nodiscard]] inline bool says(const std::string& text, const std::string& words) {
    UNSCOPED_INFO(text);
    return text.find(words) != std::string::npos;
}

}  // namespace toehold::test
