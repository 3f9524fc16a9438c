#pragma once
// One row of the list of checks on a device context: measured and painted by the same walk.
#include "checks/result.h"
#include "units/quantity.h"
#include "window/panels/checks/check_rows.h"
#include "window/theme/text_layout.h"
#include "window/theme/theme.h"

namespace toehold::window {

/// What a row needs to know beside itself.
struct RowStyle {
    Theme theme = theme_of(drawing::Ground::paper);
    wxFont font;  ///< of the panel
    format::Locale locale;
    bool stale = false;   ///< pale, with the word
    bool open = false;    ///< a result whose steps are shown
    bool marked = false;  ///< about what is selected on the drawings
};

/// Height of the row in a list so wide, and the row itself from the upper left corner of `area` where `paint` is set.
int check_row(wxDC& dc, const CheckRow& row, const checks::CheckResult* result, const wxRect& area,
              const RowStyle& style, bool paint);

/// How far from the left a press opens or closes a result.
[[nodiscard]] int opener_width();

/// What the result is about, for people; with how many results come to the same, itself included.
[[nodiscard]] wxString subject_name(const checks::CheckResult& result, const format::Locale& locale,
                                    std::size_t alike = 1);

/// `1908 lb`, in the reader's system; a number with no unit stands alone.
[[nodiscard]] wxString figure(double value, const std::string& unit, const format::Locale& locale);

}  // namespace toehold::window
