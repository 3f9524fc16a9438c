#include "support/random/mount_parts.h"

namespace toehold::test {
namespace {

using namespace toehold::model;

LowerPlate lower_plate(const Chance& chance) {
    LowerPlate plate;
    plate.shape = chance.one_of<LowerShape>({LowerShape::plate, LowerShape::angle, LowerShape::channel});
    plate.center = {chance.between(-1.0, 1.0), chance.between(-1.0, 1.0)};
    plate.width_in = chance.between(3.0, 9.0);
    plate.depth_in = chance.between(2.0, 4.0);
    plate.thickness_in = chance.between(0.1, 0.5);
    if (plate.shape != LowerShape::plate) plate.leg_in = chance.between(1.0, 3.0);
    plate.metal = chance.id();
    return plate;
}

ThroughBolt through_bolt(const Chance& chance) {
    ThroughBolt bolt{chance.id(), chance.id(), {}};
    bolt.length_in = chance.perhaps(9.0, 14.0);
    bolt.thread_length_in = chance.perhaps(1.0, 3.0);
    if (chance.coin()) bolt.threads = chance.one_of<Threads>({Threads::included, Threads::excluded});
    switch (chance.whole(0, 3)) {
        case 0:
            break;
        case 1:
            bolt.below = Washer{chance.id()};
            break;
        case 2:
            bolt.below = lower_plate(chance);
            break;
        default:
            bolt.below =
                BackingPlate{chance.between(1.0, 4.0), chance.between(1.0, 4.0), chance.between(0.1, 0.5), chance.id()};
    }
    return bolt;
}

Fastener fastener(const Chance& chance) {
    const double length = chance.between(3.0, 9.0);
    switch (chance.whole(0, 3)) {
        case 0:
            return LagScrew{chance.id(), length, chance.perhaps(1.0, 3.0)};
        case 1:
            return WoodScrew{chance.id(), length, chance.perhaps(1.0, 3.0)};
        case 2:
            return through_bolt(chance);
        default:
            break;
    }
    return ReportedFastener{"a " + chance.words(),       chance.words(),
                            chance.between(0.1, 0.5),    length,
                            chance.between(1.0, 3.0),    chance.given(50.0, 500.0),
                            chance.given(100.0, 5000.0), chance.given(100.0, 900.0),
                            chance.given(1.0, 2.0),      chance.given(0.1, 2.0),
                            chance.given(0.1, 4.0),      chance.given(0.1, 2.0)};
}

}  // namespace

model::AnchorGroup random_group(const Chance& chance, std::vector<std::string> holes) {
    AnchorGroup result{std::move(holes), fastener(chance), {}, chance.words(), chance.perhaps(1.0, 1e4)};
    if (chance.coin()) result.washer = Washer{chance.id()};
    return result;
}

model::Decking random_decking(const Chance& chance) {
    Decking decking{chance.id(), chance.between(0.5, 2.0), chance.words()};
    decking.bearing_psi = chance.given(100.0, 900.0);
    decking.modulus_psi = chance.given(1e4, 1e5);
    decking.report = chance.words();
    if (chance.coin()) {
        decking.fastening = DeckingFastening{chance.between(0.1, 0.3), chance.between(2.0, 4.0),  chance.count(1, 4),
                                             chance.between(2.0, 8.0), chance.given(10.0, 300.0), chance.words()};
    }
    return decking;
}

}  // namespace toehold::test
