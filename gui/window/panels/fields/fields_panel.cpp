#include "window/panels/fields/fields_panel.h"

#include "window/panels/fields/field_filter.h"
#include "window/panels/fields/field_property.h"
#include "window/text.h"
#include "window/theme/theme.h"

#include <wx/checkbox.h>
#include <wx/propgrid/propgrid.h>
#include <wx/sizer.h>
#include <wx/textctrl.h>
#include <wx/wupdlock.h>

#include <algorithm>
#include <initializer_list>
#include <utility>

namespace toehold::window {
namespace {

/// Its name in the grid, which no language changes.
wxString category_name(const format::Phrase& group) { return "group: " + text_of(format::english(group)); }

}  // namespace

FieldsPanel::FieldsPanel(wxWindow* parent, FieldSource source) : wxPanel(parent), source_(std::move(source)) {
    SetName("fields-panel");
    add_controls();
    apply_theme(theme_);
    update();
}

void FieldsPanel::add_controls() {
    filter_ = new wxTextCtrl(this, wxID_ANY);
    filter_->SetName("fields-filter");
    filter_->SetMinSize(FromDIP(wxSize(90, -1)));
    filter_->SetHint(_("Find a field"));
    filter_->SetToolTip(_("Show only fields that contain every word typed here"));
    filter_->Bind(wxEVT_TEXT, [this](wxCommandEvent&) { update(); });
    filter_->Bind(wxEVT_KEY_DOWN, [this](wxKeyEvent& event) {
        if (event.GetKeyCode() == WXK_ESCAPE) return filter_->Clear();
        if (event.GetKeyCode() == WXK_DOWN) return grid_->SetFocus();
        event.Skip();
    });
    selected_only_ = new wxCheckBox(this, wxID_ANY, _("&Selected only"));
    selected_only_->SetName("fields-selected-only");
    selected_only_->SetToolTip(_("Show only fields of the selected parts"));
    selected_only_->Bind(wxEVT_CHECKBOX, [this](wxCommandEvent&) { update(); });

    constexpr long centered = wxPG_SPLITTER_AUTO_CENTER, plain = wxBORDER_NONE;
    grid_ = new wxPropertyGrid(this, wxID_ANY, wxDefaultPosition, wxDefaultSize, centered | plain);
    grid_->SetName("fields");
    grid_->SetMinSize(FromDIP(wxSize(180, 120)));
    grid_->SetExtraStyle(wxPG_EX_HELP_AS_TOOLTIPS);
    grid_->Bind(wxEVT_PG_CHANGING, &FieldsPanel::on_changing, this);
    grid_->Bind(wxEVT_PG_CHANGED, &FieldsPanel::on_changed, this);
    grid_->Bind(wxEVT_PG_SELECTED, [this](wxPropertyGridEvent&) {
        refused_ = {};
        theme_editor();
        explain_current();
    });

    help_ = new wxTextCtrl(this, wxID_ANY, wxString(), wxDefaultPosition, FromDIP(wxSize(-1, 84)),
                           wxTE_MULTILINE | wxTE_READONLY | wxTE_NO_VSCROLL | wxBORDER_NONE);
    help_->SetName("fields-help");

    auto* top = new wxBoxSizer(wxHORIZONTAL);
    top->Add(filter_, wxSizerFlags(1).CenterVertical());
    top->Add(selected_only_, wxSizerFlags().CenterVertical().Border(wxLEFT, FromDIP(gap::normal)));
    auto* column = new wxBoxSizer(wxVERTICAL);
    column->Add(top, wxSizerFlags().Expand().Border(wxALL, FromDIP(gap::small)));
    column->Add(grid_, wxSizerFlags(1).Expand());
    column->Add(help_, wxSizerFlags().Expand().Border(wxALL, FromDIP(gap::small)));
    SetSizer(column);
}

void FieldsPanel::apply_theme(const Theme& theme) {
    theme_ = theme;
    SetBackgroundColour(theme.paper);
    for (wxWindow* control : std::initializer_list<wxWindow*>{filter_, selected_only_, help_, grid_}) {
        window::apply_theme(*control, theme);
    }
    grid_->SetCaptionBackgroundColour(theme.band);
    grid_->SetCaptionTextColour(theme.ink);
    grid_->SetCellBackgroundColour(theme.paper);
    grid_->SetCellTextColour(theme.ink);
    grid_->SetCellDisabledTextColour(theme.faded);
    grid_->SetEmptySpaceColour(theme.paper);
    grid_->SetLineColour(theme.rule);
    grid_->SetMarginColour(theme.band);
    grid_->SetSelectionBackgroundColour(theme.selected);
    grid_->SetSelectionTextColour(theme.ink);
    if (!shown_.empty()) rebuild(shown_);  // cells keep the theme they were made with
    explain_current();
    Refresh();
}

/// The line's editor is a control of its own, with the desktop's theme until told otherwise.
void FieldsPanel::theme_editor() {
    if (wxTextCtrl* editor = grid_->GetEditorTextCtrl(); editor != nullptr) {
        editor->SetBackgroundColour(theme_.selected);
        editor->SetForegroundColour(theme_.ink);
    }
}

void FieldsPanel::focus_filter() {
    filter_->SetFocus();
    filter_->SelectAll();
}

bool FieldsPanel::commit() { return grid_->CommitChangesFromEditor(); }

bool FieldsPanel::go_to(const std::string& path) {
    wxPGProperty* line = grid_->GetPropertyByName(text_of(path));
    if (line == nullptr) return false;
    grid_->EnsureVisible(line);
    return grid_->SelectProperty(line, true);
}

void FieldsPanel::update_soon() {
    if (update_waits_) return;
    // A drag brings many changes between two paintings; the grid takes up the last of them.
    update_waits_ = true;
    CallAfter([this] {
        update_waits_ = false;
        update();
    });
}

void FieldsPanel::update() {
    FieldFilter filter;
    filter.locale = source_.locale();
    filter.text = filter_->GetValue().utf8_string();
    filter.selection = source_.selection();
    filter.selected_only = selected_only_->GetValue();
    auto fields = filtered(source_.fields(), filter);
    if (same_but_for_values(fields, shown_)) {
        update_values(std::move(fields));
    } else {
        rebuild(std::move(fields));
    }
}

void FieldsPanel::update_values(std::vector<editing::Field> fields) {
    const wxPGProperty* edited = grid_->GetSelection();
    for (std::size_t at = 0; at < fields.size(); ++at) {
        if (fields[at].value == shown_[at].value) continue;
        wxPGProperty* line = grid_->GetPropertyByName(text_of(fields[at].path));
        if (line == nullptr) continue;
        if (line == edited && grid_->IsEditorsValueModified()) {
            fields[at].value = shown_[at].value;  // what is being typed stays; the value comes when that has ended
            continue;
        }
        grid_->SetPropertyValue(line, line_value(fields[at], fields[at].value, source_.locale()));
    }
    shown_ = std::move(fields);
}

void FieldsPanel::remember_collapsed() {
    for (const editing::Field& one : shown_) {
        const wxPGProperty* category = grid_->GetPropertyByName(category_name(one.group));
        if (category == nullptr) continue;
        if (category->IsExpanded()) {
            collapsed_.erase(format::english(one.group));
        } else {
            collapsed_.insert(format::english(one.group));
        }
    }
}

void FieldsPanel::rebuild(std::vector<editing::Field> fields) {
    const wxWindowUpdateLocker still(grid_);
    remember_collapsed();
    const wxPGProperty* current = grid_->GetSelection();
    const wxString name = current == nullptr ? wxString() : current->GetName();
    const bool same_start = !fields.empty() && !shown_.empty() && fields.front().path == shown_.front().path;
    const wxPoint scrolled = grid_->GetViewStart();
    wxWindow* focus = FindFocus();
    const bool at_hand = focus != nullptr && (focus == grid_ || grid_->IsDescendant(focus));
    shown_ = std::move(fields);
    fill();
    if (wxPGProperty* line = name.empty() ? nullptr : grid_->GetPropertyByName(name); line != nullptr) {
        grid_->SelectProperty(line, at_hand);
    }
    grid_->Scroll(0, same_start ? scrolled.y : 0);
}

void FieldsPanel::fill() {
    grid_->Clear();
    wxPGProperty* category = nullptr;
    format::Phrase group;
    for (const editing::Field& one : shown_) {
        if (category == nullptr || one.group != group) {
            group = one.group;
            category = grid_->GetPropertyByName(category_name(group));
            if (category == nullptr) {
                category =
                    grid_->Append(new wxPropertyCategory(text_of(group, source_.locale()), category_name(group)));
            }
        }
        wxPGProperty* line = grid_->AppendIn(category, field_property(one, theme_, source_.locale()));
        if (one.may_be_empty) line->SetAttribute(wxPG_ATTR_HINT, _("not specified"));
        line->SetHelpString(text_of(one.help, source_.locale()));
    }
    for (const std::string& folded : collapsed_) {
        if (wxPGProperty* line = grid_->GetPropertyByName("group: " + text_of(folded)); line != nullptr) {
            grid_->Collapse(line);
        }
    }
}

const editing::Field* FieldsPanel::field(const std::string& path) const {
    const auto found = std::find_if(shown_.begin(), shown_.end(), [&](const auto& one) { return one.path == path; });
    return found == shown_.end() ? nullptr : &*found;
}

void FieldsPanel::on_changing(wxPropertyGridEvent& event) {
    const std::string path = event.GetPropertyName().utf8_string();
    const editing::Field* one = field(path);
    if (one == nullptr) return;
    const std::string text = field_text(*one, event.GetValue(), source_.locale());
    const format::Phrase refusal = source_.refusal(path, text);
    if (refusal.empty()) return;
    event.Veto();
    event.SetValidationFailureBehavior(wxPG_VFB_STAY_IN_PROPERTY);
    refuse(refusal);
}

void FieldsPanel::on_changed(wxPropertyGridEvent& event) {
    const std::string path = event.GetPropertyName().utf8_string();
    const auto one = std::find_if(shown_.begin(), shown_.end(), [&](const auto& each) { return each.path == path; });
    if (one == shown_.end()) return;
    const std::string text = field_text(*one, event.GetProperty()->GetValue(), source_.locale());
    one->value = text;  // as the line stands; it may come to be shown otherwise (`86` as `86 in`)
    refused_ = {};
    explain_current();
    // The change may rebuild the grid, which must not happen while the grid still speaks.
    CallAfter([this, path, text] { apply(path, text); });
}

void FieldsPanel::apply(const std::string& path, const std::string& text) {
    if (const format::Phrase refusal = source_.set(path, text); !refusal.empty()) refuse(refusal);
}

void FieldsPanel::refuse(const format::Phrase& sentence) {
    refused_ = sentence;
    source_.say(sentence);
    explain_current();
}

void FieldsPanel::explain_current() {
    const wxPGProperty* line = grid_->GetSelection();
    const editing::Field* one = line == nullptr ? nullptr : field(line->GetName().utf8_string());
    help_->Clear();
    const wxFont plain = GetFont();
    if (!refused_.empty()) {
        help_->SetDefaultStyle(wxTextAttr(theme_.demand, wxNullColour, plain.Bold()));
        help_->AppendText(wxString(_("Not accepted:")) + " " + text_of(refused_, source_.locale()) + "\n");
    }
    help_->SetDefaultStyle(wxTextAttr(theme_.ink, wxNullColour, plain.Bold()));
    if (one != nullptr) help_->AppendText(text_of(one->label, source_.locale()) + "\n");
    help_->SetDefaultStyle(wxTextAttr(theme_.ink, wxNullColour, plain));
    if (one != nullptr) help_->AppendText(text_of(one->help, source_.locale()));
    if (one == nullptr && refused_.empty()) help_->AppendText(_("Select a field to see what it means."));
    help_->SetInsertionPoint(0);
}

}  // namespace toehold::window
