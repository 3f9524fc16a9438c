#pragma once
// What the window remembers for its reader from one day to the next.
#include "units/quantity.h"
#include "window/theme/theme.h"

#include <wx/string.h>

#include <filesystem>
#include <string>
#include <vector>

namespace toehold::window {

enum class Language { desktop, english, french };

struct Preferences {
    units::System system = units::System::us;
    GroundChoice ground = GroundChoice::desktop;
    Language language = Language::desktop;
    double nudge_us_in = 0.125;                 ///< one press of an arrow key where lengths are in inches, > 0
    double nudge_si_in = 2.0 / 25.4;            ///< the same where they are in millimeters; in inches too
    wxString layout;                            ///< of the panes; empty: as first shown
    int width = 1400, height = 900;             ///< of a new window, in device-independent pixels
    std::vector<std::filesystem::path> recent;  ///< newest first, at most nine
};

/// XDG_CONFIG_HOME/toehold/window.ini.
[[nodiscard]] std::filesystem::path preferences_file();
/// What the file does not say, or says so that it cannot be read, is as in a new `Preferences`.
[[nodiscard]] Preferences load_preferences(const std::filesystem::path& file);
/// False where the file cannot be written; then the window forgets, and nothing else is lost.
bool save_preferences(const std::filesystem::path& file, const Preferences& preferences);

/// The nudge of the system in force, in.
[[nodiscard]] double nudge_in(const Preferences& preferences);

}  // namespace toehold::window
