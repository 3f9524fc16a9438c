#include "window/panels/notes/notes_panel.h"

#include "drawing/marked_parts.h"
#include "window/panels/notes/notes_page.h"
#include "window/panels/notes/notes_tags.h"

#include <wx/clipbrd.h>
#include <wx/dataobj.h>
#include <wx/html/htmlwin.h>
#include <wx/sizer.h>

namespace toehold::window {

NotesPanel::NotesPanel(wxWindow* parent, session::Session& session) : wxPanel(parent), session_(session) {
    SetName("notes-panel");
    page_ = new wxHtmlWindow(this, wxID_ANY, wxDefaultPosition, wxDefaultSize, wxHW_SCROLLBAR_AUTO | wxBORDER_NONE);
    page_->SetName("notes");
    page_->SetBorders(FromDIP(gap::normal));
    page_->SetStandardFonts(GetFont().GetPointSize(), GetFont().GetFaceName());
    // Applying changes the page, and with it the button that still speaks: so it waits until that has ended.
    add_notes_tags(*page_, [this](int remedy) { CallAfter([this, remedy] { apply(remedy); }); });
    page_->Bind(wxEVT_HTML_LINK_CLICKED, &NotesPanel::on_link, this);
    Bind(wxEVT_CHAR_HOOK, &NotesPanel::on_key, this);
    auto* column = new wxBoxSizer(wxVERTICAL);
    column->Add(page_, wxSizerFlags(1).Expand());
    SetSizer(column);
    listening_ = session_.listen([this](session::Change change) {
        if (change != session::Change::selection) update();
    });
    update();
}

NotesPanel::~NotesPanel() { session_.stop_listening(listening_); }

void NotesPanel::apply_theme(const Theme& theme) {
    theme_ = theme;
    SetBackgroundColour(theme.paper);
    page_->SetBackgroundColour(theme.paper);
    update();
}

void NotesPanel::update() {
    Notes notes;
    notes.review = session_.review();
    notes.complete = session_.review_is_complete();
    notes.stale = notes.review != nullptr && session_.freshness() != session::Freshness::current;
    notes.remarks = session_.detail().remarks;
    notes.system = session_.display().system;
    if (shown_ && *shown_ == std::pair(notes, theme_)) return;
    shown_ = {notes, theme_};
    const wxPoint scrolled = page_->GetViewStart();
    page_->SetPage(notes_page(notes, theme_, session_.locale()));
    page_->Scroll(scrolled);
}

void NotesPanel::apply(int remedy) {
    const review::Review* review = session_.review();
    if (review == nullptr || session_.freshness() != session::Freshness::current) return;
    const auto at = static_cast<std::size_t>(remedy);
    if (remedy < 0 || at >= review->remedies.size()) return;
    const review::Remedy chosen = review->remedies[at];
    session_.apply_remedy(chosen);
}

void NotesPanel::on_link(wxHtmlLinkEvent& event) {
    wxString number;
    long finding = 0;
    if (!event.GetLinkInfo().GetHref().StartsWith(finding_scheme, &number) || !number.ToLong(&finding)) return;
    const review::Review* review = session_.review();
    if (review == nullptr || finding < 0 || static_cast<std::size_t>(finding) >= review->findings.size()) return;
    session_.select(drawing::marked_parts(review->findings[static_cast<std::size_t>(finding)].part, session_.detail()));
}

void NotesPanel::on_key(wxKeyEvent& event) {
    if (event.GetModifiers() == wxMOD_CONTROL && event.GetKeyCode() == 'C') return copy();
    if (event.GetModifiers() != wxMOD_NONE) return event.Skip();
    switch (event.GetKeyCode()) {
        case WXK_UP:
            page_->ScrollLines(-2);
            return;
        case WXK_DOWN:
            page_->ScrollLines(2);
            return;
        case WXK_PAGEUP:
            page_->ScrollPages(-1);
            return;
        case WXK_PAGEDOWN:
            page_->ScrollPages(1);
            return;
        case WXK_HOME:
            page_->Scroll(0, 0);
            return;
        case WXK_END:
            page_->Scroll(0, page_->GetVirtualSize().y);
            return;
        default:
            event.Skip();
    }
}

wxString NotesPanel::text() const { return page_->ToText(); }

void NotesPanel::copy() const {
    const wxString selected = page_->SelectionToText();
    if (!wxTheClipboard->Open()) return;
    wxTheClipboard->SetData(new wxTextDataObject(selected.empty() ? page_->ToText() : selected));
    wxTheClipboard->Close();
}

}  // namespace toehold::window
