#pragma once
// A word of the file and what it stands for: one table serves reading and writing.
#include <span>
#include <string_view>

namespace toehold::xml {

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

}  // namespace toehold::xml
