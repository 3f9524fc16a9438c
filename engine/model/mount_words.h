#pragma once
// How sentences that serve every mount name what each of them has: rooms that may not name a mount take these words.
#include "format/phrase.h"

namespace toehold::model {

struct BaseDetail;

struct MountWords {
    format::Phrase datum;     ///< what heights are above, z = 0: `the bearing plane`
    format::Phrase plane;     ///< the same as what is seen there: `the underside of the plate`
    format::Phrase bends;     ///< what is found both as it bends and rigid: `a base that bends`
    format::Phrase rigid;     ///< `a rigid base`
    format::Phrase hand;      ///< how the two values worked out by hand are found: one sentence without its stop
    format::Phrase hand_arm;  ///< of the first of the two: `the arm to the edge of the base`
    format::Phrase bearing;   ///< that its bearing on wood is held as a uniform stress: one sentence
    format::Phrase peak;      ///< the other reading of that: `the elastic peak at the plate's edge`
    format::Phrase gap;       ///< that what lies between is a gap for anchors in lateral load: one sentence
    format::Phrase no_gap;    ///< the other reading of that
};
[[nodiscard]] MountWords mount_words(const BaseDetail& detail);

}  // namespace toehold::model
