#pragma once
// A chart as large as its window, each of its points to be pointed at and picked, by pointer or keys.
#include "drawing/charts/chart.h"
#include "drawing/render/painter.h"
#include "window/theme/theme.h"

#include <wx/window.h>

#include <functional>
#include <optional>

namespace toehold::window {

class ChartPane : public wxWindow {
  public:
    /// Makes the chart for the room there is.
    using Make = std::function<drawing::Chart(double width_mm, double height_mm)>;
    /// `picked` is told the spot pressed or entered.
    ChartPane(wxWindow* parent, const wxString& name, std::function<void(const drawing::Spot&)> picked);

    /// Told when a spot that was picked is pressed again at once, if set.
    std::function<void()> twice;

    void show(Make make);  ///< none: nothing is shown
    void apply_theme(const Theme& theme);
    /// Pale: of an earlier state of the detail.
    void set_stale(bool stale);
    [[nodiscard]] const drawing::Chart& chart() const { return chart_; }
    [[nodiscard]] wxPoint pixel_of(const drawing::Spot& spot) const;  ///< its middle, of the window

  protected:
    [[nodiscard]] wxSize DoGetBestClientSize() const override;

  private:
    void remake();
    void paint();
    void on_press(const wxMouseEvent& event);
    void on_motion(const wxMouseEvent& event);
    void on_key(wxKeyEvent& event);
    void go(double right, double up);
    void make_current(std::size_t spot);

    std::function<void(const drawing::Spot&)> picked_;
    Make make_;
    drawing::Chart chart_;
    drawing::View view_;
    Theme theme_ = theme_of(drawing::Ground::paper);
    std::optional<std::size_t> current_;  ///< among the chart's spots
    bool stale_ = false;
    bool pressed_spot_ = false;  ///< the last press was on a spot
};

}  // namespace toehold::window
