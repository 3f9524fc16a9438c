#include "window/charts/preview_card.h"

#include "window/controls/scene_pane.h"
#include "window/start/job_scenes.h"

#include <wx/button.h>
#include <wx/sizer.h>
#include <wx/stattext.h>
#include <wx/translation.h>

#include <utility>

namespace toehold::window {

PreviewCard::PreviewCard(wxWindow* parent, const catalog::Catalog& catalog,
                         std::function<void(const model::BaseDetail&)> take)
    : wxPanel(parent), catalog_(catalog), take_(std::move(take)) {
    SetName("preview-card");
    title_ = new wxStaticText(this, wxID_ANY, _("PREVIEW OF THIS POINT"));
    words_ = new wxStaticText(this, wxID_ANY, wxString());
    words_->SetName("preview-words");
    plan_ = new ScenePane(this, "preview-plan");
    press_ = new wxButton(this, wxID_ANY, _("&Use this detail"));
    press_->SetName("preview-take");
    press_->SetToolTip(_("Make it the detail. It can be undone."));
    press_->Bind(wxEVT_BUTTON, [this](wxCommandEvent&) { this->take(); });
    auto* leave = new wxButton(this, wxID_ANY, _("&Close preview"));
    leave->SetName("preview-drop");
    leave->Bind(wxEVT_BUTTON, [this](wxCommandEvent&) { drop(); });
    auto* buttons = new wxBoxSizer(wxHORIZONTAL);
    buttons->Add(press_, wxSizerFlags().Border(wxRIGHT, FromDIP(gap::normal)));
    buttons->Add(leave);
    auto* column = new wxBoxSizer(wxVERTICAL);
    const auto line = wxSizerFlags().Expand().Border(wxALL, FromDIP(gap::hair));
    column->Add(title_, line);
    column->Add(words_, line);
    column->Add(buttons, line);
    sides_ = new wxBoxSizer(wxVERTICAL);
    sides_->Add(column, wxSizerFlags().Expand());
    sides_->Add(plan_, wxSizerFlags(1).Expand());
    SetSizer(sides_);
    Hide();
}

void PreviewCard::show(std::optional<model::BaseDetail> detail, const wxString& words, const wxString& refusal,
                       const format::Locale& locale) {
    detail_ = std::move(detail);
    words_->SetLabel(wxControl::EscapeMnemonics(detail_ ? words : words + ". " + refusal));
    plan_->Show(detail_.has_value());
    if (detail_) plan_->show(plan_of(*detail_, catalog_, locale, true));
    press_->Enable(detail_.has_value());
    Show();
    GetParent()->Layout();
    const int wide = GetClientSize().x / (sides_->GetOrientation() == wxVERTICAL ? 1 : 2);
    words_->Wrap(std::max(FromDIP(150), wide - FromDIP(gap::wide)));
    Layout();
}

void PreviewCard::stand(bool below) {
    const int wanted = below ? wxVERTICAL : wxHORIZONTAL;
    if (sides_->GetOrientation() != wanted) sides_->SetOrientation(wanted);
}

void PreviewCard::take() {
    if (!detail_) return;
    const model::BaseDetail chosen = *detail_;
    drop();
    take_(chosen);
}

void PreviewCard::drop() {
    if (!IsShown()) return;
    detail_.reset();
    Hide();
    GetParent()->Layout();
}

void PreviewCard::apply_theme(const Theme& theme) {
    for (wxWindow* each : std::initializer_list<wxWindow*>{this, title_, words_}) window::apply_theme(*each, theme);
    title_->SetFont(lettering(points::small, true));
    words_->SetFont(lettering(points::small));
    plan_->set_ground(theme.ground);
}

}  // namespace toehold::window
