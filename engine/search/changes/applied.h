#pragma once
// What comes of a change of a detail.
#include "format/phrase.h"

#include <utility>

namespace toehold::search {

/// True: the change is made. False: it does not go with the rest of the detail, which is then to be thrown away.
struct [[nodiscard]] Applied {
    /// Why it does not, as a clause: `the post's foot hangs over the plate's edge`; empty: it is made.
    format::Phrase why = {};
    /// The change means nothing for this detail, and another one of its kind stands for it: a screw's length, of bolts.
    bool meaningless = false;

    explicit operator bool() const { return why.empty(); }
};

inline Applied refused(format::Phrase why) { return {std::move(why), false}; }
inline Applied meaningless(format::Phrase why) { return {std::move(why), true}; }

}  // namespace toehold::search
