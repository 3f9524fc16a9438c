#pragma once
// What a person does while a dialog stands and holds the program: one act a moment, from the dialog's own loop.
#include <wx/timer.h>

#include <functional>
#include <string>
#include <vector>

class wxWindow;

namespace toehold::test {

/// The window of that name, wherever it stands; nullptr: none is shown.
[[nodiscard]] wxWindow* shown_window(const wxString& name, const wxWindow* within = nullptr);

class Script : public wxTimer {
  public:
    Script& wait_for(const wxString& window);
    Script& key(int code, int modifiers = 0);
    Script& type(const std::string& text);
    Script& click(const wxString& window);  ///< in its middle
    Script& press_ok(const wxString& dialog);
    Script& act(std::function<void()> what);
    Script& until(std::function<bool()> holds);

    void begin();
    [[nodiscard]] bool done() const { return next_ == acts_.size() && !gave_up_; }
    void Notify() override;

  private:
    using Act = std::function<bool()>;  ///< false: not yet
    Script& add(Act act);
    void give_up();

    std::vector<Act> acts_;
    std::size_t next_ = 0;
    int waited_ = 0;
    bool gave_up_ = false;
};

}  // namespace toehold::test
