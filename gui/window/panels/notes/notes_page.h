#pragma once
// Findings, what would help, assumptions and cautions as one page: HTML with two tags of our own, MARK for a word in
// its status's frame and APPLY for a remedy's button; panels/notes_tags.h reads them.
#include "format/phrase.h"
#include "review/review.h"
#include "window/theme/theme.h"

#include <wx/string.h>

#include <vector>

namespace toehold::window {

struct Notes {
    const review::Review* review = nullptr;   ///< nullptr: none yet
    bool complete = false;                    ///< with assumptions and remedies
    bool stale = false;                       ///< of an earlier state of the detail
    std::vector<model::Remark> remarks = {};  ///< that the detail keeps
    units::System system = units::System::us;
    friend bool operator==(const Notes&, const Notes&) = default;
};

[[nodiscard]] wxString notes_page(const Notes& notes, const Theme& theme, const format::Locale& locale);

/// What a remedy leads to: `Then it holds. Nearest to its limit: ...`
[[nodiscard]] wxString remedy_outcome(const review::Remedy& remedy, const format::Locale& locale);

/// Scheme of the links from a finding to its part: `finding:0`.
inline constexpr auto finding_scheme = "finding:";  ///< and the number of the finding, from 0

}  // namespace toehold::window
