#pragma once
#include <string>

namespace toehold::test {

[[nodiscard]] inline bool contains(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

}  // namespace toehold::test
