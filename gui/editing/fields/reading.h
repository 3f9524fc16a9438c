#pragma once
// Text as a person types it into a field, to the value meant; or one sentence that says what the field takes.
#include "editing/fields.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace toehold::editing {

using format::Phrase;
using format::phrase;

enum class Range { any, not_negative, positive };

/// A value, or the sentence of the refusal.
template <class Value>
struct Reading {
    std::optional<Value> value;
    Phrase refusal;
};

/// With its unit, or as a number alone in the reader's.
[[nodiscard]] units::Parsed parse_typed(const std::string& text, units::Kind kind, units::System system);

// `label`: the field's own, to begin the sentence with.
[[nodiscard]] Reading<double> read_quantity(const Phrase& label, const std::string& text, units::Kind kind,
                                            units::System system, Range range);
/// More than zero, without a unit.
[[nodiscard]] Reading<double> read_factor(const Phrase& label, const std::string& text);
[[nodiscard]] Reading<int> read_count(const Phrase& label, const std::string& text, int least, int most);
/// Of the choices, by value or label, capitals or not; else the refusal names those that come nearest.
[[nodiscard]] Reading<std::string> read_choice(const Phrase& label, const std::string& text,
                                               const std::vector<Choice>& choices);
/// Any text a file can hold, without blanks at its ends.
[[nodiscard]] Reading<std::string> read_words(const Phrase& label, const std::string& text);
/// A name others refer to: no blanks, quotes or square brackets, and none of those taken.
[[nodiscard]] Reading<std::string> read_id(const Phrase& label, const std::string& text,
                                           const std::vector<std::string>& taken);

/// For a required field left empty.
[[nodiscard]] Phrase must_be_given(const Phrase& label);
[[nodiscard]] std::string trimmed(const std::string& text);

}  // namespace toehold::editing
