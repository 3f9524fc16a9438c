#pragma once
// The program begun anew for a case, with folders of its own and a person's answers prepared.
#include "support/temporary_folder.h"
#include "window/frame/application.h"
#include "window/frame/detail_frame.h"
#include "window/hands.h"
#include "window/script.h"
#include "window/sheet/canvas.h"

#include <wx/menu.h>

#include <optional>
#include <string>
#include <vector>

namespace toehold::test {

inline const char* const holding_demo = "heron-landing-lags-in-deep-blocks";
inline const char* const failing_demo = "heron-landing-short-lags-in-flat-block";

/// What a person answers when asked, and what they were asked and told.
struct Person {
    std::vector<std::filesystem::path> files_to_open;
    std::optional<std::filesystem::path> file_to_save;
    window::Unsaved unsaved = window::Unsaved::discard;
    bool confirms = true;
    std::string remark;
    window::Fate of_copies = window::Fate::keep;
    std::vector<std::string> heard;  ///< headline and detail of each, one line
    [[nodiscard]] bool has_heard(const std::string& words) const;
};

class Driver {
  public:
    /// Begun at once, in English, in inches, on paper.
    Driver();
    ~Driver();
    Driver(const Driver&) = delete;
    Driver& operator=(const Driver&) = delete;

    Person person;

    /// Every window goes without being saved, and the program begins again with the preferences as they are in its
    /// file, changed as wanted.
    void begin(const std::function<void(window::Preferences&)>& prefer = {});
    void close_all();

    [[nodiscard]] const std::filesystem::path& folder() const { return folder_.path(); }
    [[nodiscard]] std::filesystem::path recovery() const { return folder() / "recovery"; }
    [[nodiscard]] std::filesystem::path preferences() const { return folder() / "window.ini"; }
    /// A demo and the plates it refers to, in the case's folder.
    std::filesystem::path copy_demo(const std::string& name);

    /// Opened by the program, in front, every check run; assumptions and remedies may still be on their way.
    window::DetailFrame& open(const std::filesystem::path& file);
    window::DetailFrame& open_demo(const std::string& name) { return open(copy_demo(name)); }

  private:
    void prepare_answers();
    TemporaryFolder folder_;
};

/// In front, with the keys going to its sheet.
void to_front(window::DetailFrame& frame);
/// Until every result is of the detail as it stands: with or without assumptions and remedies.
[[nodiscard]] bool reviewed(window::DetailFrame& frame);
[[nodiscard]] bool checked(window::DetailFrame& frame);

void run_command(window::DetailFrame& frame, int id);
[[nodiscard]] std::string menu_words(window::DetailFrame& frame, int id);
/// Where a place of a drawing, in inches, is on the screen.
[[nodiscard]] wxPoint on_screen(window::DetailFrame& frame, editing::Sheet sheet, double x_in, double y_in);
[[nodiscard]] wxPoint hole_on_screen(window::DetailFrame& frame, const std::string& id);
[[nodiscard]] const model::Hole& hole(window::DetailFrame& frame, const std::string& id);

/// The control of that name in the frame; throws where there is none.
template <class Control>
Control& control(wxWindow& frame, const wxString& name) {
    auto* found = dynamic_cast<Control*>(wxWindow::FindWindowByName(name, &frame));
    if (found == nullptr) throw std::runtime_error("no control " + name.utf8_string());
    return *found;
}

}  // namespace toehold::test
