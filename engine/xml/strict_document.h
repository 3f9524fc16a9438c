#pragma once
// The strict layer over the XML library: a tree only from a text whose form is beyond doubt.
#include "model/problem.h"

#include <memory>
#include <string_view>

namespace tinyxml2 {
class XMLDocument;
class XMLElement;
}  // namespace tinyxml2

namespace toehold::xml {

/// A parsed text. `root` lives as long as `tree`.
struct StrictDocument {
    std::shared_ptr<const tinyxml2::XMLDocument> tree;
    const tinyxml2::XMLElement* root = nullptr;  ///< nullptr when there are problems
    model::Problems problems;                    ///< with lines, without a file
};

/// Size, UTF-8, permitted characters, then `check_markup`, then the library. A byte-order mark is skipped.
[[nodiscard]] StrictDocument parse_strictly(std::string_view text);

}  // namespace toehold::xml
