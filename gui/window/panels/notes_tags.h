#pragma once
// The two tags of the notes' page: a word in the frame of its status, and a remedy's button.
#include <wx/html/htmlwin.h>

#include <functional>

namespace toehold::window {

/// Makes the page's parser know them. `apply` is called with the remedy's index.
void add_notes_tags(wxHtmlWindow& page, std::function<void(int)> apply);

}  // namespace toehold::window
