#pragma once
// A sentence, or a few words, as a value: an English pattern with fields, and the arguments that fill them. It becomes
// text only where somebody reads it, in that reader's language and units, so that no code has a reason to read it back.
//
//     note = format::phrase("{} exceeds {}. Use a longer screw.", format::Quantity{demand, "lb"},
//                           format::Quantity{capacity, "lb"});
//
// The literal given to `phrase` is what the translator's tools gather: a whole sentence, never half of one. Fields are
// fmt's: `{}`, or `{0}` and `{1}` where a translation must change the order; `{:.2f}` and the like for plain numbers.
// A standard that a sentence rests on is one of its arguments, a Citation, and never letters of the pattern: what a
// review cites is gathered with `citations`, not looked for in its words.
#include "units/quantity.h"

#include <memory>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <variant>
#include <vector>

namespace toehold::format {

class Catalogue;

/// A number with one of the engine's units (`lb`, `in`, `psi`, `lb in` ...), shown to four significant digits in the
/// reader's system of units.
struct Quantity {
    double value = 0.0;
    std::string unit;
    friend bool operator==(const Quantity&, const Quantity&) = default;
};

/// A length that somebody measures or buys: to 1/32 in as a fraction, or in whole and half millimeters. In inches.
struct Dimension {
    double in = 0.0;
    friend bool operator==(const Dimension&, const Dimension&) = default;
};

/// What a sentence rests on, in the words every clause of the engine has: `NDS 2018 11.3.6`, `IRC 2021 Table R301.5`.
/// Shown as it is, never translated.
struct Citation {
    std::string text;
    friend bool operator==(const Citation&, const Citation&) = default;
};

struct Argument;

struct Phrase {
    std::string pattern;  ///< English; what the catalogue is asked for. Without arguments it is not read for fields.
    std::vector<Argument> arguments;
    Phrase();
    Phrase(std::string words, std::vector<Argument> values);
    // Out of line: phrases are copied and destroyed in every file.
    Phrase(const Phrase&);
    Phrase(Phrase&&) noexcept;
    Phrase& operator=(const Phrase&);
    Phrase& operator=(Phrase&&) noexcept;
    ~Phrase();
    [[nodiscard]] bool empty() const { return pattern.empty(); }
    friend bool operator==(const Phrase&, const Phrase&);
};

/// Several phrases one after the other, as `A, B and C`.
struct Listed {
    std::vector<Phrase> items;
    friend bool operator==(const Listed&, const Listed&);
};

struct Argument {
    using Value = std::variant<std::string, long long, double, Quantity, Dimension, Citation, Phrase, Listed>;
    Value value;

    Argument(Value of);
    Argument(const Argument&);
    Argument(Argument&&) noexcept;
    Argument& operator=(const Argument&);
    Argument& operator=(Argument&&) noexcept;
    ~Argument();
    friend bool operator==(const Argument&, const Argument&);
};

/// Who reads: their units, and their language (absent: English).
struct Locale {
    units::System system = units::System::us;
    std::shared_ptr<const Catalogue> catalogue = nullptr;
};

namespace detail {
template <class Value>
Argument argument(Value&& value) {
    using Plain = std::remove_cvref_t<Value>;
    if constexpr (std::is_same_v<Plain, bool> || std::is_same_v<Plain, char>) {
        static_assert(!std::is_same_v<Plain, Plain>, "say it in words");
    } else if constexpr (std::is_integral_v<Plain>) {
        return {static_cast<long long>(value)};
    } else if constexpr (std::is_floating_point_v<Plain>) {
        return {static_cast<double>(value)};
    } else if constexpr (std::is_same_v<Plain, Quantity> || std::is_same_v<Plain, Dimension> ||
                         std::is_same_v<Plain, Citation> || std::is_same_v<Plain, Phrase> ||
                         std::is_same_v<Plain, Listed>) {
        return {std::forward<Value>(value)};
    } else {
        return {std::string(std::forward<Value>(value))};
    }
}
}  // namespace detail

/// `pattern` is a literal: the English sentence.
template <class... Values>
[[nodiscard]] Phrase phrase(const char* pattern, Values&&... values) {
    return {std::string(pattern), std::vector<Argument>{detail::argument(std::forward<Values>(values))...}};
}

/// Words that are nobody's to translate: a name the user gave, a symbol.
[[nodiscard]] Phrase verbatim(std::string text);
/// What the phrase and the phrases within it cite, in the order of their arguments.
[[nodiscard]] std::vector<std::string> citations(const Phrase& phrase);

/// In the reader's language and units. A translation whose fields do not fit the arguments is passed over for English.
[[nodiscard]] std::string text(const Phrase& phrase, const Locale& locale);
/// The translation of a word that is also data (`given`, `input`, `common practice`), or the word itself.
[[nodiscard]] std::string text(std::string_view word, const Locale& locale);
/// In English and in US customary units: for tests, logs and programs.
[[nodiscard]] std::string english(const Phrase& phrase);

}  // namespace toehold::format
