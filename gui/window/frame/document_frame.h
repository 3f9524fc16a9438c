#pragma once
// A window with a document in it: a detail's or a project's.
#include <wx/frame.h>

#include <filesystem>

namespace toehold::window {

class DocumentFrame : public wxFrame {
  public:
    using wxFrame::wxFrame;

    [[nodiscard]] virtual const std::filesystem::path& file() const = 0;  ///< empty: never saved
    /// Units, theme and the rest by the preferences in force.
    virtual void apply_preferences() = 0;
};

}  // namespace toehold::window
