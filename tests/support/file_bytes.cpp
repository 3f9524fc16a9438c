#include "support/file_bytes.h"

#include <fstream>
#include <iterator>
#include <stdexcept>

namespace toehold::test {

std::string bytes_of(const std::filesystem::path& file) {
    std::ifstream stream(file, std::ios::binary);
    if (!stream) throw std::runtime_error("cannot read " + file.string());
    return {std::istreambuf_iterator<char>(stream), {}};
}

void put_bytes(const std::filesystem::path& file, std::string_view bytes) {
    std::ofstream stream(file, std::ios::binary);
    stream << bytes;
    stream.close();
    if (!stream) throw std::runtime_error("cannot write " + file.string());
}

}  // namespace toehold::test
