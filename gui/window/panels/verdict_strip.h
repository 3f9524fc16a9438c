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
    VerdictStrip(wxWindow* parent, session::Session& session);
    ~VerdictStrip() override;
    VerdictStrip(const VerdictStrip&) = delete;
    VerdictStrip& operator=(const VerdictStrip&) = delete;

    void apply_theme(const Theme& theme);
    [[nodiscard]] const VerdictWords& words() const;

  private:
    void refresh();
    void paint();
    double draw_word(wxGraphicsContext& context, double left) const;
    void draw_governing(wxGraphicsContext& context, double left, double width) const;
    void draw_reason(wxGraphicsContext& context, double left, double width) const;
    [[nodiscard]] double unit(double dip) const;

    session::Session& session_;
    int listener_ = 0;
    Theme theme_ = theme_of(drawing::Ground::paper);
    VerdictWords words_;
};

}  // namespace toehold::window
