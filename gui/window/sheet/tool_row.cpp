#include "window/sheet/tool_row.h"

#include "window/sheet/canvas.h"
#include "window/theme/theme.h"

#include <wx/sizer.h>
#include <wx/tglbtn.h>
#include <wx/translation.h>
#include <wx/wrapsizer.h>

#include <utility>

namespace toehold::window {

ToolRow::ToolRow(wxWindow* parent, session::Session& session, SheetCanvas& sheet) : wxPanel(parent), session_(session) {
    SetName("tools");
    SetSizer(new wxWrapSizer(wxHORIZONTAL, wxREMOVE_LEADING_SPACES));
    add_tools(sheet);
    GetSizer()->AddSpacer(FromDIP(gap::normal));
    add_methods();
    GetSizer()->AddSpacer(FromDIP(gap::normal));
    add_parts();
    sheet.when_tool_changes([this](Tool) { refresh(); });
    listener_ = session_.listen([this](session::Change change) {
        if (change == session::Change::display) refresh();
    });
    refresh();
}

ToolRow::~ToolRow() { session_.stop_listening(listener_); }

void ToolRow::add(const wxString& name, const wxString& words, const wxString& help, std::function<void()> press,
                  std::function<bool()> is_on) {
    auto* button = new wxToggleButton(this, wxID_ANY, words, wxDefaultPosition, wxDefaultSize, wxBU_EXACTFIT);
    button->SetFont(lettering(points::small));
    button->SetName(name);
    button->SetToolTip(help);
    button->Bind(wxEVT_TOGGLEBUTTON, [this, press = std::move(press)](wxCommandEvent&) {
        press();
        refresh();
    });
    GetSizer()->Add(button, wxSizerFlags().CenterVertical().Border(wxRIGHT | wxTOP | wxBOTTOM, FromDIP(gap::hair)));
    buttons_.push_back({button, std::move(is_on)});
}

void ToolRow::add_tools(SheetCanvas& sheet) {
    const auto tool = [this, &sheet](const wxString& name, const wxString& words, const wxString& help, Tool meant) {
        add(
            name, words, help, [&sheet, meant] { sheet.set_tool(meant); },
            [&sheet, meant] { return sheet.tool() == meant; });
    };
    tool("tool-select", _("Select"), _("Pick parts and move them"), Tool::select);
    tool("tool-hole", _("Hole"), _("Click in the plan to add a hole"), Tool::hole);
    tool("tool-corner", _("Corner"), _("Click at a side of the plate to add a corner"), Tool::corner);
    tool("tool-block", _("Block"), _("Click between joists to add a block"), Tool::block);
    tool("tool-pan", _("Move sheet"), _("Drag to pan a drawing"), Tool::pan);
}

void ToolRow::add_methods() {
    const auto method = [this](const wxString& name, const wxString& words, const wxString& help,
                               drawing::Method meant) {
        add(
            name, words, help,
            [this, meant] {
                session::Display display = session_.display();
                display.method = meant;
                session_.show(display);
            },
            [this, meant] { return session_.display().method == meant; });
    };
    method("method-hand", _("By hand"), _("Lever arm to the plate's edge, pushes square to the plate"),
           drawing::Method::hand);
    method("method-rigid", _("Rigid"), _("Plate taken as rigid"), drawing::Method::rigid);
    method("method-flexible", _("Flexible"), _("Plate bending included"), drawing::Method::flexible);
}

void ToolRow::add_parts() {
    const auto part = [this](const wxString& name, const wxString& words, const wxString& help,
                             bool session::Display::*shown) {
        add(
            name, words, help,
            [this, shown] {
                session::Display display = session_.display();
                display.*shown = !(display.*shown);
                session_.show(display);
            },
            [this, shown] { return session_.display().*shown; });
    };
    part("show-pressure", _("Pressure"), _("Where the plate bears, and how hard"), &session::Display::pressure);
    part("show-bent", _("Bent plate"), _("The plate's deflection, exaggerated"), &session::Display::bent);
    part("show-marks", _("Demand"), _("Numbers and bars of demand at the anchors"), &session::Display::marks);
    part("show-dimensions", _("Dimensions"), _("Distances to edges and between holes"), &session::Display::dimensions);
    part("show-holds", _("Holds"), _("Where the selected anchor or block may stand so that every check passes"),
         &session::Display::holds);
    part("show-framing", _("Framing"), _("Blocks and joists under the plate"), &session::Display::framing);
}

void ToolRow::refresh() {
    for (const Button& each : buttons_) {
        if (each.button->GetValue() != each.is_on()) each.button->SetValue(each.is_on());
    }
}

}  // namespace toehold::window
