#include "window/start/job_page.h"

#include "window/controls/flow_list.h"
#include "window/controls/picture_choice.h"
#include "window/controls/scene_pane.h"
#include "window/start/job_controls.h"
#include "window/start/job_scenes.h"
#include "window/text.h"

#include <wx/button.h>
#include <wx/scrolwin.h>
#include <wx/sizer.h>
#include <wx/stattext.h>
#include <wx/translation.h>

#include <algorithm>
#include <array>
#include <utility>

namespace toehold::window {
namespace {

constexpr int question_wide = 150;  // DIP
const char* const place_id = "place";

wxStaticText* heading(wxWindow* parent, const wxString& text, const Theme& theme) {
    auto* made = new wxStaticText(parent, wxID_ANY, text);
    made->SetFont(lettering(points::body, true));
    made->SetForegroundColour(theme.ink);
    return made;
}

/// A word or two for under the picture; the question's own words stand below them all.
wxString short_words(const job::Choice& choice, const format::Locale& locale) {
    const std::array<std::pair<const char*, wxString>, 5> all{{{"between-joists", _("between joists")},
                                                               {"over-a-joist", _("over a joist")},
                                                               {"beside-the-rim", _("beside the rim")},
                                                               {"corner", _("at a corner")},
                                                               {"cantilever", _("on a cantilever")}}};
    for (const auto& [answer, words] : all) {
        if (choice.answer == answer) return words;
    }
    return text_of(choice.words, locale);
}

std::size_t number_of(const std::vector<job::Question>& questions, const std::string& id) {
    const auto found = std::find_if(questions.begin(), questions.end(), [&](const auto& one) { return one.id == id; });
    return static_cast<std::size_t>(found - questions.begin());
}

}  // namespace

JobPage::JobPage(wxWindow* parent, const catalog::Catalog& catalog, const Theme& theme, format::Locale locale,
                 Asks asks)
    : wxPanel(parent),
      catalog_(catalog),
      theme_(theme),
      locale_(std::move(locale)),
      asks_(std::move(asks)),
      form_(catalog),
      place_question_(number_of(form_.questions(), place_id)) {
    SetName("job");
    window::apply_theme(*this, theme_);
    auto* sides = new wxBoxSizer(wxHORIZONTAL);
    sides->Add(questions_side(), wxSizerFlags().Expand().Border(wxRIGHT, FromDIP(gap::page)));
    sides->Add(preview_side(), wxSizerFlags(1).Expand());
    SetSizer(sides);
    refresh();
}

void JobPage::begin() { places_->SetFocus(); }

wxSizer* JobPage::questions_side() {
    auto* side = new wxBoxSizer(wxVERTICAL);
    side->Add(heading(this, _("START FROM THE JOB"), theme_), wxSizerFlags().Border(wxBOTTOM, FromDIP(gap::small)));
    scrolled_ = new wxScrolledWindow(this, wxID_ANY, wxDefaultPosition, wxDefaultSize, wxVSCROLL | wxTAB_TRAVERSAL);
    window::apply_theme(*scrolled_, theme_);
    scrolled_->SetScrollRate(0, FromDIP(12));
    auto* column = new wxBoxSizer(wxVERTICAL);
    add_place(*column);
    bool more = false;
    for (std::size_t number = 0; number < form_.questions().size(); ++number) {
        if (number == place_question_) continue;
        if (form_.questions()[number].optional && !std::exchange(more, true)) {
            column->Add(heading(scrolled_, _("ASSUMED WHERE LEFT EMPTY"), theme_),
                        wxSizerFlags().Border(wxTOP | wxBOTTOM, FromDIP(gap::small)));
        }
        add_line(*column, number);
    }
    scrolled_->SetSizer(column);
    scrolled_->SetMinSize(FromDIP(wxSize(420, 240)));
    side->Add(scrolled_, wxSizerFlags(1).Expand());
    side->Add(buttons(), wxSizerFlags().Expand().Border(wxTOP, FromDIP(gap::normal)));
    return side;
}

void JobPage::add_place(wxSizer& column) {
    if (place_question_ >= form_.questions().size()) return;
    const job::Question& question = form_.questions()[place_question_];
    auto* title = new wxStaticText(scrolled_, wxID_ANY, text_of(question.title, locale_));
    title->SetForegroundColour(theme_.ink);
    title->SetToolTip(text_of(question.ask, locale_));
    column.Add(title, wxSizerFlags().Border(wxBOTTOM, FromDIP(gap::hair)));
    places_ = new PictureChoice(scrolled_, "job-place", [this](std::size_t number) {
        answered(place_question_, text_of(form_.questions()[place_question_].choices[number].answer));
    });
    places_->apply_theme(theme_);
    places_->SetToolTip(text_of(question.ask, locale_));
    column.Add(places_, wxSizerFlags().Expand().Border(wxBOTTOM, FromDIP(gap::hair)));
    place_words_ = new wxStaticText(scrolled_, wxID_ANY, wxString(), wxDefaultPosition, wxDefaultSize,
                                    wxST_NO_AUTORESIZE | wxST_ELLIPSIZE_END);
    place_words_->SetFont(lettering(points::fine));
    place_words_->SetForegroundColour(theme_.faded);
    column.Add(place_words_, wxSizerFlags().Expand().Border(wxBOTTOM, FromDIP(gap::normal)));
}

void JobPage::add_line(wxSizer& column, std::size_t number) {
    const job::Question& question = form_.questions()[number];
    Line line;
    line.question = number;
    line.title = new wxStaticText(scrolled_, wxID_ANY, text_of(question.title, locale_), wxDefaultPosition,
                                  FromDIP(wxSize(question_wide, -1)));
    line.title->SetForegroundColour(theme_.ink);
    line.control = make_job_control(scrolled_, question, form_.answer(question), locale_,
                                    [this, number](const wxString& words) { answered(number, words); });
    line.control->SetName("job-" + text_of(question.id));
    line.control->SetToolTip(text_of(question.ask, locale_));
    line.refusal = new wxStaticText(scrolled_, wxID_ANY, wxString());
    line.refusal->SetFont(lettering(points::fine));
    line.refusal->SetForegroundColour(theme_.demand);
    auto* row = new wxBoxSizer(wxHORIZONTAL);
    row->Add(line.title, wxSizerFlags().CenterVertical().Border(wxRIGHT, FromDIP(gap::normal)));
    row->Add(line.control, wxSizerFlags(1).CenterVertical());
    column.Add(row, wxSizerFlags().Expand().Border(wxBOTTOM, FromDIP(gap::hair)));
    column.Add(line.refusal, wxSizerFlags().Expand().Border(wxLEFT, FromDIP(question_wide + gap::normal)));
    lines_.push_back(line);
}

wxSizer* JobPage::buttons() {
    open_ = new wxButton(this, wxID_ANY, _("Open the &detail"));
    open_->SetName("job-open");
    open_->SetToolTip(_("The whole detail, to go on from: plate, anchors, blocks and supports"));
    open_->Bind(wxEVT_BUTTON, [this](wxCommandEvent&) {
        if (form_.started()) asks_.open(*form_.started());
    });
    find_ = new wxButton(this, wxID_ANY, _("Find &sizes that hold"));
    find_->SetName("job-find");
    find_->SetToolTip(_("Opens the detail and looks for plates, anchors and blocks that pass every check"));
    find_->Bind(wxEVT_BUTTON, [this](wxCommandEvent&) {
        if (form_.started()) asks_.find_sizes(*form_.started());
    });
    why_not_ = new wxStaticText(this, wxID_ANY, wxString(), wxDefaultPosition, wxDefaultSize, wxST_ELLIPSIZE_END);
    why_not_->SetName("job-why-not");
    why_not_->SetForegroundColour(theme_.demand);
    auto* row = new wxBoxSizer(wxHORIZONTAL);
    row->Add(find_, wxSizerFlags().Border(wxRIGHT, FromDIP(gap::normal)));
    row->Add(open_);
    auto* column = new wxBoxSizer(wxVERTICAL);
    column->Add(why_not_, wxSizerFlags().Expand().Border(wxBOTTOM, FromDIP(gap::hair)));
    column->Add(row);
    return column;
}

wxSizer* JobPage::preview_side() {
    auto* side = new wxBoxSizer(wxVERTICAL);
    side->Add(heading(this, _("WHAT IT MAKES, PLAN"), theme_), wxSizerFlags().Border(wxBOTTOM, FromDIP(gap::small)));
    plan_ = new ScenePane(this, "job-plan");
    plan_->set_ground(theme_.ground);
    side->Add(plan_, wxSizerFlags(3).Expand());
    assumed_title_ = heading(this, wxString(), theme_);
    side->Add(assumed_title_, wxSizerFlags().Expand().Border(wxTOP | wxBOTTOM, FromDIP(gap::small)));
    assumed_ = new FlowList(this, "job-assumed", [this](wxDC& dc, std::size_t row, const wxRect& area, bool paint) {
        return assumed_row(dc, row, area, paint);
    });
    assumed_->apply_theme(theme_);
    assumed_->SetMinSize(FromDIP(wxSize(300, 110)));
    side->Add(assumed_, wxSizerFlags(2).Expand());
    return side;
}

int JobPage::assumed_row(wxDC& dc, std::size_t row, const wxRect& area, bool paint) const {
    if (!form_.started() || row >= form_.started()->assumed.size()) return 1;
    return draw_assumed(dc, form_.started()->assumed[row], area, {theme_, locale_, Still::assumed}, paint);
}

void JobPage::answered(std::size_t question, const wxString& words) {
    const job::Question& asked = form_.questions()[question];
    if (utf8(words) == form_.answer(asked)) return;
    form_.take(asked, utf8(words));
    refresh();
}

void JobPage::refresh_lines() {
    for (const Line& line : lines_) {
        const job::Question& question = form_.questions()[line.question];
        const bool asked = form_.asked(question);
        line.title->Show(asked);
        line.control->Show(asked);
        const format::Phrase refusal = asked ? form_.refusal(question) : format::Phrase();
        line.refusal->SetLabel(wxControl::EscapeMnemonics(text_of(refusal, locale_)));
        line.refusal->Wrap(FromDIP(260));
        line.refusal->Show(!refusal.empty());
    }
    scrolled_->FitInside();
    scrolled_->Layout();
}

void JobPage::refresh_places() {
    if (places_ == nullptr) return;
    const job::Question& question = form_.questions()[place_question_];
    std::vector<PictureChoice::Picture> pictures;
    std::size_t now = 0;
    for (const job::Choice& choice : question.choices) {
        if (choice.answer == form_.answer(question)) {
            now = pictures.size();
            place_words_->SetLabel(wxControl::EscapeMnemonics(text_of(choice.words, locale_)));
        }
        PictureChoice::Picture picture{short_words(choice, locale_), {}};
        if (const auto made = form_.with(question, choice.answer))
            picture.scene = small_plan_of(made->detail, catalog_);
        pictures.push_back(std::move(picture));
    }
    places_->show(std::move(pictures));
    places_->select(now);
}

void JobPage::refresh() {
    refresh_lines();
    refresh_places();
    const auto& started = form_.started();
    open_->Enable(started.has_value());
    find_->Enable(started.has_value());
    const auto [title, wanted] = form_.why_not();
    const wxString why = wanted.empty() ? wxString() : text_of(title, locale_) + ": " + text_of(wanted, locale_);
    why_not_->SetLabel(wxControl::EscapeMnemonics(why));
    why_not_->Show(!why.empty());
    if (started) plan_->show(plan_of(started->detail, catalog_, locale_, true));
    const auto count = started ? started->assumed.size() : std::size_t{0};
    assumed_title_->SetLabel(
        wxString::Format(wxPLURAL("%zu VALUE ASSUMED", "%zu VALUES ASSUMED", static_cast<unsigned>(count)), count));
    assumed_->show(count);
    Layout();
}

}  // namespace toehold::window
