#pragma once
// What two details do not say alike. Found on what is written of them, so that nothing a file can say is passed over;
// only a reviewer's remarks are left out. A plate from a document is compared itself, and so is the reference to it.
#include "model/base_detail.h"

#include <string>
#include <vector>

namespace toehold::xml {

struct Difference {
    std::string place;   ///< elements and attribute in the file's words: `plate / hole A / diameter`
    std::string first;   ///< as canonically written, with its unit; a whole element in one line; empty: not there
    std::string second;  ///< the same of the other detail; never the same text as `first`
};

/// In the order of the file. Elements are matched by name and by their id, a block's end by the end it is of, a load by
/// its name, anchors by their holes and then in order; others of one name in order.
[[nodiscard]] std::vector<Difference> detail_differences(const model::BaseDetail& first,
                                                         const model::BaseDetail& second);

}  // namespace toehold::xml
