#include "model/protection.h"

#include <algorithm>
#include <cctype>
#include <initializer_list>
#include <string>
#include <vector>

namespace toehold::model {
namespace {

using Words = std::vector<std::string>;

/// In small letters, cut at whatever is no letter or digit of ASCII.
Words cut(std::string_view text) {
    Words words;
    std::string word;
    for (const char letter : text) {
        const auto code = static_cast<unsigned char>(letter);
        if (code < 128 && std::isalnum(code) != 0) {
            word += static_cast<char>(std::tolower(code));
        } else if (!word.empty()) {
            words.push_back(word);
            word.clear();
        }
    }
    if (!word.empty()) words.push_back(word);
    return words;
}

/// A word that begins so.
bool begins(const Words& words, std::initializer_list<std::string_view> starts) {
    return std::any_of(words.begin(), words.end(), [&](const std::string& word) {
        return std::any_of(starts.begin(), starts.end(),
                           [&](std::string_view start) { return word.compare(0, start.size(), start) == 0; });
    });
}

bool has(const Words& words, std::initializer_list<std::string_view> whole) {
    return std::any_of(words.begin(), words.end(), [&](const std::string& word) {
        return std::find(whole.begin(), whole.end(), word) != whole.end();
    });
}

/// `zingu`, `chaud`: what is left of the French words without their accents.
bool hot_dipped(const Words& words) {
    return has(words, {"hdg", "chaud"}) || begins(words, {"a153", "a123", "f2329", "hotdip"}) ||
           (has(words, {"hot"}) && begins(words, {"dip"}));
}

Protection sufficient(const Words& words) {
    if (begins(words, {"b695", "mechanical"})) return Protection::mechanically_galvanized;
    if (hot_dipped(words)) return Protection::hot_dip_galvanized;
    if (begins(words, {"stainless", "inox"}) || has(words, {"304", "305", "316", "bronze", "copper"}))
        return Protection::stainless;
    return Protection::unknown;
}

Protection insufficient(const Words& words) {
    if (begins(words, {"b633", "f1941", "electro", "plated", "plating", "zingu"})) return Protection::plated;
    if (has(words, {"none", "uncoated", "unprotected", "bare", "aucune"})) return Protection::none;
    return Protection::unknown;
}

bool is_denied(const Words& words) { return has(words, {"not", "no", "non", "without", "sans", "pas"}); }

}  // namespace

Protection protection(std::string_view text) {
    const Words words = cut(text);
    if (words.empty()) return Protection::not_stated;
    if (is_denied(words)) return Protection::unknown;
    const Protection enough = sufficient(words);
    const Protection little = insufficient(words);
    if (begins(words, {"report", "esr", "rapport"})) return little == Protection::none ? little : Protection::by_report;
    if (enough != Protection::unknown && little != Protection::unknown) return Protection::unknown;
    if (enough != Protection::unknown) return enough;
    if (little != Protection::unknown) return little;
    return has(words, {"plain", "black"}) ? Protection::none : Protection::unknown;
}

}  // namespace toehold::model
