#pragma once
// Files dropped on a window.
#include "window/text.h"

#include <wx/dnd.h>
#include <wx/window.h>

#include <filesystem>
#include <functional>
#include <utility>
#include <vector>

namespace toehold::window {

class FileDrop : public wxFileDropTarget {
  public:
    using Open = std::function<void(const std::filesystem::path&)>;
    FileDrop(wxWindow& window, Open open) : window_(window), open_(std::move(open)) {}

    bool OnDropFiles(wxCoord /*x*/, wxCoord /*y*/, const wxArrayString& names) override {
        std::vector<std::filesystem::path> files;
        for (const wxString& name : names) files.push_back(path_of(name));
        // Not inside the drop itself: a message about a bad file would hold up the desktop.
        window_.CallAfter([open = open_, files] {
            for (const auto& file : files) open(file);
        });
        return true;
    }

  private:
    wxWindow& window_;
    Open open_;
};

}  // namespace toehold::window
