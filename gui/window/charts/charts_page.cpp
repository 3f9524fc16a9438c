#include "window/charts/charts_page.h"

#include "session/session.h"
#include "window/charts/chart_pane.h"
#include "window/charts/preview_card.h"
#include "window/controls/progress_line.h"
#include "window/delivery.h"
#include "window/text.h"

#include <wx/button.h>
#include <wx/choice.h>
#include <wx/sizer.h>
#include <wx/stattext.h>
#include <wx/textctrl.h>
#include <wx/translation.h>
#include <wx/wrapsizer.h>

#include <algorithm>
#include <utility>

namespace toehold::window {
namespace {

using Kind = solving::StudyAsked::Kind;

constexpr int side_by_side_from = 820;  // DIP

/// `36 in..48 in/2 in` of a range, the names of its sizes else.
wxString customary(const study::Field& field) {
    if (!field.sizes.empty()) return {};
    const auto text = [&](double value) { return text_of(study::value_words(field, value, units::System::us)); };
    return text(field.range.least) + ".." + text(field.range.most) + "/" + text(field.step);
}

}  // namespace

ChartsPage::ChartsPage(wxWindow* parent, session::Session& session)
    : wxPanel(parent),
      session_(session),
      alive_(std::make_shared<ChartsPage*>(this)),
      studies_(session.catalog(),
               delivery<solving::StudyNews>(alive_, [](ChartsPage& page, const auto& news) { page.receive(news); })) {
    SetName("charts-page");
    auto* controls = new wxWrapSizer(wxHORIZONTAL, wxREMOVE_LEADING_SPACES);
    add_controls(*controls);
    pane_ = new ChartPane(this, "chart", [this](const drawing::Spot& spot) { picked(spot); });
    pane_->twice = [this] { card_->take(); };
    notes_ = new wxStaticText(this, wxID_ANY, wxString());
    notes_->SetName("chart-notes");
    card_ = new PreviewCard(this, session.catalog(), [this](const model::BaseDetail& detail) { take(detail); });
    sides_ = new wxBoxSizer(wxHORIZONTAL);
    sides_->Add(pane_, wxSizerFlags(5).Expand());
    sides_->Add(card_, wxSizerFlags(3).Expand().Border(wxLEFT, FromDIP(gap::small)));
    auto* column = new wxBoxSizer(wxVERTICAL);
    column->Add(controls, wxSizerFlags().Expand().Border(wxALL, FromDIP(gap::normal)));
    column->Add(state_, wxSizerFlags().Expand().Border(wxLEFT | wxRIGHT, FromDIP(gap::normal)));
    column->Add(line_, wxSizerFlags().Expand().Border(wxLEFT | wxRIGHT | wxTOP, FromDIP(gap::normal)));
    column->Add(sides_, wxSizerFlags(1).Expand().Border(wxALL, FromDIP(gap::small)));
    column->Add(notes_, wxSizerFlags().Expand().Border(wxLEFT | wxRIGHT | wxBOTTOM, FromDIP(gap::normal)));
    SetSizer(column);
    Bind(wxEVT_SIZE, [this](wxSizeEvent& event) {
        stand();
        event.Skip();
    });
    Bind(wxEVT_CHAR_HOOK, [this](wxKeyEvent& event) {
        if (event.GetKeyCode() == WXK_ESCAPE && card_->IsShown()) return card_->drop();
        event.Skip();
    });
    listening_ = session_.listen([this](session::Change change) {
        if (change == session::Change::detail && IsShownOnScreen()) refresh_state();
    });
    apply_theme(theme_);
}

ChartsPage::~ChartsPage() { session_.stop_listening(listening_); }

void ChartsPage::add_controls(wxSizer& row) {
    const auto flags = wxSizerFlags().CenterVertical().Border(wxRIGHT | wxBOTTOM, FromDIP(gap::small));
    wxArrayString kinds;
    for (const wxString& words :
         {_("Ratio over one input"), _("Which input matters most"), _("What holds over two inputs")})
        kinds.Add(words);
    kind_ = new wxChoice(this, wxID_ANY, wxDefaultPosition, wxDefaultSize, kinds);
    kind_->SetName("chart-kind");
    kind_->SetSelection(0);
    kind_->Bind(wxEVT_CHOICE, [this](wxCommandEvent&) { draw(); });
    row.Add(kind_, flags);
    across_ = axis(row, _("over"), "chart-across");
    up_ = axis(row, _("and"), "chart-up");
    auto* press = new wxButton(this, wxID_ANY, _("D&raw"));
    press->SetName("chart-draw");
    press->Bind(wxEVT_BUTTON, [this](wxCommandEvent&) { draw(); });
    row.Add(press, flags);
    state_ = new wxStaticText(this, wxID_ANY, wxString());
    state_->SetName("chart-state");
    line_ = new ProgressLine(this, "chart-line");
}

ChartsPage::Axis ChartsPage::axis(wxSizer& row, const wxString& title, const wxString& name) {
    const auto flags = wxSizerFlags().CenterVertical().Border(wxRIGHT | wxBOTTOM, FromDIP(gap::small));
    Axis made;
    made.title = new wxStaticText(this, wxID_ANY, title);
    made.field = new wxChoice(this, wxID_ANY, wxDefaultPosition, FromDIP(wxSize(196, -1)));
    made.field->SetName(name);
    made.values =
        new wxTextCtrl(this, wxID_ANY, wxString(), wxDefaultPosition, FromDIP(wxSize(130, -1)), wxTE_PROCESS_ENTER);
    made.values->SetName(name + "-values");
    made.values->SetToolTip(_("First..last/step. Empty: the customary values."));
    made.values->Bind(wxEVT_TEXT_ENTER, [this](wxCommandEvent&) { draw(); });
    for (wxWindow* each : std::initializer_list<wxWindow*>{made.title, made.field, made.values}) row.Add(each, flags);
    made.field->Bind(wxEVT_CHOICE, [this, made](wxCommandEvent&) mutable {
        suggest_values(made);
        draw();
    });
    return made;
}

void ChartsPage::fill_fields() {
    if (session_.resolved() == nullptr) return;
    const wxString was_across = across_.field->GetStringSelection(), was_up = up_.field->GetStringSelection();
    fields_.clear();
    fields_of_ = std::make_shared<const catalog::Resolved>(*session_.resolved());
    fields_ = study::fields({*fields_of_, session_.catalog()});
    wxArrayString names;
    for (const study::Field& field : fields_) names.Add(text_of(field.name, session_.locale()));
    const auto fill = [&](Axis& axis, const wxString& was, const char* customary_id) {
        axis.field->Set(names);
        int wanted = axis.field->FindString(was, true);
        const auto first = std::find_if(fields_.begin(), fields_.end(),
                                        [&](const study::Field& one) { return one.id == customary_id; });
        if (wanted == wxNOT_FOUND && first != fields_.end()) wanted = static_cast<int>(first - fields_.begin());
        const bool same = wanted != wxNOT_FOUND && names[static_cast<std::size_t>(wanted)] == was;
        axis.field->SetSelection(wanted == wxNOT_FOUND ? 0 : wanted);
        if (!same) suggest_values(axis);
    };
    fill(across_, was_across, "height");
    fill(up_, was_up, "height");
    // The chart for the wall: what holds over spacing and height; never over one input twice.
    const bool map = kind_->GetSelection() == static_cast<int>(Kind::map);
    const study::Field* const up = chosen(up_);
    if (map && up != nullptr && chosen(across_) == up)
        fill(across_, wxString(), up->id == "tributary" ? "height" : "tributary");
    show_axes();
}

const study::Field* ChartsPage::chosen(const Axis& axis) const {
    const int at = axis.field->GetSelection();
    return at < 0 || static_cast<std::size_t>(at) >= fields_.size() ? nullptr : &fields_[static_cast<std::size_t>(at)];
}

void ChartsPage::suggest_values(Axis& axis) const {
    const study::Field* const field = chosen(axis);
    if (field == nullptr) return;
    axis.values->ChangeValue(customary(*field));
    axis.field->SetToolTip(text_of(field->help, session_.locale()));
}

std::string ChartsPage::asked_of(const Axis& axis) const {
    const study::Field* const field = chosen(axis);
    if (field == nullptr) return {};
    const std::string values = utf8(axis.values->GetValue());
    return field->id + (values.empty() ? "" : "=" + values);
}

void ChartsPage::show_axes() {
    const auto kind = static_cast<Kind>(kind_->GetSelection());
    const auto show = [](const Axis& axis, bool shown) {
        axis.title->Show(shown);
        axis.field->Show(shown);
        axis.values->Show(shown);
    };
    show(across_, kind != Kind::tornado);
    show(up_, kind == Kind::map);
    Layout();
}

void ChartsPage::apply_theme(const Theme& theme) {
    theme_ = theme;
    for (wxWindow* each : std::initializer_list<wxWindow*>{this, across_.title, up_.title, state_, notes_})
        window::apply_theme(*each, theme);
    state_->SetFont(lettering(points::small));
    notes_->SetFont(lettering(points::small));
    pane_->apply_theme(theme);
    card_->apply_theme(theme);
    line_->apply_theme(theme);
}

/// The preview beside the chart, or below it where there is no room.
void ChartsPage::stand() {
    const bool beside = GetClientSize().x >= FromDIP(side_by_side_from);
    const int wanted = beside ? wxHORIZONTAL : wxVERTICAL;
    if (sides_->GetOrientation() != wanted) sides_->SetOrientation(wanted);
    card_->stand(beside);
}

void ChartsPage::shown() {
    if (fields_.empty()) fill_fields();
    if (number_ == 0) {
        draw();
    } else {
        refresh_state();
    }
}

void ChartsPage::draw() {
    fill_fields();
    if (fields_of_ == nullptr || session_.resolved() == nullptr) return refresh_state();
    card_->drop();
    solving::StudyAsked asked{static_cast<Kind>(kind_->GetSelection()), asked_of(across_), asked_of(up_)};
    // Out of date it may stand, pale, until the new one comes; of another kind it would answer what nobody asks.
    if (news_.asked.kind != asked.kind) pane_->show({});
    running_ = true;
    news_ = {};
    news_.asked.kind = asked.kind;
    details_ = 0;
    number_ = studies_.begin(*session_.resolved(), std::move(asked));
    refresh_state();
}

void ChartsPage::receive(const solving::StudyNews& news) {
    if (news.number != number_) return;
    news_ = news;
    running_ = !news.study && news.failure.empty();
    if (details_ == 0) details_ = news.all;
    if (news.study) {
        pane_->show([study = news.study, locale = session_.locale()](double width_mm, double height_mm) {
            return drawing::chart_of(*study, {width_mm, height_mm, locale});
        });
    } else if (!running_) {
        pane_->show({});
    }
    refresh_state();
}

bool ChartsPage::fits() const { return news_.resolved && news_.resolved->detail == session_.detail(); }

void ChartsPage::refresh_state() {
    wxString words;
    if (session_.resolved() == nullptr) {
        words = _("The detail as it stands cannot be solved.");
    } else if (running_) {
        if (news_.all == 0) {
            words = _("Drawing...");
        } else if (news_.all == details_) {
            words = wxString::Format(_("%zu of %zu details"), news_.done, news_.all);
        } else {
            words = wxString::Format(_("Where it stops holding: %zu of %zu"), news_.done, news_.all);
        }
    } else if (!news_.failure.empty()) {
        words = text_of(news_.failure, session_.locale());
    } else if (!fits()) {
        words = _("Out of date: of the detail before the last edit. Draw it again.");
    } else {
        words = _("Press a point to see its detail, twice to use it. Each point is a full review of that detail.");
    }
    state_->SetLabel(wxControl::EscapeMnemonics(words));
    line_->Show(running_);
    line_->show(news_.all == 0 ? 0.0 : static_cast<double>(news_.done) / static_cast<double>(news_.all));
    pane_->set_stale(running_ || (news_.study && !fits()));
    wxString notes;
    if (news_.study) {
        for (const format::Phrase& note : pane_->chart().notes)
            notes += (notes.empty() ? wxString() : wxString(" ")) + text_of(note, session_.locale());
    }
    notes_->SetLabel(wxControl::EscapeMnemonics(notes));
    notes_->Wrap(std::max(FromDIP(240), GetClientSize().x - 2 * FromDIP(gap::normal)));
    Layout();
}

void ChartsPage::picked(const drawing::Spot& spot) {
    if (!news_.resolved) return;
    study::Made made = study::detail_of({*news_.resolved, session_.catalog()}, spot.detail);
    card_->show(std::move(made.detail), text_of(spot.words), text_of(made.refusal, session_.locale()),
                session_.locale());
}

void ChartsPage::take(const model::BaseDetail& detail) {
    if (!fits())
        return session_.say(
            format::phrase("The detail has changed since this chart. Draw it again, or undo the change."));
    session_.change(format::phrase("Use a detail from the chart"), detail);
    session_.rest();
}

}  // namespace toehold::window
