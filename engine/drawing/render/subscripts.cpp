#include "drawing/render/subscripts.h"

#include <glib.h>

#include <cctype>
#include <memory>

namespace toehold::drawing {
namespace {

std::string escaped(std::string_view words) {
    const std::unique_ptr<char, decltype(&g_free)> text(
        g_markup_escape_text(words.data(), static_cast<gssize>(words.size())), g_free);
    return text.get();
}

/// Bytes of letters beyond ASCII count as letters.
bool letter(char c) {
    const auto byte = static_cast<unsigned char>(c);
    return byte >= 0x80 || std::isalpha(byte) != 0;
}
bool letter_or_digit(char c) { return letter(c) || (c >= '0' && c <= '9'); }

struct Subscript {
    std::string_view words;
    std::size_t bytes = 0;  ///< of everything, from the `_` on; 0: no subscript starts here
};

Subscript subscript(std::string_view text) {
    if (text.size() < 2 || text.front() != '_') return {};
    if (const std::size_t bytes = bare_subscript_bytes(text.substr(1)); bytes > 0)
        return {text.substr(1, bytes), bytes + 1};
    const std::size_t end = text.find('}');
    if (text[1] != '{' || end == std::string_view::npos) return {};
    return {text.substr(2, end - 2), end + 1};
}

}  // namespace

std::size_t bare_subscript_bytes(std::string_view text) {
    if (text.empty() || !letter(text.front())) return 0;
    std::size_t bytes = 0;
    while (bytes < text.size()) {
        const bool comma = text[bytes] == ',' && bytes + 1 < text.size() && letter_or_digit(text[bytes + 1]);
        if (!comma && !letter_or_digit(text[bytes])) break;
        ++bytes;
    }
    return bytes;
}

std::vector<SymbolRun> symbol_runs(std::string_view words) {
    std::vector<SymbolRun> runs;
    std::size_t plain_from = 0;
    const auto add_plain = [&](std::size_t end) {
        if (end > plain_from) runs.push_back({words.substr(plain_from, end - plain_from), false});
    };
    for (std::size_t at = 0; at < words.size();) {
        const Subscript lowered = subscript(words.substr(at));
        if (lowered.bytes == 0) {
            ++at;
            continue;
        }
        add_plain(at);
        runs.push_back({lowered.words, true});
        at += lowered.bytes;
        plain_from = at;
    }
    add_plain(words.size());
    return runs;
}

std::string math_markup(std::string_view words) {
    std::string markup;
    for (const SymbolRun& run : symbol_runs(words))
        markup += run.lowered ? "<sub>" + escaped(run.words) + "</sub>" : escaped(run.words);
    return markup;
}

}  // namespace toehold::drawing
