#include "window/panels/assumed/assumed_panel.h"

#include "editing/job/job_form.h"
#include "window/controls/flow_list.h"
#include "window/start/job_controls.h"

#include <wx/sizer.h>
#include <wx/stattext.h>
#include <wx/translation.h>

#include <algorithm>
#include <utility>

namespace toehold::window {

AssumedPanel::AssumedPanel(wxWindow* parent, session::Session& session, job::Started started,
                           std::function<void(const std::string& path)> show_field)
    : wxPanel(parent), session_(session), started_(std::move(started)) {
    SetName("assumed-panel");
    head_ = new wxStaticText(this, wxID_ANY, wxString());
    head_->SetName("assumed-head");
    list_ = new FlowList(this, "assumed", [this](wxDC& dc, std::size_t row, const wxRect& area, bool paint) {
        return draw_row(dc, row, area, paint);
    });
    list_->chosen = [this, show_field = std::move(show_field)](std::size_t row) {
        if (row < started_.assumed.size()) show_field(editing::field_of(started_.assumed[row]));
    };
    auto* column = new wxBoxSizer(wxVERTICAL);
    column->Add(head_, wxSizerFlags().Expand().Border(wxALL, FromDIP(gap::small)));
    column->Add(list_, wxSizerFlags(1).Expand());
    SetSizer(column);
    listening_ = session_.listen([this](session::Change change) {
        if (change == session::Change::detail) refresh();
    });
    apply_theme(theme_);
    refresh();
}

AssumedPanel::~AssumedPanel() { session_.stop_listening(listening_); }

void AssumedPanel::apply_theme(const Theme& theme) {
    theme_ = theme;
    window::apply_theme(*this, theme);
    window::apply_theme(*head_, theme);
    list_->apply_theme(theme);
}

void AssumedPanel::refresh() {
    std::vector<bool> still = editing::still_assumed(started_, session_.detail());
    if (still == still_) return;
    still_ = std::move(still);
    const auto count = static_cast<std::size_t>(std::count(still_.begin(), still_.end(), true));
    head_->SetLabel(count == 0 ? wxString(_("No assumed value is left."))
                               : wxString::Format(wxPLURAL("%zu value nobody told. Confirm it or change it.",
                                                           "%zu values nobody told. Confirm or change each.",
                                                           static_cast<unsigned>(count)),
                                                  count));
    list_->show(still_.size());
}

int AssumedPanel::draw_row(wxDC& dc, std::size_t row, const wxRect& area, bool paint) const {
    if (row >= still_.size()) return 1;
    const Still still = still_[row] ? Still::assumed : Still::changed;
    return draw_assumed(dc, started_.assumed[row], area, {theme_, session_.locale(), still}, paint);
}

}  // namespace toehold::window
