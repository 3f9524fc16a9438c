#pragma once
// What is to be said of a session's detail in one breath: the verdict, why, what governs, and whether it is still true.
#include "drawing/scene/scene.h"
#include "session/session.h"

#include <wx/string.h>

#include <optional>

namespace toehold::window {

struct VerdictWords {
    wxString word;                            ///< INADEQUATE
    wxString reason;                          ///< one sentence or two
    wxString governing;                       ///< check and subject that govern; empty: none
    std::optional<double> ratio;              ///< of that check; absent: none, or nothing there to resist
    wxString freshness;                       ///< in words
    bool stale = false;                       ///< an earlier state of the detail is meant
    bool no_path = false;                     ///< nothing there to resist what governs
    drawing::Pen frame = drawing::Pen::thin;  ///< the frame that says the status
};

[[nodiscard]] VerdictWords verdict_words(const session::Session& session);

}  // namespace toehold::window
