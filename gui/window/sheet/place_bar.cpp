#include "window/sheet/place_bar.h"

#include "editing/edits.h"
#include "editing/fields.h"
#include "editing/hand_tools.h"
#include "editing/picked.h"
#include "model/placement.h"
#include "window/sheet/readout.h"
#include "window/sheet/tips.h"
#include "window/text.h"
#include "window/theme/theme.h"

#include <wx/intl.h>
#include <wx/sizer.h>
#include <wx/stattext.h>
#include <wx/textctrl.h>

#include <algorithm>

namespace toehold::window {

namespace {

/// Selected parts that typed coordinates can move.
std::vector<model::PartId> placeable(const session::Session& session) {
    std::vector<model::PartId> parts;
    for (const auto& part : session.selection())
        if (editing::place_of(session.detail(), part)) parts.push_back(part);
    return parts;
}

wxString length(double value_in, const session::Session& session) {
    return text_of(editing::shown(value_in, units::Kind::length, session.display().system));
}

std::optional<double> typed(const wxString& text, const session::Session& session) {
    return editing::typed(text.utf8_string(), units::Kind::length, session.display().system);
}

}  // namespace

PlaceBar::PlaceBar(wxWindow* parent, session::Session& session) : wxPanel(parent, wxID_ANY), session_(session) {
    SetName("place-bar");
    const auto gap = FromDIP(gap::small);
    auto* row = new wxBoxSizer(wxHORIZONTAL);
    const auto add = [row, gap](wxWindow* window, int proportion = 0) {
        row->Add(window, wxSizerFlags(proportion).CenterVertical().Border(wxLEFT | wxRIGHT, gap));
    };
    name_ = new wxStaticText(this, wxID_ANY, {});
    name_->SetFont(name_->GetFont().Bold());
    x_label_ = new wxStaticText(this, wxID_ANY, "x");
    x_ = entry("place-x");
    y_label_ = new wxStaticText(this, wxID_ANY, "y");
    y_ = entry("place-y");
    said_ = new wxStaticText(this, wxID_ANY, {}, wxDefaultPosition, wxDefaultSize, wxST_ELLIPSIZE_END);
    said_->SetName("place-said");
    add(name_);
    add(x_label_);
    add(x_);
    add(y_label_);
    add(y_);
    add(said_, 1);
    auto* all = new wxBoxSizer(wxVERTICAL);
    all->Add(row, wxSizerFlags().Expand().Border(wxTOP | wxBOTTOM, gap / 2));
    SetSizer(all);
    listening_ = session_.listen([this](session::Change change) {
        if (change != session::Change::results && change != session::Change::file) refresh();
    });
    refresh();
}

PlaceBar::~PlaceBar() { session_.stop_listening(listening_); }

wxTextCtrl* PlaceBar::entry(const wxString& name) {
    auto* text = new wxTextCtrl(this, wxID_ANY, {}, wxDefaultPosition, FromDIP(wxSize(110, -1)), wxTE_PROCESS_ENTER);
    text->SetName(name);
    text->Bind(wxEVT_TEXT_ENTER, [this](wxCommandEvent&) { apply(); });
    text->Bind(wxEVT_CHAR_HOOK, [this](wxKeyEvent& event) {
        if (event.GetKeyCode() == WXK_ESCAPE)
            take_back();
        else
            event.Skip();
    });
    text->Bind(wxEVT_SET_FOCUS, [text](wxFocusEvent& event) {
        text->CallAfter([text] { text->SelectAll(); });
        event.Skip();
    });
    return text;
}

void PlaceBar::say(const wxString& words) {
    if (said_->GetLabel() == words) return;
    said_->SetLabel(words);
    said_->SetToolTip(words);
    Layout();
}

void PlaceBar::refresh() {
    const auto parts = placeable(session_);
    // What is being typed is kept while the same things are selected.
    const bool typing = x_->GetValue().utf8_string() != x_shown_ || y_->GetValue().utf8_string() != y_shown_;
    if (parts == of_ && typing && (x_->HasFocus() || y_->HasFocus())) return;
    of_ = parts;
    show_values();
}

void PlaceBar::show_values() {
    wxString x, y, name, said;
    if (of_.size() == 1) {
        const auto at = *editing::place_of(session_.detail(), of_.front());
        name = text_of(part_name(of_.front(), session_.locale()));
        x = length(at.x_in, session_);
        y = length(at.y_in, session_);
        if (const auto edge = editing::edge_distance_in(session_.detail(), of_.front()))
            said = wxString::Format(_("center to edge %s"), text_of(readout(*edge, session_.display().system)));
    } else if (of_.size() > 1) {
        name = wxString::Format(_("%zu parts, moved by"), of_.size());
        x = y = length(0.0, session_);
    } else {
        name = _("Nothing selected");
        said = text_of(editing::hand_tools(session_.detail()).select_to_type, session_.locale());
    }
    name_->SetLabel(name);
    show_coordinates();
    x_->Enable(!of_.empty());
    y_->Enable(!of_.empty());
    x_shown_ = x.utf8_string();
    y_shown_ = y.utf8_string();
    if (x_->GetValue() != x) x_->ChangeValue(x);
    if (y_->GetValue() != y) y_->ChangeValue(y);
    said_->SetLabel(said);
    said_->UnsetToolTip();
    Layout();
}

void PlaceBar::show_coordinates() {
    const model::PartId part = of_.empty() ? model::PartId{model::PartKind::anchor} : of_.front();
    const auto names = editing::coordinates_of(session_.detail(), part);
    const wxString step = of_.size() > 1 ? "d" : "";
    const auto show = [this, &step](wxStaticText& label, wxTextCtrl& entry, const format::Phrase& name,
                                    const format::Phrase& help) {
        label.SetLabel(step + text_of(name, session_.locale()));
        const wxString tip = text_of(help, session_.locale());
        if (entry.GetToolTipText() != tip) entry.SetToolTip(tip);
    };
    show(*x_label_, *x_, names.first, names.first_help);
    show(*y_label_, *y_, names.second, names.second_help);
}

void PlaceBar::apply() {
    if (of_.empty()) return;
    const auto x = typed(x_->GetValue(), session_), y = typed(y_->GetValue(), session_);
    if (!x || !y) {
        const wxString which = (x ? y_label_ : x_label_)->GetLabel();
        say(wxString::Format(_("%s takes %s"), which, text_of(units::accepted(units::Kind::length))));
        return;
    }
    place(*x, *y);
}

void PlaceBar::place(double x_in, double y_in) {
    // An entry left as it was shown stands for the value itself, which its figures may have rounded.
    const bool x_kept = x_->GetValue().utf8_string() == x_shown_, y_kept = y_->GetValue().utf8_string() == y_shown_;
    editing::Edit edit;
    if (of_.size() == 1) {
        const auto now = *editing::place_of(session_.detail(), of_.front());
        edit = editing::place_at(session_.detail(), of_.front(), {x_kept ? now.x_in : x_in, y_kept ? now.y_in : y_in});
    } else {
        const auto step = editing::typed_step(session_.detail(), of_, {x_in, y_in});
        edit = editing::nudge(session_.detail(), of_, step);
    }
    if (edit.step.empty() && !edit.refusal.empty()) {
        say(text_of(edit.refusal, session_.locale()));
        return;
    }
    x_shown_ = x_->GetValue().utf8_string();  // so that what is shown next is not taken for something half typed
    y_shown_ = y_->GetValue().utf8_string();
    session_.apply(edit);
    show_values();
}

void PlaceBar::take_back() {
    show_values();
    if (auto* sheet = wxWindow::FindWindowByName("sheet", wxGetTopLevelParent(this))) sheet->SetFocus();
}

}  // namespace toehold::window
