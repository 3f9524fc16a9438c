#pragma once
// A file's bytes, whole. Both throw std::runtime_error where the file cannot be read or written.
#include <filesystem>
#include <string>
#include <string_view>

namespace toehold::test {

[[nodiscard]] std::string bytes_of(const std::filesystem::path& file);
void put_bytes(const std::filesystem::path& file, std::string_view bytes);

}  // namespace toehold::test
