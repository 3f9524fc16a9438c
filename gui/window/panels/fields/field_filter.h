#pragma once
// Which fields are shown, and in what order. No toolkit in it.
#include "editing/fields.h"

#include <string>
#include <vector>

namespace toehold::window {

struct FieldFilter {
    format::Locale locale;  ///< of what the reader sees
    std::string text;       ///< words, each of which must stand in group, label or value; case is no matter
    std::vector<model::PartId> selection;  ///< parts whose fields come first
    bool selected_only = false;            ///< and no others, where anything is selected
};

/// Whether every word of `wanted` stands in `text`, in any case of ASCII letters.
[[nodiscard]] bool holds_words(const std::string& text, const std::string& wanted);

/// Groups stay together; those of selected parts first, in the order of the fields.
[[nodiscard]] std::vector<editing::Field> filtered(const std::vector<editing::Field>& fields,
                                                   const FieldFilter& filter);

/// Whether two lists differ in values alone.
[[nodiscard]] bool same_but_for_values(const std::vector<editing::Field>& one,
                                       const std::vector<editing::Field>& other);

/// The label of a choice's value; the value itself where no choice has it.
[[nodiscard]] std::string label_of(const editing::Field& field, const std::string& value, const format::Locale& locale);
/// The other way about: a label, or a value, in; the value out.
[[nodiscard]] std::string value_of(const editing::Field& field, const std::string& text, const format::Locale& locale);

}  // namespace toehold::window
