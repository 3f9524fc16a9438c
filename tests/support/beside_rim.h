#pragma once
// A post beside a rim in the words of the shipped catalogs, with everything its drawings and papers show: boards, a
// washer under each head and nut, species and grades.
#include "model/post_beside_rim.h"

namespace toehold::test {

inline void in_catalog_words(model::BaseDetail& detail) {
    detail.name = "Heron Landing, post beside the rim";
    for (model::Rim& rim : detail.framing.rims) rim.species = "southern-pine", rim.grade = "no-2";
    for (model::Block& block : detail.framing.blocks) block.species = "southern-pine", block.grade = "no-2";
    model::SideFastened& mount = on_side(detail);
    mount.decking = model::Decking{"wood-southern-pine", 1.0, ""};
    mount.anchors.front().washer = model::Washer{"washer-wide-1/2"};
    mount.anchors.front().corrosion_protection = "hot-dip galvanized, ASTM A153";
    std::get<model::ThroughBolt>(mount.anchors.front().fastener).below = model::Washer{"washer-wide-1/2"};
    detail.loads.concentrated = model::ConcentratedLoad{};
    detail.loads.stated = true;
}

/// The 4x4 of post_beside_rim.h, on its axis two bolts U and L; washers 0.109 in thick.
[[nodiscard]] inline model::BaseDetail beside_rim() {
    model::BaseDetail detail = post_beside_rim();
    in_catalog_words(detail);
    return detail;
}

/// The tube on a bracket of four bolts.
[[nodiscard]] inline model::BaseDetail bracket_beside_rim() {
    model::BaseDetail detail = tube_on_bracket();
    in_catalog_words(detail);
    return detail;
}

}  // namespace toehold::test
