// What a mount is checked for: each check and finding rule says which kinds of mount it is for.
#include "checks/registry.h"

#include "support/compare.h"

#include <algorithm>
#include <set>

using namespace toehold;
using model::MountKind;

namespace {

std::set<std::string> for_plates_alone() {
    std::set<std::string> ids;
    for (const checks::Check& check : checks::registered_checks()) {
        if (check.mounts == std::vector<MountKind>{MountKind::plate_on_deck}) ids.insert(check.id);
    }
    return ids;
}

}  // namespace

TEST_CASE("A plate on the deck is checked for everything that is registered", "[unit]") {
    CHECK(checks::checks_of(MountKind::plate_on_deck).size() == checks::registered_checks().size());
}

TEST_CASE("Checks of plate, weld, shoe and decking are for a plate on the deck alone", "[unit]") {
    CHECK(for_plates_alone() == std::set<std::string>{"bearing-decking", "bearing-packing", "deck-sideways",
                                                      "packing-seat", "plate-bending", "plate-hole-bearing",
                                                      "plate-hole-edge", "plate-ligaments", "post-shoe", "weld"});
}

TEST_CASE("A check without a list of mounts is for every mount, and one with a list for those alone", "[unit]") {
    checks::Check check;
    CHECK(checks::applies(check, MountKind::plate_on_deck));
    check.mounts = {static_cast<MountKind>(1)};
    CHECK_FALSE(checks::applies(check, MountKind::plate_on_deck));
}
