#pragma once
// What a reviewer says of a result, a finding or the whole detail. Kept beside the detail; nothing is computed from it.
#include <string>

namespace toehold::model {

struct Remark {
    enum class State { open, settled };
    std::string about;    ///< id of a check or a finding rule; empty: the whole detail
    std::string subject;  ///< the key of a part (`model::key`), `anchor A`; empty: every part. Any text is kept
    std::string words;    ///< required
    std::string by;       ///< who says it; may be empty
    std::string date;     ///< ISO 8601 day; may be empty
    State state = State::open;
    friend bool operator==(const Remark&, const Remark&) = default;
};

}  // namespace toehold::model
