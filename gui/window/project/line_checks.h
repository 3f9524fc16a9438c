#pragma once
// The checks of a guard line's rail and its connections, with what its movement is and what sharing rests on.
#include "session/project_session.h"
#include "window/panels/checks/check_rows.h"
#include "window/theme/theme.h"

#include <wx/panel.h>

#include <functional>
#include <memory>
#include <set>
#include <string>
#include <vector>

namespace toehold::review {
struct ProjectReview;
}

namespace toehold::window {

class ChecksList;

class LineChecks : public wxPanel {
  public:
    /// The session outlives the panel.
    LineChecks(wxWindow* parent, session::ProjectSession& session, std::function<format::Locale()> locale);

    void refresh();
    void apply_theme(const Theme& theme);
    [[nodiscard]] const std::vector<CheckRow>& shown() const;

  private:
    void open_or_close(std::size_t result);
    void copy() const;
    void style();

    session::ProjectSession& session_;
    std::function<format::Locale()> locale_;
    Theme theme_ = theme_of(drawing::Ground::paper);
    std::vector<checks::CheckResult> results_;  ///< those shown
    CheckIndex index_;
    std::set<std::string> open_;  ///< keys of results whose steps are shown
    ChecksList* list_ = nullptr;
};

}  // namespace toehold::window
