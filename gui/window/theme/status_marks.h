#pragma once
// The marks of a status and of a ratio: the frame that says how a thing stands, and the bar of demand read against the
// length of its capacity. Scenes in millimeters of paper about their middle.
#include "checks/result.h"
#include "drawing/render/palette.h"
#include "drawing/scene/scene.h"
#include "review/review.h"

#include <wx/gdicmn.h>

#include <string>

class wxDC;

namespace toehold::window {

struct MarkSize {
    double width_mm = 0.0, height_mm = 0.0;
};

/// The status's frame with a few words in it; no words: the frame alone.
[[nodiscard]] drawing::Scene framed(const std::string& words, checks::Status status, const MarkSize& size,
                                    drawing::TextSize text = drawing::TextSize::normal);

/// Demand over the capacity's length, which is the same in every bar: `capacity_share` of the width. A demand that
/// would leave the bar is broken off at its end.
[[nodiscard]] drawing::Scene demand_bar(double ratio, checks::Status status, const MarkSize& size);
inline constexpr double capacity_share = 0.56;

/// What stands in a result's frame: its ratio, a dash without a path, a question mark without evidence.
[[nodiscard]] std::string frame_words(const checks::CheckResult& result);

/// The status whose frame a verdict or a severity wears.
[[nodiscard]] checks::Status status_of(review::Verdict verdict);
[[nodiscard]] checks::Status status_of(checks::Severity severity);

/// Paints a mark with its origin at the middle of `area`.
void paint_mark(wxDC& dc, const drawing::Scene& mark, const wxRect& area, drawing::Ground ground);
/// Logical pixels for a millimeter of paper on the screen.
inline constexpr double pixels_per_mm = 96.0 / 25.4;

}  // namespace toehold::window
