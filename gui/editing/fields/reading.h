#pragma once
// Text as a person types it into a field, to the value meant; or one sentence that says what the field takes.
#include "editing/fields.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace toehold::editing {

enum class Range { any, not_negative, positive };

/// A value, or the sentence of the refusal.
template <class Value>
struct Reading {
    std::optional<Value> value;
    std::string refusal;
};

/// With its unit, or as a number alone in the reader's.
[[nodiscard]] units::Parsed parse_typed(const std::string& text, units::Kind kind, units::System system);

// `label`: the field's own, to begin the sentence with.
[[nodiscard]] Reading<double> read_quantity(const std::string& label, const std::string& text, units::Kind kind,
                                            units::System system, Range range);
/// More than zero, without a unit.
[[nodiscard]] Reading<double> read_factor(const std::string& label, const std::string& text);
[[nodiscard]] Reading<int> read_count(const std::string& label, const std::string& text, int least, int most);
/// Of the choices, by value or label, capitals or not; else the refusal names those that come nearest.
[[nodiscard]] Reading<std::string> read_choice(const std::string& label, const std::string& text,
                                               const std::vector<Choice>& choices);
/// Any text a file can hold, without blanks at its ends.
[[nodiscard]] Reading<std::string> read_words(const std::string& label, const std::string& text);
/// A name others refer to: no blanks, quotes or square brackets, and none of those taken.
[[nodiscard]] Reading<std::string> read_id(const std::string& label, const std::string& text,
                                           const std::vector<std::string>& taken);

/// For a required field left empty.
[[nodiscard]] std::string must_be_given(const std::string& label);
[[nodiscard]] std::string trimmed(const std::string& text);
/// `guard height` of `Guard height`; `ASD` stays.
[[nodiscard]] std::string in_a_sentence(std::string words);

}  // namespace toehold::editing
