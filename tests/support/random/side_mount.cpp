#include "support/random/side_mount.h"

#include "support/random/mount_parts.h"

namespace toehold::test {
namespace {

using namespace toehold::model;

AnchorGroup level_group(const Chance& chance) {
    AnchorGroup group =
        random_group(chance, chance.coin() ? std::vector<std::string>{"U", "L"} : std::vector<std::string>{});
    if (chance.coin()) group.into = chance.id();
    if (chance.coin()) {
        group.head_plate =
            BackingPlate{chance.between(1.0, 4.0), chance.between(1.0, 4.0), chance.between(0.1, 0.5), chance.id()};
    }
    return group;
}

TensionTie tie(const Chance& chance, const std::string& stem) {
    TensionTie result;
    result.id = chance.own_id(stem);
    result.name = "n " + chance.words();
    result.report = "r " + chance.words();
    result.x_in = chance.between(-2.0, 2.0);
    result.below_top_in = chance.between(-2.0, 8.0);
    result.tension_lb = chance.between(500.0, 3000.0);
    result.deflection_in = chance.between(0.05, 0.2);
    result.into = chance.id();
    result.eccentricity_in = chance.given(0.5, 2.0);
    result.chosen = chance.coin();
    if (!result.chosen && chance.coin()) result.report.clear();
    return result;
}

BracketPlate bracket(const Chance& chance) {
    return {chance.between(4.0, 8.0),
            chance.between(4.0, 9.0),
            chance.between(-2.0, 2.0),
            chance.between(0.2, 0.5),
            chance.id(),
            chance.between(0.1, 0.3),
            chance.id(),
            chance.between(0.05, 0.2)};
}

void add_parts(SideFastened& mount, const Chance& chance) {
    for (int left = chance.whole(0, 2); left > 0; --left) {
        mount.layers.push_back(
            {chance.id(), chance.between(0.1, 1.0), chance.perhaps(0.0, 2.0), chance.perhaps(3.0, 9.0)});
    }
    if (chance.coin()) mount.bracket = bracket(chance);
    if (chance.coin()) mount.notch = PostNotch{chance.between(0.5, 1.5), chance.between(-2.0, 2.0)};
    if (chance.coin())
        mount.stringer = StringerSlope{chance.between(20.0, 40.0), chance.between(4.0, 8.0), chance.words()};
    if (chance.coin()) mount.decking = random_decking(chance);
    mount.boards_brace_member = chance.coin();
}

}  // namespace

model::SideFastened random_side_mount(const Chance& chance) {
    SideFastened mount;
    mount.member = chance.id();
    mount.face = chance.one_of<MemberFace>({MemberFace::outside, MemberFace::inside});
    mount.post_bottom_below_top_in = chance.between(5.0, 12.0);
    for (const char* stem : {"U", "L", "M"}) {
        if (chance.coin())
            mount.places.push_back({chance.own_id(stem), chance.between(-1.0, 1.0), chance.between(1.0, 8.0)});
    }
    for (int left = chance.whole(0, 2); left > 0; --left) mount.anchors.push_back(level_group(chance));
    for (const char* stem : {"T1", "T2"}) {
        if (chance.coin()) mount.ties.push_back(tie(chance, stem));
    }
    add_parts(mount, chance);
    return mount;
}

}  // namespace toehold::test
