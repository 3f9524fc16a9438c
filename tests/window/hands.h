#pragma once
// What a person has before the window: eyes, a pointer and keys. The events are real ones, from the display's server.
#include <wx/gdicmn.h>

#include <chrono>
#include <filesystem>
#include <functional>
#include <string>

class wxWindow;

namespace toehold::test {

using namespace std::chrono_literals;

/// Lets the program work until `done`, or until the time is over. Whether it was done.
[[nodiscard]] bool settle(const std::function<bool()>& done, std::chrono::milliseconds limit = 60s);
void let_work(std::chrono::milliseconds time);

// Places are on the screen.
[[nodiscard]] wxPoint middle_of(const wxWindow& window);
void move_to(wxPoint place);
void button_down();
void button_up();
void click(wxPoint place);
void double_click(wxPoint place);
/// In steps, as a hand goes.
void drag(wxPoint from, wxPoint to, int steps = 10);

void key(int code, int modifiers = 0);
void type(const std::string& text);  ///< letters, digits, blanks and what needs no second hand: , . / - [ ]

/// One key without waiting for what it does: for a dialog's own loop.
void tap(int code, int modifiers = 0);

/// The whole display as `name`.png among the run's pictures.
std::filesystem::path shot(const std::string& name);
/// The same at once, without letting the program work before: while a dialog stands.
std::filesystem::path snap(const std::string& name);

}  // namespace toehold::test
