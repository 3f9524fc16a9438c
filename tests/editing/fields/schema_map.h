#pragma once
// Which field of the window says each name of the schema.
#include <map>
#include <string>

namespace toehold::test {

/// Said by where a field stands: a heading, or the end it is of.
inline const std::string by_place = "-";

/// From a name of the schema (`guard@height` an attribute, `plate/circle` an element) to its field's path, or
/// `by_place`.
[[nodiscard]] const std::map<std::string, std::string>& field_for();
/// Those of a post on a member's side, which `field_for` has too.
[[nodiscard]] const std::map<std::string, std::string>& side_field_for();

}  // namespace toehold::test
