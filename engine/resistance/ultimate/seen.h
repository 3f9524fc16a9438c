#pragma once
// How far the source of a published number was seen.

namespace toehold::resistance::ultimate {

enum class Seen {
    in_text,     ///< read in a copy of its source, or in a public page that quotes it
    recomputed,  ///< found from numbers that were read, and met by others
    memory,      ///< to be confirmed
    assumed,     ///< nothing published was found: a judgement, to be stated beside every result
};

}  // namespace toehold::resistance::ultimate
