#pragma once
// Finding sizes: what may vary, the search with its progress, and what it found; a press on a result makes it the
// detail. Where nothing holds, what stops it and the nearest miss.
#include "session/sizes.h"
#include "solving/sizing.h"
#include "window/theme/theme.h"

#include <wx/panel.h>

#include <memory>

class wxBoxSizer;
class wxButton;
class wxCheckBox;
class wxChoice;
class wxStaticText;

namespace toehold::session {
class Session;
}

namespace toehold::window {

class ProgressLine;
class RangesPanel;
class ResultsList;
class ScenePane;

class SizesPage : public wxPanel {
  public:
    /// The session outlives the page.
    SizesPage(wxWindow* parent, session::Session& session);
    ~SizesPage() override;
    SizesPage(const SizesPage&) = delete;
    SizesPage& operator=(const SizesPage&) = delete;

    void apply_theme(const Theme& theme);
    void begin();  ///< the search, with the ranges as they stand
    /// The page has come into sight.
    void shown();
    [[nodiscard]] session::Sizes& sizes() { return sizes_; }

  private:
    wxSizer* head();
    wxSizer* results();
    void press();
    void told();
    void refresh();
    void refresh_head();
    void refresh_results();
    void refresh_plan();
    void stand();

    session::Session& session_;
    Theme theme_ = theme_of(drawing::Ground::paper);
    std::shared_ptr<SizesPage*> alive_;  ///< news that come after the page has gone find nobody
    solving::Sizing sizing_;
    session::Sizes sizes_;
    bool waits_ = false;  ///< a refresh is on its way
    wxBoxSizer* sides_ = nullptr;
    RangesPanel* ranges_ = nullptr;
    ResultsList* results_ = nullptr;
    ScenePane* plan_ = nullptr;
    wxStaticText* count_ = nullptr;
    wxStaticText* far_ = nullptr;
    ProgressLine* line_ = nullptr;
    wxButton* press_ = nullptr;
    wxButton* reset_ = nullptr;
    wxChoice* order_ = nullptr;
    wxCheckBox* all_ = nullptr;
    wxStaticText* summary_ = nullptr;
    wxStaticText* nearest_ = nullptr;
    wxButton* open_nearest_ = nullptr;
    int listening_ = 0;
};

}  // namespace toehold::window
