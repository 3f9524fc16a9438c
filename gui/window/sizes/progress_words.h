#pragma once
// How far a search is, in the reader's words.
#include "search/run/run.h"

#include <wx/string.h>

namespace toehold::window {

/// `12,960 candidates`.
[[nodiscard]] wxString candidates_words(search::Candidate candidates);
/// `3,120 of 12,960 tried, 10,400 a minute, 42 pass; about 1 min left`.
[[nodiscard]] wxString progress_words(const search::Progress& progress, bool running);

}  // namespace toehold::window
