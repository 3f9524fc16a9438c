#pragma once
// The control of one question of a job, and a row of the list of assumed values.
#include "format/phrase.h"
#include "job/questions.h"
#include "window/theme/theme.h"

#include <wx/string.h>

#include <functional>
#include <string>

class wxControl;
class wxDC;
class wxRect;
class wxWindow;

namespace toehold::window {

/// A list of the choices, open to typing where the question is. `answered` is told of each new answer: of typed text as
/// it is typed. The question outlives the control.
[[nodiscard]] wxControl* make_job_control(wxWindow* parent, const job::Question& question, const std::string& answer,
                                          const format::Locale& locale, std::function<void(const wxString&)> answered);

enum class Still { assumed, changed };
struct AssumedStyle {
    Theme theme;
    format::Locale locale;
    Still still = Still::assumed;  ///< whether the detail has the value yet
};
/// Height of the row, which is painted where `paint` is set: the element and its value, and below why.
int draw_assumed(wxDC& dc, const job::Assumed& assumed, const wxRect& area, const AssumedStyle& style, bool paint);

}  // namespace toehold::window
