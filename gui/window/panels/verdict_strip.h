#pragma once
// The verdict across the foot of the window, always in sight: its word in the frame of its status, the reason, what
// governs as a bar of demand on the length of its capacity, and whether all this is still true.
#include "session/session.h"
#include "window/panels/verdict_words.h"
#include "window/theme/theme.h"

#include <wx/panel.h>

class wxGraphicsContext;

namespace toehold::window {

class VerdictStrip : public wxPanel {
  public:
    /// `words` is asked at every `refresh`, and outlives the strip.
    VerdictStrip(wxWindow* parent, std::function<VerdictWords()> words);
    VerdictStrip(const VerdictStrip&) = delete;
    VerdictStrip& operator=(const VerdictStrip&) = delete;

    void apply_theme(const Theme& theme);
    void refresh();  ///< what it says may have changed
    [[nodiscard]] const VerdictWords& words() const;

  private:
    void paint();
    double draw_word(wxGraphicsContext& context, double left) const;
    void draw_governing(wxGraphicsContext& context, double left, double width) const;
    void draw_reason(wxGraphicsContext& context, double left, double width) const;
    [[nodiscard]] double unit(double dip) const;

    std::function<VerdictWords()> ask_;
    Theme theme_ = theme_of(drawing::Ground::paper);
    VerdictWords words_;
};

}  // namespace toehold::window
