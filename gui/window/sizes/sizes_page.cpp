#include "window/sizes/sizes_page.h"

#include "drawing/drawings.h"
#include "session/session.h"
#include "window/controls/progress_line.h"
#include "window/controls/scene_pane.h"
#include "window/delivery.h"
#include "window/sizes/progress_words.h"
#include "window/sizes/ranges_panel.h"
#include "window/sizes/results_list.h"
#include "window/text.h"

#include <wx/button.h>
#include <wx/checkbox.h>
#include <wx/choice.h>
#include <wx/sizer.h>
#include <wx/stattext.h>
#include <wx/translation.h>

#include <utility>

namespace toehold::window {
namespace {

constexpr int side_by_side_from = 820;  // DIP

}  // namespace

SizesPage::SizesPage(wxWindow* parent, session::Session& session)
    : wxPanel(parent),
      session_(session),
      alive_(std::make_shared<SizesPage*>(this)),
      sizing_(session.catalog(), delivery<solving::SizingNews>(
                                     alive_, [](SizesPage& page, const auto& news) { page.sizes().receive(news); })),
      sizes_(session,
             {[this](search::Space space) { return sizing_.begin(std::move(space)); }, [this] { sizing_.stop(); }},
             [this] { told(); }) {
    SetName("sizes-page");
    const auto locale = [this] { return session_.locale(); };
    ranges_ = new RangesPanel(this, sizes_, locale);
    results_ = new ResultsList(this, sizes_, locale);
    sides_ = new wxBoxSizer(wxHORIZONTAL);
    sides_->Add(ranges_, wxSizerFlags(4).Expand());
    sides_->Add(results(), wxSizerFlags(6).Expand().Border(wxLEFT | wxTOP, FromDIP(gap::small)));
    auto* column = new wxBoxSizer(wxVERTICAL);
    column->Add(head(), wxSizerFlags().Expand().Border(wxALL, FromDIP(gap::normal)));
    column->Add(sides_, wxSizerFlags(1).Expand());
    SetSizer(column);
    Bind(wxEVT_SIZE, [this](wxSizeEvent& event) {
        stand();
        event.Skip();
    });
    listening_ = session_.listen([this](session::Change change) {
        if (change == session::Change::results || change == session::Change::display) told();
    });
    apply_theme(theme_);
}

SizesPage::~SizesPage() { session_.stop_listening(listening_); }

wxSizer* SizesPage::head() {
    press_ = new wxButton(this, wxID_ANY, _("&Find sizes"));
    press_->SetName("sizes-find");
    press_->Bind(wxEVT_BUTTON, [this](wxCommandEvent&) { press(); });
    reset_ = new wxButton(this, wxID_ANY, _("&Reset ranges"));
    reset_->SetName("sizes-reset");
    reset_->SetToolTip(_("What a shop would try for the detail as it stands"));
    reset_->Bind(wxEVT_BUTTON, [this](wxCommandEvent&) {
        sizes_.reset_ranges();
        told();
    });
    count_ = new wxStaticText(this, wxID_ANY, wxString());
    count_->SetName("sizes-count");
    far_ = new wxStaticText(this, wxID_ANY, wxString(), wxDefaultPosition, wxDefaultSize, wxST_ELLIPSIZE_END);
    far_->SetName("sizes-progress");
    line_ = new ProgressLine(this, "sizes-line");
    auto* words = new wxBoxSizer(wxVERTICAL);
    words->Add(count_, wxSizerFlags().Expand());
    words->Add(far_, wxSizerFlags().Expand());
    words->Add(line_, wxSizerFlags().Expand().Border(wxTOP, FromDIP(gap::hair)));
    auto* row = new wxBoxSizer(wxHORIZONTAL);
    row->Add(press_, wxSizerFlags().CenterVertical().Border(wxRIGHT, FromDIP(gap::wide)));
    row->Add(words, wxSizerFlags(1).CenterVertical());
    row->Add(reset_, wxSizerFlags().CenterVertical().Border(wxLEFT, FromDIP(gap::wide)));
    return row;
}

wxSizer* SizesPage::results() {
    summary_ = new wxStaticText(this, wxID_ANY, wxString());
    summary_->SetName("sizes-summary");
    nearest_ = new wxStaticText(this, wxID_ANY, wxString());
    nearest_->SetName("sizes-nearest");
    open_nearest_ = new wxButton(this, wxID_ANY, _("&Open the nearest miss"));
    open_nearest_->SetName("sizes-open-nearest");
    open_nearest_->Bind(wxEVT_BUTTON, [this](wxCommandEvent&) { sizes_.open_nearest(); });
    wxArrayString orders;
    for (const wxString& words : {_("Least cost first"), _("Least weight first"), _("Fewest pieces first"),
                                  _("Fewest anchors first"), _("Least ratio first"), _("Least ratio misplaced first")})
        orders.Add(words);
    order_ = new wxChoice(this, wxID_ANY, wxDefaultPosition, wxDefaultSize, orders);
    order_->SetName("sizes-order");
    order_->Bind(wxEVT_CHOICE, [this](wxCommandEvent& event) {
        sizes_.order_by(static_cast<session::SizeOrder>(event.GetSelection()));
    });
    all_ = new wxCheckBox(this, wxID_ANY, wxString());
    all_->SetName("sizes-show-all");
    all_->SetToolTip(_("Also those that another beats in cost, weight, pieces, anchors and ratio alike"));
    all_->Bind(wxEVT_CHECKBOX, [this](wxCommandEvent& event) { sizes_.show_all(event.IsChecked()); });
    plan_ = new ScenePane(this, "sizes-plan");
    auto* order = new wxBoxSizer(wxHORIZONTAL);
    order->Add(order_, wxSizerFlags().CenterVertical());
    order->Add(all_, wxSizerFlags().CenterVertical().Border(wxLEFT, FromDIP(gap::wide)));
    auto* column = new wxBoxSizer(wxVERTICAL);
    const auto line = wxSizerFlags().Expand().Border(wxRIGHT | wxBOTTOM, FromDIP(gap::small));
    column->Add(summary_, line);
    column->Add(nearest_, line);
    column->Add(open_nearest_, wxSizerFlags().Border(wxBOTTOM, FromDIP(gap::small)));
    column->Add(order, line);
    column->Add(results_, wxSizerFlags(3).Expand());
    column->Add(plan_, wxSizerFlags(2).Expand());
    return column;
}

void SizesPage::apply_theme(const Theme& theme) {
    theme_ = theme;
    for (wxWindow* each : std::initializer_list<wxWindow*>{this, count_, far_, summary_, nearest_, all_})
        window::apply_theme(*each, theme);
    count_->SetFont(lettering(points::body, true));
    for (wxWindow* each : std::initializer_list<wxWindow*>{far_, summary_, nearest_})
        each->SetFont(lettering(points::small));
    ranges_->apply_theme(theme);
    results_->apply_theme(theme);
    line_->apply_theme(theme);
    plan_->set_ground(theme.ground);
    told();
}

void SizesPage::press() {
    if (sizes_.state() == session::Sizes::State::running) {
        sizes_.stop();
    } else {
        sizes_.begin();
    }
}

void SizesPage::begin() { sizes_.begin(); }

void SizesPage::shown() { told(); }

/// Many changes come between two paintings; and while the page is out of sight it waits.
void SizesPage::told() {
    if (waits_ || !IsShownOnScreen()) return;
    waits_ = true;
    CallAfter([this] {
        waits_ = false;
        refresh();
    });
}

void SizesPage::stand() {
    const bool wide = GetClientSize().x >= FromDIP(side_by_side_from);
    const int wanted = wide ? wxHORIZONTAL : wxVERTICAL;
    plan_->Show(wide);
    if (sides_->GetOrientation() != wanted) sides_->SetOrientation(wanted);
    ranges_->stand(!wide);
}

void SizesPage::refresh() {
    refresh_head();
    ranges_->refresh();
    refresh_results();
    refresh_plan();
    Layout();
}

void SizesPage::refresh_head() {
    const bool running = sizes_.state() == session::Sizes::State::running;
    const format::Phrase why_not = running ? format::Phrase() : sizes_.why_not();
    press_->SetLabel(running ? _("&Stop") : _("&Find sizes"));
    press_->Enable(running || why_not.empty());
    reset_->Enable(!running);
    ranges_->Enable(!running);
    if (!why_not.empty()) {
        count_->SetLabel(wxControl::EscapeMnemonics(text_of(why_not, session_.locale())));
    } else if (const auto candidates = sizes_.count()) {
        count_->SetLabel(candidates_words(*candidates));
    }
    const bool any = sizes_.state() != session::Sizes::State::idle;
    far_->SetLabel(any ? progress_words(sizes_.progress(), running) : wxString(_("Every check, every direction.")));
    const search::Counts& counts = sizes_.progress().counts;
    line_->Show(any);
    line_->show(counts.candidates == 0 ? 0.0
                                       : static_cast<double>(counts.judged) / static_cast<double>(counts.candidates));
}

void SizesPage::refresh_results() {
    const auto set = [this](wxStaticText* text, const format::Phrase& words) {
        text->SetLabel(wxControl::EscapeMnemonics(text_of(words, session_.locale())));
        text->Wrap(std::max(FromDIP(200), results_->GetSize().x - FromDIP(gap::wide)));
        text->Show(!words.empty());
    };
    set(summary_, sizes_.summary());
    set(nearest_, sizes_.nearest_words());
    open_nearest_->Show(sizes_.has_nearest());
    const bool any = sizes_.holding() > 0;
    order_->Show(any);
    order_->SetSelection(static_cast<int>(sizes_.order()));
    all_->Show(any);
    all_->SetLabel(wxString::Format(_("All %zu that &hold"), sizes_.holding()));
    all_->SetValue(sizes_.shows_all());
    results_->refresh();
}

void SizesPage::refresh_plan() {
    if (!plan_->IsShown()) return;
    // Of what is to be built alone: forces stand on the drawings.
    plan_->show(drawing::plan({session_.detail(), session_.resolved(), nullptr, session_.locale()}, {}));
}

}  // namespace toehold::window
