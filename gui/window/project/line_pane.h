#pragma once
// A guard line in plan and elevation, with the shares that are known, and the post selected marked in both.
#include "drawing/scene/scene.h"
#include "session/project_session.h"
#include "window/theme/theme.h"

#include <wx/panel.h>

#include <functional>

class wxChoice;
class wxStaticText;

namespace toehold::window {

class ScenePane;

class LinePane : public wxPanel {
  public:
    /// The session outlives the pane. `open` opens the base of the post selected.
    LinePane(wxWindow* parent, session::ProjectSession& session, std::function<format::Locale()> locale,
             const std::function<void()>& open);

    void refresh();            ///< project or results have changed
    void refresh_selection();  ///< another post is selected, and with it perhaps another line
    void apply_theme(const Theme& theme);

  private:
    ScenePane* scene_pane(const wxString& name, const drawing::Scene& shown, const std::function<void()>& open);
    void fill_lines();
    void mark_selection();

    session::ProjectSession& session_;
    std::function<format::Locale()> locale_;
    wxChoice* lines_ = nullptr;  ///< hidden where there is no choice
    wxStaticText* none_ = nullptr;
    ScenePane* plan_ = nullptr;
    ScenePane* elevation_ = nullptr;
    drawing::Scene plan_scene_, elevation_scene_;
    std::string drawn_;            ///< the line's id; empty: none
    bool pressed_a_post_ = false;  ///< by the last press, which a double click begins with
};

/// What is drawn of a post, in the scene's inches; absent: it is not drawn.
[[nodiscard]] std::optional<drawing::Box> post_box(const drawing::Scene& scene, const std::string& post);
/// The mark of the post drawn nearest; empty: none is drawn within reach.
[[nodiscard]] std::string nearest_post(const drawing::Scene& scene, drawing::Point at, double reach_in);

}  // namespace toehold::window
