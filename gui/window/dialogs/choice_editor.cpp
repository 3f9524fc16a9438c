#include "window/dialogs/choice_editor.h"

#include "window/panels/fields/field_filter.h"
#include "window/text.h"

#include <wx/button.h>
#include <wx/intl.h>
#include <wx/listctrl.h>
#include <wx/sizer.h>
#include <wx/textctrl.h>

#include <algorithm>

namespace toehold::window {
namespace {

/// Labels of catalog rows begin with the id, which stands in a column of its own here.
wxString without_id(const editing::Choice& choice, const format::Locale& locale) {
    const std::string label = format::text(choice.label, locale), start = choice.value + ": ";
    const bool repeated = !choice.value.empty() && label.compare(0, start.size(), start) == 0;
    return text_of(repeated ? label.substr(start.size()) : label);
}

}  // namespace

ChoiceEditor::ChoiceEditor(wxWindow* parent, const wxString& title, std::vector<editing::Choice> choices,
                           const std::string& current, const Theme& theme, const format::Locale& locale)
    : wxDialog(parent, wxID_ANY, title, wxDefaultPosition, wxDefaultSize, wxDEFAULT_DIALOG_STYLE | wxRESIZE_BORDER),
      choices_(std::move(choices)),
      locale_(locale) {
    SetName("choice");
    add_controls(theme);
    fill(current);
}

void ChoiceEditor::add_controls(const Theme& theme) {
    SetBackgroundColour(theme.paper);
    filter_ = new wxTextCtrl(this, wxID_ANY, wxString(), wxDefaultPosition, wxDefaultSize, wxTE_PROCESS_ENTER);
    filter_->SetName("choice-filter");
    filter_->SetHint(_("Type to narrow the list"));
    list_ = new wxListView(this, wxID_ANY, wxDefaultPosition, FromDIP(wxSize(460, 260)),
                           wxLC_REPORT | wxLC_SINGLE_SEL | wxLC_NO_HEADER);
    list_->SetName("choice-list");
    apply_theme(*filter_, theme);
    apply_theme(*list_, theme);
    list_->AppendColumn(_("Choice"), wxLIST_FORMAT_LEFT, FromDIP(300));
    list_->AppendColumn(_("Name in the file"), wxLIST_FORMAT_LEFT, FromDIP(140));

    filter_->Bind(wxEVT_TEXT, [this](wxCommandEvent&) { fill(picked().value_or(std::string())); });
    filter_->Bind(wxEVT_KEY_DOWN, &ChoiceEditor::on_key, this);
    filter_->Bind(wxEVT_TEXT_ENTER, [this](wxCommandEvent&) {
        if (picked()) EndModal(wxID_OK);
    });
    list_->Bind(wxEVT_LIST_ITEM_ACTIVATED, [this](wxListEvent&) { EndModal(wxID_OK); });

    auto* column = new wxBoxSizer(wxVERTICAL);
    column->Add(filter_, wxSizerFlags().Expand().Border(wxALL, FromDIP(gap::normal)));
    column->Add(list_, wxSizerFlags(1).Expand().Border(wxLEFT | wxRIGHT, FromDIP(gap::normal)));
    column->Add(CreateStdDialogButtonSizer(wxOK | wxCANCEL),
                wxSizerFlags().Expand().Border(wxALL, FromDIP(gap::normal)));
    SetSizerAndFit(column);
    for (const int id : {wxID_OK, wxID_CANCEL}) {
        wxWindow* press = FindWindow(id);
        if (press == nullptr) continue;
        press->SetBackgroundColour(theme.band);
        press->SetForegroundColour(theme.ink);
    }
    filter_->SetFocus();
}

void ChoiceEditor::fill(const std::string& current) {
    list_->DeleteAllItems();
    shown_.clear();
    const std::string wanted = filter_->GetValue().utf8_string();
    for (std::size_t at = 0; at < choices_.size(); ++at) {
        if (!holds_words(format::text(choices_[at].label, locale_) + " " + choices_[at].value, wanted)) continue;
        const long row = list_->InsertItem(list_->GetItemCount(), without_id(choices_[at], locale_));
        list_->SetItem(row, 1, text_of(choices_[at].value));
        shown_.push_back(at);
    }
    if (shown_.empty()) return;
    const auto same =
        std::find_if(shown_.begin(), shown_.end(), [&](std::size_t at) { return choices_[at].value == current; });
    const long row = same == shown_.end() ? 0 : static_cast<long>(same - shown_.begin());
    list_->Select(row);
    list_->Focus(row);
}

void ChoiceEditor::move_by(long rows) {
    if (shown_.empty()) return;
    const long row = std::clamp(list_->GetFirstSelected() + rows, 0L, static_cast<long>(shown_.size()) - 1);
    list_->Select(row);
    list_->Focus(row);
}

void ChoiceEditor::on_key(wxKeyEvent& event) {
    constexpr long page = 8;
    switch (event.GetKeyCode()) {
        case WXK_UP:
            return move_by(-1);
        case WXK_DOWN:
            return move_by(1);
        case WXK_PAGEUP:
            return move_by(-page);
        case WXK_PAGEDOWN:
            return move_by(page);
        default:
            event.Skip();
    }
}

std::optional<std::string> ChoiceEditor::picked() const {
    const long row = list_->GetFirstSelected();
    if (row < 0 || static_cast<std::size_t>(row) >= shown_.size()) return std::nullopt;
    return choices_[shown_[static_cast<std::size_t>(row)]].value;
}

std::optional<std::string> pick_choice(wxWindow* parent, const editing::Field& field, const Theme& theme,
                                       const format::Locale& locale) {
    std::vector<editing::Choice> choices = field.choices;
    const bool names_nothing =
        std::any_of(choices.begin(), choices.end(), [](const editing::Choice& one) { return one.value.empty(); });
    if (field.may_be_empty && !names_nothing) {
        choices.insert(choices.begin(), editing::Choice{"", format::phrase("not specified")});
    }
    ChoiceEditor editor(parent, text_of(field.label, locale), std::move(choices), field.value, theme, locale);
    if (editor.ShowModal() != wxID_OK) return std::nullopt;
    return editor.picked();
}

}  // namespace toehold::window
