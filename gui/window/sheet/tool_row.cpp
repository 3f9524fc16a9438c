#include "window/sheet/tool_row.h"

#include "editing/hand_tools.h"
#include "editing/sheet_words.h"
#include "window/sheet/canvas.h"
#include "window/text.h"
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
        if (change == session::Change::detail || change == session::Change::file) refresh_words();
    });
    refresh();
}

ToolRow::~ToolRow() { session_.stop_listening(listener_); }

void ToolRow::add(const wxString& name, std::function<Words()> words, std::function<void()> press,
                  std::function<bool()> is_on) {
    const Words now = words();
    auto* button = new wxToggleButton(this, wxID_ANY, now.label, wxDefaultPosition, wxDefaultSize, wxBU_EXACTFIT);
    button->SetFont(lettering(points::small));
    button->SetName(name);
    button->SetToolTip(now.help);
    button->Enable(now.enabled);
    button->Bind(wxEVT_TOGGLEBUTTON, [this, press = std::move(press)](wxCommandEvent&) {
        press();
        refresh();
    });
    GetSizer()->Add(button, wxSizerFlags().CenterVertical().Border(wxRIGHT | wxTOP | wxBOTTOM, FromDIP(gap::hair)));
    buttons_.push_back({button, std::move(is_on), std::move(words)});
}

void ToolRow::add_tools(SheetCanvas& sheet) {
    const auto tool = [this, &sheet](const wxString& name, std::function<Words()> words, Tool meant) {
        add(
            name, std::move(words), [&sheet, meant] { sheet.set_tool(meant); },
            [&sheet, meant] { return sheet.tool() == meant; });
    };
    const auto tools = [this] { return editing::hand_tools(session_.detail()); };
    const auto text = [this](const format::Phrase& words) { return text_of(words, session_.locale()); };
    tool(
        "tool-select",
        [] {
            return Words{_("Select"), _("Pick parts and move them")};
        },
        Tool::select);
    tool(
        "tool-hole",
        [tools, text] {
            return Words{text(tools().anchor_tool), text(tools().anchor_tool_help)};
        },
        Tool::hole);
    tool(
        "tool-corner",
        [tools] {
            return Words{_("Corner"), _("Click at a side of the plate to add a corner"), tools().shapes};
        },
        Tool::corner);
    tool(
        "tool-block",
        [tools] {
            return Words{_("Block"), _("Click between joists to add a block"), tools().framing};
        },
        Tool::block);
    tool(
        "tool-pan",
        [] {
            return Words{_("Move sheet"), _("Drag to pan a drawing")};
        },
        Tool::pan);
}

void ToolRow::add_methods() {
    const auto method = [this](const wxString& name, drawing::Method meant) {
        add(
            name,
            [this, meant] {
                const auto words = editing::method_words(session_.detail(), meant);
                return Words{text_of(words.name, session_.locale()), text_of(words.help, session_.locale())};
            },
            [this, meant] {
                session::Display display = session_.display();
                display.method = meant;
                session_.show(display);
            },
            [this, meant] { return session_.display().method == meant; });
    };
    method("method-hand", drawing::Method::hand);
    method("method-rigid", drawing::Method::rigid);
    method("method-flexible", drawing::Method::flexible);
}

void ToolRow::add_layer(const wxString& name, std::function<Words()> words, bool session::Display::*shown) {
    add(
        name, std::move(words),
        [this, shown] {
            session::Display display = session_.display();
            display.*shown = !(display.*shown);
            session_.show(display);
        },
        [this, shown] { return session_.display().*shown; });
}

void ToolRow::add_parts() {
    using editing::LayerWords;
    using editing::SheetWords;
    const auto of_mount = [this](LayerWords SheetWords::*layer) {
        return [this, layer] {
            const LayerWords words = editing::sheet_words(session_.detail()).*layer;
            return Words{text_of(words.name, session_.locale()), text_of(words.help, session_.locale())};
        };
    };
    const auto bent = [this, words = of_mount(&SheetWords::bent)] {
        Words bent = words();
        bent.enabled = editing::sheet_words(session_.detail()).can_bend;
        return bent;
    };
    add_layer("show-pressure", of_mount(&SheetWords::pressure), &session::Display::pressure);
    add_layer("show-bent", bent, &session::Display::bent);
    add_layer(
        "show-marks",
        [] {
            return Words{_("Demand"), _("Numbers and bars of demand at the anchors")};
        },
        &session::Display::marks);
    add_layer(
        "show-dimensions",
        [] {
            return Words{_("Dimensions"), _("Distances to edges and between holes")};
        },
        &session::Display::dimensions);
    add_layer(
        "show-holds",
        [this] {
            return Words{_("Holds"), _("Where the selected anchor or block may stand so that every check passes"),
                         editing::sheet_words(session_.detail()).can_shade};
        },
        &session::Display::holds);
    add_layer("show-framing", of_mount(&SheetWords::framing), &session::Display::framing);
}

void ToolRow::refresh() {
    for (const Button& each : buttons_) {
        if (each.button->GetValue() != each.is_on()) each.button->SetValue(each.is_on());
    }
}

void ToolRow::refresh_words() {
    bool changed = false;
    for (const Button& each : buttons_) {
        const Words words = each.words();
        if (each.button->IsEnabled() != words.enabled) each.button->Enable(words.enabled);
        if (each.button->GetToolTipText() != words.help) each.button->SetToolTip(words.help);
        if (each.button->GetLabel() == words.label) continue;
        each.button->SetLabel(words.label);
        changed = true;
    }
    if (changed) Layout();
}

}  // namespace toehold::window
