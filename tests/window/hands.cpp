#include "window/hands.h"

#include <wx/app.h>
#include <wx/defs.h>
#include <wx/uiaction.h>
#include <wx/window.h>

#include <cctype>
#include <cstdlib>
#include <iostream>
#include <thread>

namespace toehold::test {

namespace {

constexpr auto between_looks = 4ms;
constexpr auto after_an_act = 60ms;

std::filesystem::path pictures() {
    const char* wanted = std::getenv("TOEHOLD_SCREENSHOTS");
    return wanted != nullptr ? wanted : TOEHOLD_SHOTS;
}

}  // namespace

bool settle(const std::function<bool()>& done, std::chrono::milliseconds limit) {
    const auto end = std::chrono::steady_clock::now() + limit;
    do {
        wxYield();
        if (done()) return true;
        std::this_thread::sleep_for(between_looks);
    } while (std::chrono::steady_clock::now() < end);
    return done();
}

void let_work(std::chrono::milliseconds time) {
    static_cast<void>(settle([] { return false; }, time));
}

wxPoint middle_of(const wxWindow& window) {
    const wxRect all = window.GetScreenRect();
    return {all.x + all.width / 2, all.y + all.height / 2};
}

void move_to(wxPoint place) {
    wxUIActionSimulator().MouseMove(place);
    let_work(15ms);
}

void button_down() {
    wxUIActionSimulator().MouseDown();
    let_work(15ms);
}

void button_up() {
    wxUIActionSimulator().MouseUp();
    let_work(after_an_act);
}

void click(wxPoint place) {
    move_to(place);
    button_down();
    button_up();
}

void double_click(wxPoint place) {
    let_work(450ms);  // else a click before it would be counted too
    move_to(place);
    wxUIActionSimulator().MouseDblClick();
    let_work(after_an_act);
}

void drag(wxPoint from, wxPoint to, int steps) {
    move_to(from);
    button_down();
    for (int step = 1; step <= steps; ++step) {
        move_to({from.x + (to.x - from.x) * step / steps, from.y + (to.y - from.y) * step / steps});
    }
    let_work(after_an_act);
    button_up();
}

void tap(int code, int modifiers) {
    const bool capital = code < 256 && std::isupper(code) != 0 && modifiers == 0;
    const int pressed = code < 256 ? std::toupper(code) : code;
    wxUIActionSimulator().Char(pressed, capital ? wxMOD_SHIFT : modifiers);
}

void key(int code, int modifiers) {
    tap(code, modifiers);
    let_work(after_an_act);
}

void type(const std::string& text) {
    for (const char letter : text) {
        tap(static_cast<unsigned char>(letter));
        let_work(12ms);
    }
    let_work(after_an_act);
}

std::filesystem::path snap(const std::string& name) {
    std::filesystem::create_directories(pictures());
    std::filesystem::path file = pictures() / (name + ".png");
    const std::string command = "import -window root -depth 8 -colors 128 '" + file.string() + "'";
    if (std::system(command.c_str()) != 0) std::cerr << "no picture: " << command << '\n';
    return file;
}

std::filesystem::path shot(const std::string& name) {
    let_work(150ms);
    return snap(name);
}

}  // namespace toehold::test
