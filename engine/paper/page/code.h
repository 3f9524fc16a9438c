#pragma once
// A QR code as a drawing in the page.
#include <string>

namespace toehold::paper::page {

/// `<svg>` with dark squares on white and the quiet zone around them, 4 modules (ISO/IEC 18004), at error correction
/// level M. Throws std::invalid_argument where the words are empty, hold a NUL or are more than a code takes.
[[nodiscard]] std::string qr_code(const std::string& words, const std::string& label);

}  // namespace toehold::paper::page
