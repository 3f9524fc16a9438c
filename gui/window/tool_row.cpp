#include "window/tool_row.h"

#include "window/look.h"
#include "window/sheet_canvas.h"

#include <wx/sizer.h>
#include <wx/tglbtn.h>
#include <wx/translation.h>
#include <wx/wrapsizer.h>

#include <utility>

namespace toehold::window {

ToolRow::ToolRow(wxWindow* parent, desk::Desk& desk, SheetCanvas& sheet) : wxPanel(parent), desk_(desk) {
    SetName("tools");
    SetSizer(new wxWrapSizer(wxHORIZONTAL, wxREMOVE_LEADING_SPACES));
    add_tools(sheet);
    GetSizer()->AddSpacer(FromDIP(10));
    add_methods();
    GetSizer()->AddSpacer(FromDIP(10));
    add_parts();
    sheet.when_tool_changes([this](Tool) { refresh(); });
    listener_ = desk_.listen([this](desk::Change change) {
        if (change == desk::Change::display) refresh();
    });
    refresh();
}

ToolRow::~ToolRow() { desk_.stop_listening(listener_); }

void ToolRow::add(const wxString& name, const wxString& words, const wxString& help, std::function<void()> press,
                  std::function<bool()> is_on) {
    auto* button = new wxToggleButton(this, wxID_ANY, words, wxDefaultPosition, wxDefaultSize, wxBU_EXACTFIT);
    button->SetFont(lettering(8.5));
    button->SetName(name);
    button->SetToolTip(help);
    button->Bind(wxEVT_TOGGLEBUTTON, [this, press = std::move(press)](wxCommandEvent&) {
        press();
        refresh();
    });
    GetSizer()->Add(button, wxSizerFlags().CenterVertical().Border(wxRIGHT | wxTOP | wxBOTTOM, FromDIP(3)));
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
    tool("tool-pan", _("Move sheet"), _("Drag a drawing about under its frame"), Tool::pan);
}

void ToolRow::add_methods() {
    const auto method = [this](const wxString& name, const wxString& words, const wxString& help,
                               drawing::Method meant) {
        add(
            name, words, help,
            [this, meant] {
                desk::Display display = desk_.display();
                display.method = meant;
                desk_.show(display);
            },
            [this, meant] { return desk_.display().method == meant; });
    };
    method("method-hand", _("By hand"), _("Lever arm to the plate's edge, pushes square to the plate"),
           drawing::Method::hand);
    method("method-rigid", _("Rigid"), _("A plate that does not bend, on its bed"), drawing::Method::rigid);
    method("method-flexible", _("Flexible"), _("The plate as it bends, on its bed"), drawing::Method::flexible);
}

void ToolRow::add_parts() {
    const auto part = [this](const wxString& name, const wxString& words, const wxString& help,
                             bool desk::Display::*shown) {
        add(
            name, words, help,
            [this, shown] {
                desk::Display display = desk_.display();
                display.*shown = !(display.*shown);
                desk_.show(display);
            },
            [this, shown] { return desk_.display().*shown; });
    };
    part("show-pressure", _("Pressure"), _("Where the plate presses, and how hard"), &desk::Display::pressure);
    part("show-bent", _("Bent plate"), _("The plate's deflection, exaggerated"), &desk::Display::bent);
    part("show-marks", _("Demand"), _("Numbers and bars of demand at the anchors"), &desk::Display::marks);
    part("show-dimensions", _("Dimensions"), _("Distances to edges and between holes"), &desk::Display::dimensions);
    part("show-framing", _("Framing"), _("Blocks and joists under the plate"), &desk::Display::framing);
}

void ToolRow::refresh() {
    for (const Button& each : buttons_) {
        if (each.button->GetValue() != each.is_on()) each.button->SetValue(each.is_on());
    }
}

}  // namespace toehold::window
