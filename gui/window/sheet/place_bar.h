#pragma once
// Typed coordinates of what is selected: where a hole or a block stands, or how far several are to be moved.
#include "session/session.h"

#include <wx/panel.h>

#include <string>

class wxStaticText;
class wxTextCtrl;

namespace toehold::window {

class PlaceBar : public wxPanel {
  public:
    /// The session outlives the bar.
    PlaceBar(wxWindow* parent, session::Session& session);
    ~PlaceBar() override;
    PlaceBar(const PlaceBar&) = delete;
    PlaceBar& operator=(const PlaceBar&) = delete;

  private:
    void refresh();
    void show_values();
    void show_coordinates();  ///< what the two entries are called, and their help
    void apply();
    void place(double x_in, double y_in);
    void take_back();
    void say(const wxString& words);
    [[nodiscard]] wxTextCtrl* entry(const wxString& name);

    session::Session& session_;
    int listening_ = 0;
    wxStaticText* name_ = nullptr;
    wxStaticText* x_label_ = nullptr;
    wxStaticText* y_label_ = nullptr;
    wxTextCtrl* x_ = nullptr;
    wxTextCtrl* y_ = nullptr;
    wxStaticText* said_ = nullptr;   ///< distances to the edges, or why an entry was refused
    std::vector<model::PartId> of_;  ///< the selection shown
    std::string x_shown_, y_shown_;  ///< what the entries said before somebody typed
};

}  // namespace toehold::window
