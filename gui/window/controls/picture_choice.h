#pragma once
// One of a few things picked by its picture: pictures in a row with a word under each, by pointer or arrow keys.
#include "drawing/scene/scene.h"
#include "window/theme/theme.h"

#include <wx/window.h>

#include <functional>
#include <vector>

namespace toehold::window {

class PictureChoice : public wxWindow {
  public:
    struct Picture {
        wxString words;  ///< under it, in two lines at most
        drawing::Scene scene;
    };
    PictureChoice(wxWindow* parent, const wxString& name, std::function<void(std::size_t)> chosen);

    void show(std::vector<Picture> pictures);
    void select(std::size_t number);  ///< without telling
    void apply_theme(const Theme& theme);
    [[nodiscard]] std::size_t selected() const { return selected_; }
    [[nodiscard]] wxRect cell(std::size_t number) const;  ///< of the window

  private:
    void paint();
    void draw(wxDC& dc, std::size_t number) const;
    void pick(std::size_t number);
    void on_key(wxKeyEvent& event);

    std::function<void(std::size_t)> chosen_;
    std::vector<Picture> pictures_;
    std::size_t selected_ = 0;
    Theme theme_ = theme_of(drawing::Ground::paper);
};

}  // namespace toehold::window
