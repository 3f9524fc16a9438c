#include "window/start/job_controls.h"

#include "checks/result.h"
#include "window/text.h"
#include "window/theme/status_marks.h"
#include "window/theme/text_layout.h"

#include <wx/choice.h>
#include <wx/combobox.h>
#include <wx/intl.h>
#include <wx/textctrl.h>

#include <algorithm>
#include <utility>
#include <vector>

namespace toehold::window {
namespace {

using Answered = std::function<void(const wxString&)>;

/// Every choice by its words; first, where nothing need be said, that nothing is.
wxControl* closed_list(wxWindow* parent, const job::Question& question, const std::string& answer,
                       const format::Locale& locale, Answered answered) {
    std::vector<wxString> answers;
    auto* control = new wxChoice(parent, wxID_ANY);
    if (question.optional) {
        answers.emplace_back();
        control->Append(_("not specified"));
    }
    for (const job::Choice& choice : question.choices) {
        answers.push_back(text_of(choice.answer));
        control->Append(text_of(choice.words, locale));
    }
    const auto now = std::find(answers.begin(), answers.end(), text_of(answer));
    control->SetSelection(now == answers.end() ? wxNOT_FOUND : static_cast<int>(now - answers.begin()));
    control->Bind(wxEVT_CHOICE, [answers, answered = std::move(answered)](wxCommandEvent& event) {
        const auto at = static_cast<std::size_t>(event.GetSelection());
        if (at < answers.size()) answered(answers[at]);
    });
    return control;
}

/// Typed text, with the common answers to pick from; an answer that differs from its words stands before them.
wxControl* open_list(wxWindow* parent, const job::Question& question, const std::string& answer,
                     const format::Locale& locale, const Answered& answered) {
    if (question.choices.empty()) {
        auto* control = new wxTextCtrl(parent, wxID_ANY, text_of(answer));
        if (question.optional) control->SetHint(_("not specified"));
        control->Bind(wxEVT_TEXT, [answered](wxCommandEvent& event) { answered(event.GetString()); });
        return control;
    }
    std::vector<wxString> answers, words;
    for (const job::Choice& choice : question.choices) {
        answers.push_back(text_of(choice.answer));
        words.push_back(text_of(choice.words, locale));
        if (words.back() != answers.back()) words.back() = answers.back() + ": " + words.back();
    }
    auto* control = new wxComboBox(parent, wxID_ANY, text_of(answer));
    for (const wxString& each : words) control->Append(each);
    control->SetValue(text_of(answer));
    if (question.optional) control->SetHint(_("not specified"));
    const auto said = [answers, words, answered](const wxString& text) {
        const auto known = std::find(words.begin(), words.end(), text);
        answered(known == words.end() ? text : answers[static_cast<std::size_t>(known - words.begin())]);
    };
    control->Bind(wxEVT_TEXT, [said](wxCommandEvent& event) { said(event.GetString()); });
    control->Bind(wxEVT_COMBOBOX, [said](wxCommandEvent& event) { said(event.GetString()); });
    return control;
}

/// `framing/block[B1]/end[to]` as it is read aloud: `framing, block B1, end to`.
wxString spoken(const std::string& element) {
    wxString words = text_of(element);
    words.Replace("/", ", ");
    words.Replace("[", " ");
    words.Replace("]", "");
    return words;
}

}  // namespace

wxControl* make_job_control(wxWindow* parent, const job::Question& question, const std::string& answer,
                            const format::Locale& locale, Answered answered) {
    if (question.open) return open_list(parent, question, answer, locale, answered);
    return closed_list(parent, question, answer, locale, std::move(answered));
}

int draw_assumed(wxDC& dc, const job::Assumed& assumed, const wxRect& area, const AssumedStyle& style, bool paint) {
    constexpr int frame = 14, pad = gap::small;
    const Theme& theme = style.theme;
    const int left = area.x + pad + frame + gap::normal;
    const int width = std::max(60, area.x + area.width - left - pad);
    const auto set = [&](const wxString& words, int y, const TextStyle& how) {
        return paint ? flow(dc, words, {left, y}, width, how) : flow_height(dc, words, width, how);
    };
    wxString what = spoken(assumed.element);
    if (!assumed.attribute.empty()) what += ", " + text_of(assumed.attribute);
    int y = area.y + 4;
    y += set(what + ": " + text_of(assumed.value, style.locale), y, {lettering(points::body, true), theme.ink});
    const wxString why =
        style.still == Still::changed ? wxString(_("Changed since.")) : text_of(assumed.why, style.locale);
    y += set(why, y + 1, {lettering(points::small), theme.faded});
    if (paint) {
        // An assumption is evidence that is missing, until somebody has said otherwise.
        const auto status = style.still == Still::changed ? checks::Status::holds : checks::Status::missing_evidence;
        const wxRect mark(area.x + pad, area.y + 6, frame, frame);
        const MarkSize size{(frame - 2) / pixels_per_mm, (frame - 2) / pixels_per_mm};
        paint_mark(dc, framed({}, status, size), mark, theme.ground);
    }
    return y + 5 - area.y;
}

}  // namespace toehold::window
