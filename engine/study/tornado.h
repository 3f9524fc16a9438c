#pragma once
// Which input moves the governing ratio most: each one a small step down and a small step up, all others as they are.
#include "study/judged.h"

namespace toehold::study {

/// A tenth of the value, or the next size one can buy: what each input is changed by.
inline constexpr double small_change = 0.10;

struct SwingSide {
    double value = 0.0;  ///< of the field; of a side that is absent: as now
    Judged judged;       ///< `refusal` says why a side is absent
};

struct Swing {
    Field field;
    SwingSide down, up;
    double size = 0.0;  ///< the larger change of the governing ratio, either way; 0: it does not move it
};

struct Tornado {
    Judged now;
    std::vector<Swing> swings;  ///< the largest first
    bool stopped = false;       ///< the rest is missing
};

[[nodiscard]] Tornado tornado(const Subject& subject, const Run& run = {});

}  // namespace toehold::study
