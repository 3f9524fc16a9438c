#pragma once
// Where a path such as `framing/block[B1]/end[to]/connector` leads in a document.
#include "xml/document/element.h"

#include <cstddef>
#include <string_view>
#include <vector>

namespace toehold::job {

/// The number of the child to step into at each level, from the root; compared one with another, they are in the
/// order of the document. A key in brackets is the child's `id` or `at`. Throws std::logic_error where nothing is
/// there.
[[nodiscard]] std::vector<std::size_t> steps_to(const xml::Element& root, std::string_view path);

/// What the steps lead to.
[[nodiscard]] const xml::Element& element_at(const xml::Element& root, const std::vector<std::size_t>& steps);
[[nodiscard]] xml::Element& element_at(xml::Element& root, const std::vector<std::size_t>& steps);

/// Value of an attribute. Throws std::logic_error where the element has none of this name.
[[nodiscard]] const std::string& attribute(const xml::Element& element, std::string_view name);

}  // namespace toehold::job
