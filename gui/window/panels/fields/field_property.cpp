#include "window/panels/fields/field_property.h"

#include "window/dialogs/choice_editor.h"
#include "window/panels/fields/field_filter.h"
#include "window/text.h"

#include <wx/intl.h>
#include <wx/propgrid/editors.h>
#include <wx/propgrid/propgrid.h>

#include <algorithm>

namespace toehold::window {
namespace {

constexpr std::size_t longest_drop_down = 8;

/// What drops down: a choice's own list, or yes and no; with `not stated` first where that is allowed.
std::vector<editing::Choice> drop_down(const editing::Field& field) {
    std::vector<editing::Choice> choices = field.choices;
    if (field.kind == editing::FieldKind::yes_no && choices.empty())
        choices = {{"yes", format::phrase("Yes")}, {"no", format::phrase("No")}};
    const bool names_nothing =
        std::any_of(choices.begin(), choices.end(), [](const editing::Choice& one) { return one.value.empty(); });
    if ((field.may_be_empty || field.value.empty()) && !names_nothing) {
        choices.insert(choices.begin(), editing::Choice{"", format::phrase("not specified")});
    }
    return choices;
}

bool drops_down(const editing::Field& field) {
    if (field.kind == editing::FieldKind::yes_no) return true;
    return field.kind == editing::FieldKind::choice && field.choices.size() <= longest_drop_down;
}

/// A text that may also be picked from a long list.
class PickedProperty : public wxEditorDialogProperty {
  public:
    PickedProperty(const editing::Field& field, const Theme& theme, const format::Locale& locale)
        : wxEditorDialogProperty(text_of(field.label, locale), text_of(field.path)),
          field_(field),
          theme_(theme),
          locale_(locale) {
        SetValue(text_of(label_of(field, field.value, locale)));
    }
    wxString ValueToString(wxVariant& value, int) const override { return value.GetString(); }
    bool StringToValue(wxVariant& variant, const wxString& text, int) const override {
        if (GetValue().GetString() == text) return false;
        variant = text;
        return true;
    }
    // Without this the toolkit takes a plain text for it, and the list cannot be reached.
    const wxPGEditor* DoGetEditorClass() const override { return wxPGEditor_TextCtrlAndButton; }

  protected:
    bool DisplayEditorDialog(wxPropertyGrid* grid, wxVariant& value) override {
        field_.value = value_of(field_, value.GetString().utf8_string(), locale_);
        const auto picked = pick_choice(grid, field_, theme_, locale_);
        if (!picked) return false;
        value = text_of(label_of(field_, *picked, locale_));
        return true;
    }

  private:
    editing::Field field_;
    Theme theme_;
    format::Locale locale_;
};

wxPGProperty* drop_down_property(const editing::Field& field, const format::Locale& locale) {
    wxPGChoices choices;
    int chosen = -1, at = 0;
    for (const editing::Choice& choice : drop_down(field)) {
        choices.Add(choice.label.empty() ? text_of(choice.value) : text_of(choice.label, locale), at);
        if (choice.value == field.value) chosen = at;
        ++at;
    }
    return new wxEnumProperty(text_of(field.label, locale), text_of(field.path), choices, chosen);
}

}  // namespace

wxPGProperty* field_property(const editing::Field& field, const Theme& theme, const format::Locale& locale) {
    if (drops_down(field)) return drop_down_property(field, locale);
    if (!field.choices.empty()) return new PickedProperty(field, theme, locale);
    return new wxStringProperty(text_of(field.label, locale), text_of(field.path), text_of(field.value));
}

std::string field_text(const editing::Field& field, const wxVariant& value, const format::Locale& locale) {
    if (!drops_down(field)) return value_of(field, value.GetString().utf8_string(), locale);
    const std::vector<editing::Choice> choices = drop_down(field);
    const long at = value.GetLong();
    return at >= 0 && static_cast<std::size_t>(at) < choices.size() ? choices[static_cast<std::size_t>(at)].value
                                                                    : std::string();
}

wxVariant line_value(const editing::Field& field, const std::string& text, const format::Locale& locale) {
    if (!drops_down(field)) return {text_of(label_of(field, text, locale))};
    const std::vector<editing::Choice> choices = drop_down(field);
    const auto choice =
        std::find_if(choices.begin(), choices.end(), [&](const editing::Choice& one) { return one.value == text; });
    return {choice == choices.end() ? -1L : static_cast<long>(choice - choices.begin())};
}

}  // namespace toehold::window
