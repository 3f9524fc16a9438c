#pragma once
// What the checks' list does not say: findings, what would help, assumptions, cautions. Text that can be selected and
// copied; a remedy is applied with one press.
#include "session/session.h"
#include "window/panels/notes/notes_page.h"

#include <wx/panel.h>

#include <optional>
#include <utility>

class wxHtmlWindow;
class wxHtmlLinkEvent;

namespace toehold::window {

class NotesPanel : public wxPanel {
  public:
    NotesPanel(wxWindow* parent, session::Session& session);
    ~NotesPanel() override;

    void apply_theme(const Theme& theme);
    /// What is selected, else all of it, as plain text.
    void copy() const;
    [[nodiscard]] wxString text() const;  ///< all of it, plain

  private:
    void update();
    void apply(int remedy);
    void on_link(wxHtmlLinkEvent& event);
    void on_key(wxKeyEvent& event);

    session::Session& session_;
    int listening_ = 0;
    Theme theme_ = theme_of(drawing::Ground::paper);
    wxHtmlWindow* page_ = nullptr;
    std::optional<std::pair<Notes, Theme>> shown_;
};

}  // namespace toehold::window
