#pragma once
// One field as a line of the property grid: text, a short list that drops down, or a long one that is picked from.
// Whatever the editor, the line's value is the field's text.
#include "editing/fields.h"
#include "window/theme/theme.h"

#include <wx/propgrid/props.h>

namespace toehold::window {

/// The grid owns what this makes. Its name is the field's path, its value what `field_text` reads.
[[nodiscard]] wxPGProperty* field_property(const editing::Field& field, const Theme& theme,
                                           const format::Locale& locale);

/// The field's text that a line's value stands for.
[[nodiscard]] std::string field_text(const editing::Field& field, const wxVariant& value, const format::Locale& locale);
/// The other way about.
[[nodiscard]] wxVariant line_value(const editing::Field& field, const std::string& text, const format::Locale& locale);

}  // namespace toehold::window
