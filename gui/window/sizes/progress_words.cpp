#include "window/sizes/progress_words.h"

#include "session/sizes.h"
#include "window/text.h"

#include <wx/translation.h>

#include <cmath>

namespace toehold::window {
namespace {

wxString grouped(search::Candidate number) { return text_of(session::thousands(number)); }

wxString left_words(const search::Progress& progress) {
    if (progress.per_minute <= 0.0) return {};
    const double minutes = static_cast<double>(progress.counts.left()) / progress.per_minute;
    constexpr double seconds_in_minute = 60.0;
    if (minutes < 1.0)
        return "; " + wxString::Format(_("about %d s left"), static_cast<int>(std::ceil(minutes * seconds_in_minute)));
    return "; " + wxString::Format(_("about %d min left"), static_cast<int>(std::ceil(minutes)));
}

}  // namespace

wxString candidates_words(search::Candidate candidates) {
    if (candidates == 1) return _("1 candidate");
    return wxString::Format(_("%s candidates"), grouped(candidates));
}

wxString progress_words(const search::Progress& progress, bool running) {
    const search::Counts& counts = progress.counts;
    wxString words = wxString::Format(_("%s of %s tried"), grouped(counts.judged), grouped(counts.candidates));
    if (progress.per_minute > 0.0)
        words += ", " + wxString::Format(_("%s a minute"),
                                         grouped(static_cast<search::Candidate>(std::llround(progress.per_minute))));
    words += ", " + wxString::Format(_("%s pass"), grouped(counts.found));
    return running ? words + left_words(progress) : words;
}

}  // namespace toehold::window
