#pragma once
// The example with 1/2 in A307 through-bolts, nut 3/4 in across flats, nothing below the nut yet.
#include "support/example.h"

namespace toehold::test {

inline catalog::Resolved bolted_example() {
    catalog::Resolved resolved = example_resolved();
    for (catalog::Anchor& anchor : resolved.anchors) {
        anchor.kind = catalog::FastenerKind::through_bolt;
        anchor.name = "1/2 in through-bolt";
        anchor.diameter_in = 0.5;
        anchor.root_diameter_in = 0.4;
        anchor.length_in = anchor.thread_length_in = anchor.tip_length_in = 0.0;
        anchor.head_width_in = 0.75;
        anchor.bolt_grade = catalog::BoltGrade{"a307", "ASTM A307", 45000.0, 27000.0, {}};
        anchor.embedment_in = 5.5;
        anchor.thread_in_block_in = 0.0;
    }
    return resolved;
}

}  // namespace toehold::test
