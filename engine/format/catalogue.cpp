#include "format/catalogue.h"

#include <cstdint>
#include <fstream>
#include <iterator>
#include <optional>

namespace toehold::format {
namespace {

// The layout of the file: GNU gettext manual, "The Format of GNU MO Files". Written by msgfmt in the byte order of the
// machine it ran on; another order is not ours.
constexpr std::uint32_t magic = 0x950412deU;

std::optional<std::uint32_t> number_at(std::string_view bytes, std::size_t at) {
    if (at > bytes.size() || bytes.size() - at < 4) return std::nullopt;
    std::uint32_t value = 0;
    for (int byte = 3; byte >= 0; --byte)
        value = (value << 8U) | static_cast<unsigned char>(bytes[at + static_cast<std::size_t>(byte)]);
    return value;
}

/// The text whose length and place stand at `at`; of a plural, its first form.
std::optional<std::string> text_at(std::string_view bytes, std::size_t at) {
    const std::optional<std::uint32_t> length = number_at(bytes, at), place = number_at(bytes, at + 4);
    if (!length || !place || *place > bytes.size() || bytes.size() - *place < *length) return std::nullopt;
    std::string text(bytes.substr(*place, *length));
    return text.substr(0, text.find('\0'));
}

}  // namespace

const std::string* Catalogue::find(std::string_view english) const {
    const auto found = translations_.find(english);
    return found == translations_.end() || found->second.empty() ? nullptr : &found->second;
}

std::shared_ptr<const Catalogue> read_catalogue(const std::filesystem::path& file) {
    std::ifstream stream(file, std::ios::binary);
    const std::string bytes{std::istreambuf_iterator<char>(stream), std::istreambuf_iterator<char>()};
    constexpr std::size_t count_place = 8, originals_place = 12, translations_place = 16, entry = 8;
    const std::optional<std::uint32_t> count = number_at(bytes, count_place),
                                       originals = number_at(bytes, originals_place),
                                       translations = number_at(bytes, translations_place);
    if (number_at(bytes, 0) != magic || !count || !originals || !translations) return nullptr;
    std::map<std::string, std::string, std::less<>> all;
    for (std::size_t i = 0; i < *count; ++i) {
        std::optional<std::string> original = text_at(bytes, *originals + entry * i);
        std::optional<std::string> translation = text_at(bytes, *translations + entry * i);
        if (!original || !translation) return nullptr;
        if (!original->empty()) all.emplace(std::move(*original), std::move(*translation));
    }
    return std::make_shared<const Catalogue>(std::move(all));
}

}  // namespace toehold::format
