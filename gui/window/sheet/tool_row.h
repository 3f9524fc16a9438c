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
    struct Button {
        wxToggleButton* button = nullptr;
        std::function<bool()> is_on;
    };
    void add(const wxString& name, const wxString& words, const wxString& help, std::function<void()> press,
             std::function<bool()> is_on);
    void add_tools(SheetCanvas& sheet);
    void add_methods();
    void add_parts();
    void refresh();

    session::Session& session_;
    int listener_ = 0;
    std::vector<Button> buttons_;
};

}  // namespace toehold::window
