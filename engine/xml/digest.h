#pragma once
// SHA-256 (FIPS 180-4) of a text, as 64 hexadecimal digits in lower case.
#include <string>
#include <string_view>

namespace toehold::xml {

[[nodiscard]] std::string sha256(std::string_view text);

}  // namespace toehold::xml
