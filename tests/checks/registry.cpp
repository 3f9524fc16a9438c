// What a mount is checked for: each check and finding rule says which kinds of mount it is for.
#include "checks/registry.h"

#include "support/compare.h"

#include <algorithm>
#include <set>

using namespace toehold;
using model::MountKind;

namespace {

std::set<std::string> alone_for(MountKind mount) {
    std::set<std::string> ids;
    for (const checks::Check& check : checks::registered_checks()) {
        if (check.mounts == std::vector<MountKind>{mount}) ids.insert(check.id);
    }
    return ids;
}

}  // namespace

TEST_CASE("Each mount is checked for everything that is registered but what is for the other alone", "[unit]") {
    for (const auto& [mount, other] : {std::pair(MountKind::plate_on_deck, MountKind::side_fastened),
                                       std::pair(MountKind::side_fastened, MountKind::plate_on_deck)}) {
        CHECK(checks::checks_of(mount).size() + alone_for(other).size() == checks::registered_checks().size());
    }
}

TEST_CASE("Checks of plate, weld, shoe and decking are for a plate on the deck alone", "[unit]") {
    CHECK(alone_for(MountKind::plate_on_deck) ==
          std::set<std::string>{"bearing-decking", "bearing-packing", "packing-seat", "plate-bending",
                                "plate-hole-bearing", "plate-hole-edge", "plate-ligaments", "post-bending",
                                "post-overlap", "post-shoe", "weld"});
}

TEST_CASE("Checks of the post's side, its bracket and its ties are for a post on a side alone", "[unit]") {
    CHECK(alone_for(MountKind::side_fastened) ==
          std::set<std::string>{"member-shear-at-post", "side-bracket-bending", "side-bracket-weld",
                                "side-head-bearing", "side-hole-bearing", "side-hole-edge", "side-post-bearing",
                                "side-post-bending", "side-post-shear", "side-post-spacing", "side-tube-wall",
                                "tie-by-report", "tie-eccentricity"});
}

TEST_CASE("A check without a list of mounts is for every mount, and one with a list for those alone", "[unit]") {
    checks::Check check;
    CHECK(checks::applies(check, MountKind::plate_on_deck));
    check.mounts = {static_cast<MountKind>(1)};
    CHECK_FALSE(checks::applies(check, MountKind::plate_on_deck));
}
