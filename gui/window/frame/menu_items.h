#pragma once
// The pieces menu bars are made of, and how they are kept up to date.
#include "format/phrase.h"

#include <wx/menu.h>

#include <initializer_list>

namespace toehold::window {

struct MenuItem {
    int id = wxID_SEPARATOR;
    wxString label;  ///< with its mnemonic and, after a tab, its key
    wxString help;
    wxItemKind kind = wxITEM_NORMAL;
};
inline const MenuItem separator;

void append(wxMenu& menu, std::initializer_list<MenuItem> items);

// Asking the toolkit to draw again what has not changed costs time under a drag.
void enable(wxMenuBar& bar, int id, bool enabled);
void check(wxMenuBar& bar, int id, bool checked);
void label(wxMenuBar& bar, int id, const wxString& words);

/// `Undo: Move hole A`, with its key.
[[nodiscard]] wxString with_step(const wxString& verb, const format::Phrase& step, const wxString& key,
                                 const format::Locale& locale);

/// The same in every window.
[[nodiscard]] wxMenu* help_menu();

}  // namespace toehold::window
