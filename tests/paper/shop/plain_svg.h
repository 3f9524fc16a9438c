#pragma once
// A sheet as a small SVG without fonts and styles: lines, circles and words at hundredths of a millimeter. For keeping
// a drawing as it was and for seeing in a difference what has changed; not what the program writes.
#include "paper/sheet.h"

namespace toehold::test {

[[nodiscard]] std::string plain_svg(const paper::Sheet& sheet);

/// Compares with the file of that name in tests/paper/reference. With TOEHOLD_RENEW_REFERENCES set in the environment
/// the file is written instead: look at it before it is committed.
[[nodiscard]] bool is_as_kept(const std::string& name, const std::string& text);

}  // namespace toehold::test
