#pragma once
// A tree from a text whose form is beyond doubt. libxml2 says whether it is well-formed XML in UTF-8; on top of that,
// one element at the top, no text, CDATA, DOCTYPE or processing instruction, and no line break inside a value.
// tinyxml2 then keeps the document with the line of every element and attribute.
#include "model/problem.h"

#include <cstddef>
#include <memory>
#include <string_view>

namespace tinyxml2 {
class XMLDocument;
class XMLElement;
}  // namespace tinyxml2

namespace toehold::xml {

inline constexpr std::size_t max_element_depth = 32;
inline constexpr std::size_t max_attributes = 64;

/// A parsed text. `root` lives as long as `tree`.
struct StrictDocument {
    std::shared_ptr<const tinyxml2::XMLDocument> tree;
    const tinyxml2::XMLElement* root = nullptr;  ///< nullptr when there are problems
    model::Problems problems;                    ///< with lines, without a file
};

/// A byte-order mark is skipped. Every text that does not belong is told of, up to the first fault that makes the rest
/// unreadable. May be called from several threads at once; nothing is fetched and no entity is expanded.
[[nodiscard]] StrictDocument parse_strictly(std::string_view text);

}  // namespace toehold::xml
