#include "window/panels/checks/checks_panel.h"

#include "export/text/review_text.h"
#include "window/frame/menus.h"
#include "window/panels/checks/checks_list.h"
#include "window/text.h"

#include <fmt/format.h>
#include <wx/clipbrd.h>
#include <wx/dataobj.h>
#include <wx/menu.h>
#include <wx/sizer.h>
#include <wx/wrapsizer.h>

#include <algorithm>

namespace toehold::window {
namespace {

constexpr std::array filter_order{CheckFilter::all, CheckFilter::not_holding, CheckFilter::of_selection};

const std::vector<checks::CheckResult>& results_of(const review::Review* review) {
    static const std::vector<checks::CheckResult> none;
    return review == nullptr ? none : review->checks;
}

}  // namespace

ChecksPanel::ChecksPanel(wxWindow* parent, session::Session& session) : wxPanel(parent), session_(session) {
    SetName("checks-panel");
    add_controls();
    listening_ = session_.listen([this](session::Change change) { on_change(change); });
    apply_theme(theme_);
    rebuild();
}

ChecksPanel::~ChecksPanel() { session_.stop_listening(listening_); }

void ChecksPanel::add_controls() {
    auto* filters = new wxWrapSizer(wxHORIZONTAL, wxREMOVE_LEADING_SPACES);
    const std::array names{"checks-all", "checks-not-holding", "checks-of-selection"};
    const std::array tips{_("Every result"), _("Only checks that do not pass"), _("Only checks on the selected parts")};
    for (std::size_t at = 0; at < filters_.size(); ++at) {
        filters_[at] =
            new wxRadioButton(this, wxID_ANY, wxString(), wxDefaultPosition, wxDefaultSize, at == 0 ? wxRB_GROUP : 0L);
        filters_[at]->SetName(names[at]);
        filters_[at]->SetToolTip(tips[at]);
        filters_[at]->Bind(wxEVT_RADIOBUTTON, [this, at](wxCommandEvent&) { set_filter(filter_order[at]); });
        filters->Add(filters_[at], wxSizerFlags().CenterVertical().Border(wxRIGHT, FromDIP(gap::normal)));
    }
    freshness_ = new wxStaticText(this, wxID_ANY, wxString());
    freshness_->SetName("checks-freshness");
    freshness_->SetFont(GetFont().Bold());
    freshness_->SetToolTip(_("Results of the detail before the last edit"));
    filters->Add(freshness_, wxSizerFlags().CenterVertical());

    list_ = new ChecksList(this, {[this] { row_chosen(); }, [this](std::size_t result) { open_or_close(result); },
                                  [this] { copy_steps(); }});
    list_->is_open = [this](std::size_t result) { return open_.count(index_.keys[result]) != 0; };
    list_->is_marked = [this](const CheckRow& row) {
        return std::any_of(row.alike.begin(), row.alike.end(),
                           [this](std::size_t result) { return concerns(index_, result, session_.selection()); });
    };
    list_->Bind(wxEVT_CONTEXT_MENU, [this](wxContextMenuEvent&) { show_menu(); });

    auto* column = new wxBoxSizer(wxVERTICAL);
    column->Add(filters, wxSizerFlags().Expand().Border(wxALL, FromDIP(gap::small)));
    column->Add(list_, wxSizerFlags(1).Expand());
    SetSizer(column);
}

void ChecksPanel::apply_theme(const Theme& theme) {
    theme_ = theme;
    SetBackgroundColour(theme.paper);
    for (wxRadioButton* filter : filters_) {
        window::apply_theme(*filter, theme);
    }
    freshness_->SetForegroundColour(theme.ink);
    refresh_style();
    Refresh();
}

void ChecksPanel::refresh_style() {
    RowStyle style;
    style.theme = theme_;
    style.font = GetFont();
    style.locale = session_.locale();
    style.stale = session_.review() != nullptr && session_.freshness() != session::Freshness::current;
    list_->set_style(style);
    freshness_->SetLabel(style.stale ? _("out of date") : wxString());
    Layout();
}

/// All that the rows depend on beside the selection: a change that leaves it alone leaves the rows alone.
std::string ChecksPanel::state() const {
    std::string text = fmt::format("{} {} {}", static_cast<const void*>(session_.review()),
                                   static_cast<int>(session_.freshness()), static_cast<int>(session_.display().system));
    for (const std::string& message : messages()) text += "\n" + message;
    return text;
}

void ChecksPanel::on_change(session::Change change) {
    if (change == session::Change::selection) {
        if (filter_ == CheckFilter::of_selection && !choosing_) return rebuild();
        label_filters();
        return list_->RefreshAll();
    }
    if (state() != shown_state_) rebuild();
}

std::vector<std::string> ChecksPanel::messages() const {
    std::vector<std::string> lines;
    for (const model::Problem& problem : session_.problems())
        lines.push_back(model::sentence(problem, session_.locale()));
    if (!lines.empty()) lines.insert(lines.begin(), _("Fix this before anything can be checked:").utf8_string());
    if (!session_.failure().empty()) lines.push_back(format::text(session_.failure(), session_.locale()));
    if (const review::Review* review = session_.review(); review != nullptr && !review->no_demand.empty()) {
        lines.push_back(format::text(review->no_demand, session_.locale()));
    }
    if (lines.empty() && session_.review() == nullptr) lines.push_back(_("Running the checks...").utf8_string());
    return lines;
}

void ChecksPanel::label_filters() {
    const auto& results = results_of(session_.review());
    const std::array labels{_("a&ll"), _("&not passing"), _("of selec&tion")};
    for (std::size_t at = 0; at < filters_.size(); ++at) {
        const std::size_t count = filtered(results, index_, filter_order[at], session_.selection()).size();
        const wxString label = labels[at] + wxString::Format(" %zu", count);
        if (filters_[at]->GetLabel() != label) filters_[at]->SetLabel(label);
        filters_[at]->SetValue(filter_ == filter_order[at]);
    }
    Layout();
}

void ChecksPanel::rebuild() {
    const auto& results = results_of(session_.review());
    const std::string current = current_key();
    const std::size_t top = list_->GetVisibleRowsBegin();
    index_ = index_checks(results, session_.detail());
    const std::vector<std::size_t> through = filtered(results, index_, filter_, session_.selection());
    std::vector<std::string> lines = messages();
    if (through.empty() && !results.empty()) {
        lines.push_back(
            (filter_ == CheckFilter::of_selection ? _("No check on the selected parts.") : _("All checks pass."))
                .utf8_string());
    }
    list_->show(rows(results, index_, through, open_, lines), &results);
    list_->ScrollToRow(top);
    const auto& now = list_->shown();
    const auto same = std::find_if(now.begin(), now.end(),
                                   [&](const CheckRow& row) { return !current.empty() && key(row) == current; });
    list_->SetSelection(same == now.end() ? wxNOT_FOUND : static_cast<int>(same - now.begin()));
    shown_state_ = state();
    label_filters();
    refresh_style();
}

/// Names a row beyond a new review: its result, and which of its lines.
std::string ChecksPanel::key(const CheckRow& row) const {
    if (row.kind == RowKind::message || row.result >= index_.keys.size()) return {};
    return fmt::format("{}|{}|{}", index_.keys[row.result], static_cast<int>(row.kind), row.step);
}

std::string ChecksPanel::current_key() const {
    const CheckRow* row = list_->current();
    return row == nullptr ? std::string() : key(*row);
}

void ChecksPanel::set_filter(CheckFilter filter) {
    filter_ = filter;
    rebuild();
}

void ChecksPanel::open_or_close(std::size_t result) {
    const auto& before = list_->shown();
    const auto row = std::find_if(before.begin(), before.end(), [result](const CheckRow& one) {
        return one.kind == RowKind::result && one.result == result;
    });
    const int at = static_cast<int>(row - before.begin());
    const bool was_open = open_.count(index_.keys[result]) != 0;
    // All alike with it: after an edit another of them may be the worst, and the row stays as it was left.
    for (const std::size_t alike : row->alike) {
        if (was_open) {
            open_.erase(index_.keys[alike]);
        } else {
            open_.insert(index_.keys[alike]);
        }
    }
    list_->SetSelection(at);
    rebuild();
    list_->go_to(at);
    row_chosen();
}

void ChecksPanel::row_chosen() {
    const CheckRow* row = list_->current();
    if (row == nullptr || row->kind == RowKind::message) return;
    const std::vector<model::PartId> parts = index_.parts[row->result];
    if (parts.empty() || parts == session_.selection()) return;
    choosing_ = true;
    session_.select(parts);
    choosing_ = false;
}

void ChecksPanel::next_failing() {
    const auto& results = results_of(session_.review());
    if (filter_ == CheckFilter::of_selection) set_filter(CheckFilter::all);
    const int row = next_not_holding(list_->shown(), results, list_->GetSelection());
    if (row < 0) return session_.say(said(_("All checks pass.")));
    list_->go_to(row);
    row_chosen();
}

void ChecksPanel::explain() {
    if (list_->current() == nullptr) {
        const auto& shown = list_->shown();
        const auto first =
            std::find_if(shown.begin(), shown.end(), [](const CheckRow& one) { return one.kind == RowKind::result; });
        if (first == shown.end()) return;
        list_->SetSelection(static_cast<int>(first - shown.begin()));
    }
    if (const CheckRow* row = list_->current(); row->kind != RowKind::message) open_or_close(row->result);
    list_->SetFocus();
}

const checks::CheckResult* ChecksPanel::current_result() const {
    const CheckRow* row = list_->current();
    const review::Review* review = session_.review();
    if (row == nullptr || review == nullptr || row->kind == RowKind::message) return nullptr;
    return &review->checks[row->result];
}

std::string ChecksPanel::steps_text() const {
    const CheckRow* row = list_->current();
    const review::Review* review = session_.review();
    if (row == nullptr || review == nullptr) return {};
    if (row->kind == RowKind::message) return row->text;
    const checks::CheckResult& result = review->checks[row->result];
    return exporting::explain_text({result}, result.id, {session_.display().system});
}

void ChecksPanel::copy_steps() const {
    const std::string text = steps_text();
    if (text.empty() || !wxTheClipboard->Open()) return;
    wxTheClipboard->SetData(new wxTextDataObject(text_of(text)));
    wxTheClipboard->Close();
    session_.say(said(_("Worked steps copied as text.")));
}

void ChecksPanel::show_menu() {
    if (list_->current() == nullptr) return;
    wxMenu menu;
    const int open = menu.Append(wxID_ANY, _("Open or close the worked &steps\tEnter"))->GetId();
    const int say = menu.Append(wxID_ANY, _("&Remark...\tCtrl+Shift+R"))->GetId();
    const int copy = menu.Append(wxID_COPY, _("&Copy the worked steps\tCtrl+C"))->GetId();
    const int chosen = GetPopupMenuSelectionFromUser(menu);
    if (chosen == open) explain();
    if (chosen == copy) copy_steps();
    if (chosen == say) {
        wxCommandEvent wanted(wxEVT_MENU, command_remark);  // the frame asks
        ProcessWindowEvent(wanted);
    }
}

}  // namespace toehold::window
