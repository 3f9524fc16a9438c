#include "window/frame/menu_items.h"

#include "window/text.h"

#include <wx/control.h>

namespace toehold::window {

void append(wxMenu& menu, std::initializer_list<MenuItem> items) {
    for (const MenuItem& item : items) {
        if (item.id == wxID_SEPARATOR) {
            menu.AppendSeparator();
        } else {
            menu.Append(item.id, item.label, item.help, item.kind);
        }
    }
}

void enable(wxMenuBar& bar, int id, bool enabled) {
    if (bar.IsEnabled(id) != enabled) bar.Enable(id, enabled);
}

void check(wxMenuBar& bar, int id, bool checked) {
    if (bar.IsChecked(id) != checked) bar.Check(id, checked);
}

void label(wxMenuBar& bar, int id, const wxString& words) {
    wxMenuItem* item = bar.FindItem(id);
    if (item->GetItemLabel() != words) item->SetItemLabel(words);
}

wxString with_step(const wxString& verb, const format::Phrase& step, const wxString& key,
                   const format::Locale& locale) {
    const wxString name = text_of(step, locale);
    return verb + (name.empty() ? wxString() : ": " + wxControl::EscapeMnemonics(name)) + "\t" + key;
}

}  // namespace toehold::window
