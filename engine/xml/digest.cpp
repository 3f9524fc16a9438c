#include "xml/digest.h"

#include <sys/types.h>

#include <sha256.h>

#include <array>

namespace toehold::xml {

std::string sha256(std::string_view text) {
    std::array<char, SHA256_DIGEST_STRING_LENGTH> digest{};
    SHA256_Data(reinterpret_cast<const unsigned char*>(text.data()), text.size(), digest.data());
    return digest.data();
}

}  // namespace toehold::xml
