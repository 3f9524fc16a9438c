#pragma once
// A list to pick from, narrowed by typing.
#include "editing/fields.h"
#include "window/theme/theme.h"

#include <wx/dialog.h>

#include <optional>
#include <string>
#include <vector>

class wxListView;
class wxTextCtrl;

namespace toehold::window {

class ChoiceEditor : public wxDialog {
  public:
    /// `current`: the value to start from.
    ChoiceEditor(wxWindow* parent, const wxString& title, std::vector<editing::Choice> choices,
                 const std::string& current, const Theme& theme, const format::Locale& locale);

    /// The value picked; absent: nothing is.
    [[nodiscard]] std::optional<std::string> picked() const;

  private:
    void add_controls(const Theme& theme);
    void fill(const std::string& current);
    void on_key(wxKeyEvent& event);
    void move_by(long rows);

    std::vector<editing::Choice> choices_;
    format::Locale locale_;
    std::vector<std::size_t> shown_;  ///< indices of choices
    wxTextCtrl* filter_ = nullptr;
    wxListView* list_ = nullptr;
};

/// Shows it and waits; absent: the person went back.
[[nodiscard]] std::optional<std::string> pick_choice(wxWindow* parent, const editing::Field& field, const Theme& theme,
                                                     const format::Locale& locale);

}  // namespace toehold::window
