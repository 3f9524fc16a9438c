#pragma once
// An element to be written, as a plain value, and its canonical text: the same value always gives the same bytes. And
// the words of a file with what they stand for: one table serves reading and writing.
#include "units/quantity.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace toehold::xml {

/// A word of the file and what it stands for.
template <class Value>
struct Word {
    std::string_view word;
    Value value;
};

/// The word that stands for `value`; the table must hold every value of its type.
template <class Value>
[[nodiscard]] constexpr std::string_view word_for(Value value, std::span<const Word<Value>> words) {
    for (const Word<Value>& word : words) {
        if (word.value == value) return word.word;
    }
    return words.front().word;
}

struct Element {
    std::string name;
    std::vector<std::pair<std::string, std::string>> attributes;  ///< in the order they are written
    std::vector<Element> children;
    std::vector<std::string> comments;  ///< written before the element, each on lines of its own

    explicit Element(std::string_view element_name) : name(element_name) {}

    Element& text(std::string_view attribute, std::string_view value);
    /// Nothing is written for an empty text.
    Element& optional_text(std::string_view attribute, std::string_view value);
    /// `value` is in the engine's unit and written with every digit it needs.
    Element& quantity(std::string_view attribute, double value, units::Kind kind);
    /// Nothing is written for an absent value.
    Element& optional_quantity(std::string_view attribute, std::optional<double> value, units::Kind kind);
    /// Nothing is written for 0, which the model uses for `not given`.
    Element& given_quantity(std::string_view attribute, double value, units::Kind kind);
    Element& yes_no(std::string_view attribute, bool value);
    Element& child(Element element);
    Element& comment(std::string words);
};

/// The fewest digits that read back to the same number.
[[nodiscard]] std::string exact_number(double value);

/// The element alone, indented by two blanks a step of `depth`, with a line end after it.
[[nodiscard]] std::string element_text(const Element& element, std::size_t depth);
/// A whole document with `root` at its top. A character XML cannot hold becomes U+FFFD.
[[nodiscard]] std::string document_text(const Element& root);

}  // namespace toehold::xml
