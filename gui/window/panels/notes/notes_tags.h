#pragma once
// The notes' page's own tags: a word in the frame of its status, the line under a heading, a remedy's button.
#include <wx/html/htmlwin.h>

#include <functional>

namespace toehold::window {

/// Makes the page's parser know them. `apply` is called with the remedy's index.
void add_notes_tags(wxHtmlWindow& page, std::function<void(int)> apply);

}  // namespace toehold::window
