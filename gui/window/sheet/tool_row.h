#pragma once
// What the hand does on the sheet and how the forces are found, each a word that can be pressed.
#include "session/session.h"
#include "window/sheet/state.h"

#include <wx/panel.h>

#include <functional>
#include <vector>

class wxToggleButton;

namespace toehold::window {

class SheetCanvas;

class ToolRow : public wxPanel {
  public:
    ToolRow(wxWindow* parent, session::Session& session, SheetCanvas& sheet);
    ~ToolRow() override;
    ToolRow(const ToolRow&) = delete;
    ToolRow& operator=(const ToolRow&) = delete;

  private:
    /// What a button says, which may depend on the detail.
    struct Words {
        wxString label, help;
        bool enabled = true;
    };
    struct Button {
        wxToggleButton* button = nullptr;
        std::function<bool()> is_on;
        std::function<Words()> words;
    };
    void add(const wxString& name, std::function<Words()> words, std::function<void()> press,
             std::function<bool()> is_on);
    void add_layer(const wxString& name, std::function<Words()> words, bool session::Display::*shown);
    void add_tools(SheetCanvas& sheet);
    void add_methods();
    void add_parts();
    void refresh();
    /// The mount decides some of them; under a hand it stays what it was.
    void refresh_words();

    session::Session& session_;
    int listener_ = 0;
    std::vector<Button> buttons_;
};

}  // namespace toehold::window
