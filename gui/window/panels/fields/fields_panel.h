#pragma once
// Every field of a detail or a project by the trade's name, grouped, narrowed by typing, the selected parts' first.
#include "editing/fields.h"
#include "window/panels/fields/field_source.h"
#include "window/theme/theme.h"

#include <wx/panel.h>

#include <set>
#include <string>
#include <vector>

class wxCheckBox;
class wxPropertyGrid;
class wxPropertyGridEvent;
class wxTextCtrl;

namespace toehold::window {

class FieldsPanel : public wxPanel {
  public:
    FieldsPanel(wxWindow* parent, FieldSource source);

    /// What is shown may have changed; many calls between two paintings count as one.
    void update_soon();
    void apply_theme(const Theme& theme);
    void focus_filter();
    /// Takes up what is still being typed, as before saving. False: it was refused, and the field says why.
    bool commit();
    /// The field with that path becomes the current one; false: it is not shown.
    bool go_to(const std::string& path);

  private:
    void update();
    void update_values(std::vector<editing::Field> fields);
    void rebuild(std::vector<editing::Field> fields);
    void fill();
    void remember_collapsed();
    void on_changing(wxPropertyGridEvent& event);
    void on_changed(wxPropertyGridEvent& event);
    void apply(const std::string& path, const std::string& text);
    void theme_editor();
    void explain_current();
    void refuse(const format::Phrase& sentence);
    [[nodiscard]] const editing::Field* field(const std::string& path) const;
    void add_controls();

    FieldSource source_;
    Theme theme_ = theme_of(drawing::Ground::paper);
    wxTextCtrl* filter_ = nullptr;
    wxCheckBox* selected_only_ = nullptr;
    wxPropertyGrid* grid_ = nullptr;
    wxTextCtrl* help_ = nullptr;
    std::vector<editing::Field> shown_;  ///< as the lines stand
    std::set<std::string> collapsed_;    ///< groups folded away
    format::Phrase refused_;             ///< the sentence shown in place of the help
    bool update_waits_ = false;
};

}  // namespace toehold::window
