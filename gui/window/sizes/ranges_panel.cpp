#include "window/sizes/ranges_panel.h"

#include "window/controls/flow_list.h"
#include "window/text.h"
#include "window/theme/text_layout.h"

#include <wx/button.h>
#include <wx/checklst.h>
#include <wx/sizer.h>
#include <wx/stattext.h>
#include <wx/textctrl.h>
#include <wx/translation.h>
#include <wx/wrapsizer.h>

#include <algorithm>
#include <utility>

namespace toehold::window {

RangesPanel::RangesPanel(wxWindow* parent, session::Sizes& sizes, std::function<format::Locale()> locale)
    : wxPanel(parent), sizes_(sizes), locale_(std::move(locale)) {
    SetName("ranges");
    list_ = new FlowList(this, "sizes-ranges", [this](wxDC& dc, std::size_t row, const wxRect& area, bool paint) {
        return draw_row(dc, row, area, paint);
    });
    list_->SetMinSize(FromDIP(wxSize(210, 150)));
    list_->chosen = [this](std::size_t row) { show_row(row); };
    sides_ = new wxBoxSizer(wxHORIZONTAL);
    sides_->Add(list_, wxSizerFlags(1).Expand());
    sides_->Add(editor(), wxSizerFlags(1).Expand().Border(wxALL, FromDIP(gap::small)));
    SetSizer(sides_);
}

wxSizer* RangesPanel::editor() {
    title_ = new wxStaticText(this, wxID_ANY, wxString());
    help_ = new wxStaticText(this, wxID_ANY, wxString(), wxDefaultPosition, wxDefaultSize, wxST_ELLIPSIZE_END);
    refusal_ = new wxStaticText(this, wxID_ANY, wxString());
    refusal_->SetName("sizes-refusal");
    ticks_ = new wxCheckListBox(this, wxID_ANY);
    ticks_->SetName("sizes-ticks");
    ticks_->SetMinSize(FromDIP(wxSize(180, 80)));
    ticks_->Bind(wxEVT_CHECKLISTBOX, [this](wxCommandEvent& event) {
        const auto tick = static_cast<unsigned>(event.GetInt());
        sizes_.tick(row_, tick, ticks_->IsChecked(tick));
    });
    all_or_none_ = new wxPanel(this);
    auto* buttons = new wxBoxSizer(wxHORIZONTAL);
    for (const bool on : {true, false}) {
        auto* press = new wxButton(all_or_none_, wxID_ANY, on ? _("All") : _("None"), wxDefaultPosition, wxDefaultSize,
                                   wxBU_EXACTFIT);
        press->SetName(on ? "sizes-all" : "sizes-none");
        press->Bind(wxEVT_BUTTON, [this, on](wxCommandEvent&) { sizes_.tick_all(row_, on); });
        buttons->Add(press, wxSizerFlags().Border(wxRIGHT, FromDIP(gap::small)));
    }
    all_or_none_->SetSizer(buttons);
    entries_ = new wxPanel(this);
    entries_->SetSizer(new wxWrapSizer(wxHORIZONTAL, wxREMOVE_LEADING_SPACES));
    auto* column = new wxBoxSizer(wxVERTICAL);
    const auto below = wxSizerFlags().Expand().Border(wxTOP, FromDIP(gap::hair));
    column->Add(title_, wxSizerFlags().Expand());
    column->Add(help_, below);
    column->Add(ticks_, wxSizerFlags(1).Expand().Border(wxTOP, FromDIP(gap::hair)));
    column->Add(all_or_none_, below);
    column->Add(entries_, below);
    column->Add(refusal_, below);
    return column;
}

void RangesPanel::stand(bool beside) {
    const int wanted = beside ? wxHORIZONTAL : wxVERTICAL;
    if (sides_->GetOrientation() == wanted) return;
    sides_->SetOrientation(wanted);
    Layout();
}

void RangesPanel::apply_theme(const Theme& theme) {
    theme_ = theme;
    for (wxWindow* each : std::initializer_list<wxWindow*>{this, title_, help_, ticks_, entries_, all_or_none_})
        window::apply_theme(*each, theme);
    title_->SetFont(lettering(points::body, true));
    help_->SetFont(lettering(points::small));
    help_->SetForegroundColour(theme.faded);
    refusal_->SetFont(lettering(points::small));
    refusal_->SetForegroundColour(theme.demand);
    list_->apply_theme(theme);
}

const editing::RangeRow* RangesPanel::current() {
    const editing::RangesForm* form = sizes_.form();
    return form == nullptr || row_ >= form->rows().size() ? nullptr : &form->rows()[row_];
}

int RangesPanel::draw_row(wxDC& dc, std::size_t row, const wxRect& area, bool paint) {
    const editing::RangesForm* form = sizes_.form();
    if (form == nullptr || row >= form->rows().size()) return 1;
    const TextStyle title{lettering(points::small, true), theme_.ink};
    const bool refused = !form->refusal(row).empty();
    const TextStyle words{lettering(points::fine), refused ? theme_.demand : theme_.faded};
    const int left = area.x + gap::small, width = std::max(60, area.width - 2 * gap::small);
    const auto set = [&](const wxString& text, int y, const TextStyle& how) {
        return paint ? flow(dc, text, {left, y}, width, how) : flow_height(dc, text, width, how);
    };
    int y = area.y + 3;
    y += set(text_of(form->rows()[row].title, locale_()), y, title);
    y += set(text_of(form->summary(row), locale_()), y, words);
    return y + 4 - area.y;
}

void RangesPanel::show_row(std::size_t row) {
    if (row_ == row && !shown_ticks_.empty()) return;
    row_ = row;
    shown_ticks_.clear();
    refresh();
}

/// A list that says the same keeps its place.
void RangesPanel::fill_list() {
    const editing::RangesForm* form = sizes_.form();
    wxString words;
    for (std::size_t row = 0; form != nullptr && row < form->rows().size(); ++row)
        words += text_of(form->rows()[row].title, locale_()) + "\n" + text_of(form->summary(row), locale_()) + "\n";
    if (words == shown_rows_) return;
    shown_rows_ = words;
    list_->show(form == nullptr ? 0 : form->rows().size());
}

void RangesPanel::fill_ticks() {
    const editing::RangeRow* row = current();
    std::vector<std::string> words;
    wxArrayString labels;
    for (const editing::RangeTick& tick : row->ticks) {
        words.push_back(row->key + " " + tick.words);
        labels.Add(text_of(tick.label, locale_()));
    }
    if (words != shown_ticks_ || words.empty()) {
        ticks_->Set(labels);
        shown_ticks_ = words;
    }
    for (unsigned at = 0; at < row->ticks.size(); ++at) {
        if (ticks_->IsChecked(at) != row->ticks[at].on) ticks_->Check(at, row->ticks[at].on);
    }
    ticks_->Show(!words.empty());
    all_or_none_->Show(words.size() > 2);
}

void RangesPanel::fill_entries() {
    const editing::RangeRow* row = current();
    const bool same = typed_.size() == row->entries.size() && !typed_.empty() &&
                      typed_.front()->GetName().StartsWith("sizes-" + text_of(row->key));
    if (!same) {
        typed_.clear();
        entries_->DestroyChildren();
        wxSizer& line = *entries_->GetSizer();
        line.Clear();
        for (std::size_t at = 0; at < row->entries.size(); ++at) {
            auto* label = new wxStaticText(entries_, wxID_ANY, text_of(row->entries[at].label, locale_()));
            window::apply_theme(*label, theme_);
            auto* entry = new wxTextCtrl(entries_, wxID_ANY, wxString(), wxDefaultPosition, FromDIP(wxSize(72, -1)));
            entry->SetName("sizes-" + text_of(row->key) + "-" + text_of(row->entries[at].id));
            entry->Bind(wxEVT_TEXT,
                        [this, at](wxCommandEvent& event) { sizes_.type(row_, at, utf8(event.GetString())); });
            auto* pair = new wxBoxSizer(wxHORIZONTAL);
            pair->Add(label, wxSizerFlags().CenterVertical().Border(wxRIGHT, FromDIP(gap::hair)));
            pair->Add(entry, wxSizerFlags().CenterVertical().Border(wxRIGHT | wxBOTTOM, FromDIP(gap::small)));
            line.Add(pair, wxSizerFlags().CenterVertical());
            typed_.push_back(entry);
        }
    }
    for (std::size_t at = 0; at < row->entries.size(); ++at) {
        if (utf8(typed_[at]->GetValue()) != row->entries[at].text) {
            typed_[at]->ChangeValue(text_of(row->entries[at].text));
        }
    }
    entries_->Show(!row->entries.empty());
}

void RangesPanel::refresh() {
    fill_list();
    const editing::RangesForm* form = sizes_.form();
    const editing::RangeRow* row = current();
    if (row == nullptr) return;
    if (list_->GetSelection() != static_cast<int>(row_)) list_->SetSelection(static_cast<int>(row_));
    title_->SetLabel(text_of(row->title, locale_()));
    help_->SetLabel(text_of(row->help, locale_()));
    fill_ticks();
    fill_entries();
    refusal_->SetLabel(wxControl::EscapeMnemonics(text_of(form->refusal(row_), locale_())));
    refusal_->Wrap(std::max(160, entries_->GetSize().x));
    Layout();
}

}  // namespace toehold::window
