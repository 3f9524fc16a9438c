#pragma once
// One row of a project's schedule on a device context: measured and painted by the same walk.
#include "session/project_session.h"
#include "window/theme/theme.h"

#include <wx/dc.h>

namespace toehold::window {

struct ScheduleStyle {
    const Theme& theme;
    format::Locale locale;
    bool shares_are_old = false;  ///< of an earlier state of the project
};

/// Height of the row in a list so wide, and the row itself from the upper left corner of `area` where `paint` is set.
int schedule_row(wxDC& dc, const session::ScheduleEntry& entry, const wxRect& area, const ScheduleStyle& style,
                 bool paint);
/// The columns' titles on the last line of `area`.
void schedule_titles(wxDC& dc, const wxRect& area, const Theme& theme);

}  // namespace toehold::window
