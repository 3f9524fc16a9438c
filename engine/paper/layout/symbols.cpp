#include "paper/layout/symbols.h"

#include "drawing/render/subscripts.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <utility>

namespace toehold::paper::layout {
namespace {

using Replacement = std::pair<std::string_view, std::string_view>;

constexpr std::array<Replacement, 14> greek_letters = {{{"alpha", "α"},
                                                        {"beta", "β"},
                                                        {"gamma", "γ"},
                                                        {"Delta", "Δ"},
                                                        {"eta", "η"},
                                                        {"theta", "θ"},
                                                        {"lambda", "λ"},
                                                        {"mu", "μ"},
                                                        {"pi", "π"},
                                                        {"rho", "ρ"},
                                                        {"sigma", "σ"},
                                                        {"tau", "τ"},
                                                        {"phi", "φ"},
                                                        {"Omega", "Ω"}}};

bool is_letter(char c) { return std::isalpha(static_cast<unsigned char>(c)) != 0; }
bool is_digit(char c) { return c >= '0' && c <= '9'; }

std::size_t letters_from(std::string_view text, std::size_t at) {
    std::size_t end = at;
    while (end < text.size() && is_letter(text[end])) ++end;
    return end - at;
}

std::string greek(std::string_view word) {
    const auto* const found = std::find_if(greek_letters.begin(), greek_letters.end(),
                                           [word](const Replacement& one) { return one.first == word; });
    return std::string(found == greek_letters.end() ? word : found->second);
}

/// `²` or `³` where the text goes on with such a power and nothing else; empty otherwise.
std::string_view power_at(std::string_view text, std::size_t at) {
    if (at + 1 >= text.size() || text[at] != '^') return {};
    const bool longer = at + 2 < text.size() && (is_digit(text[at + 2]) || text[at + 2] == '.');
    if (longer) return {};
    if (text[at + 1] == '2') return "²";
    return text[at + 1] == '3' ? "³" : "";
}

std::string words_in_greek(std::string_view text) {
    std::string written;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t letters = letters_from(text, at);
        written += letters > 0 ? greek(text.substr(at, letters)) : std::string(1, text[at]);
        at += std::max<std::size_t>(letters, 1);
    }
    return written;
}

/// What stands between two terms. ` x ` is a sign only before a number: `about x and y` names axes.
Replacement sign_at(std::string_view text, std::size_t at) {
    constexpr std::array<Replacement, 4> signs = {{{"<=", "≤"}, {">=", "≥"}, {" * ", " · "}, {" - ", " − "}}};
    for (const Replacement& sign : signs) {
        if (text.substr(at, sign.first.size()) == sign.first) return sign;
    }
    constexpr std::string_view times = " x ";
    const std::size_t after = at + times.size();
    const bool number = after < text.size() && (is_digit(text[after]) || text[after] == '(');
    if (number && text.substr(at, times.size()) == times) return {times, " × "};
    return {};
}

struct Piece {
    std::string written;
    std::size_t length = 1;  ///< of the plain text it stands for
};

Piece subscript_piece(std::string_view text, std::size_t at) {
    const std::size_t length = drawing::bare_subscript_bytes(text.substr(at + 1));
    if (length == 0) return {"_", 1};
    const std::string name = words_in_greek(text.substr(at + 1, length));
    const bool raised = !power_at(text, at + 1 + length).empty();
    return {raised ? "_{" + name + "}" : "_" + name, length + 1};
}

Piece piece_at(std::string_view text, std::size_t at) {
    if (text[at] == '_') return subscript_piece(text, at);
    if (const std::string_view power = power_at(text, at); !power.empty()) return {std::string(power), 2};
    if (const Replacement sign = sign_at(text, at); !sign.first.empty())
        return {std::string(sign.second), sign.first.size()};
    const std::size_t letters = letters_from(text, at);
    if (letters == 0) return {std::string(1, text[at]), 1};
    const std::string_view word = text.substr(at, letters);
    const bool root = word == "sqrt" && at + letters < text.size() && text[at + letters] == '(';
    return {root ? "√" : greek(word), letters};
}

}  // namespace

std::string written_math(std::string_view plain) {
    std::string written;
    for (std::size_t at = 0; at < plain.size();) {
        const Piece piece = piece_at(plain, at);
        written += piece.written;
        at += piece.length;
    }
    return written;
}

std::string written_unit(std::string_view plain) {
    constexpr std::array<Replacement, 14> units = {{{"in2", "in²"},
                                                    {"in3", "in³"},
                                                    {"in4", "in⁴"},
                                                    {"mm2", "mm²"},
                                                    {"mm3", "mm³"},
                                                    {"mm4", "mm⁴"},
                                                    {"ft2", "ft²"},
                                                    {"m2", "m²"},
                                                    {"lb in", "lb·in"},
                                                    {"lb-in", "lb·in"},
                                                    {"lb-in/rad", "lb·in/rad"},
                                                    {"N-m", "N·m"},
                                                    {"N-m/rad", "N·m/rad"},
                                                    {"N-mm/mm", "N·mm/mm"}}};
    const auto* const found =
        std::find_if(units.begin(), units.end(), [plain](const Replacement& one) { return one.first == plain; });
    return std::string(found == units.end() ? plain : found->second);
}

std::string written_number(std::string_view plain) {
    constexpr std::array<std::string_view, 10> raised = {"⁰", "¹", "²", "³", "⁴", "⁵", "⁶", "⁷", "⁸", "⁹"};
    const std::size_t exponent = plain.find('e');
    if (exponent == std::string_view::npos) return std::string(plain);
    std::string written = std::string(plain.substr(0, exponent)) + "·10";
    bool leading = true;
    for (const char c : plain.substr(exponent + 1)) {
        if (c == '-') written += "⁻";
        leading = leading && !(c >= '1' && c <= '9');
        if (is_digit(c) && !leading) written += raised.at(static_cast<std::size_t>(c - '0'));
    }
    return written;
}

}  // namespace toehold::paper::layout
