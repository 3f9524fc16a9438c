#include "window/script.h"

#include "window/hands.h"

#include <wx/dialog.h>
#include <wx/toplevel.h>
#include <wx/uiaction.h>

#include <iostream>

namespace toehold::test {

namespace {

constexpr int moment_ms = 50;
constexpr int patience = 300;  // moments

}  // namespace

wxWindow* shown_window(const wxString& name, const wxWindow* within) {
    if (within != nullptr) {
        wxWindow* found = wxWindow::FindWindowByName(name, within);
        return found != nullptr && found->IsShownOnScreen() ? found : nullptr;
    }
    for (wxWindow* top : wxTopLevelWindows) {
        if (top->IsBeingDeleted()) continue;
        if (top->GetName() == name && top->IsShown()) return top;
        if (wxWindow* found = wxWindow::FindWindowByName(name, top); found != nullptr && found->IsShownOnScreen()) {
            return found;
        }
    }
    return nullptr;
}

Script& Script::add(Act act) {
    acts_.push_back(std::move(act));
    return *this;
}

Script& Script::wait_for(const wxString& window) {
    return add([window] { return shown_window(window) != nullptr; });
}

Script& Script::key(int code, int modifiers) {
    return add([code, modifiers] {
        tap(code, modifiers);
        return true;
    });
}

Script& Script::type(const std::string& text) {
    for (const char letter : text) key(static_cast<unsigned char>(letter));
    return *this;
}

Script& Script::click(const wxString& window) {
    add([window] {
        const wxWindow* found = shown_window(window);
        if (found == nullptr) return false;
        wxUIActionSimulator().MouseMove(middle_of(*found));
        return true;
    });
    return add([] { return wxUIActionSimulator().MouseClick(); });
}

Script& Script::press_ok(const wxString& dialog) {
    add([dialog] {
        const wxWindow* found = shown_window(dialog);
        const wxWindow* ok = found == nullptr ? nullptr : found->FindWindow(wxID_OK);
        if (ok == nullptr) return false;
        wxUIActionSimulator().MouseMove(middle_of(*ok));
        return true;
    });
    return add([] { return wxUIActionSimulator().MouseClick(); });
}

Script& Script::act(std::function<void()> what) {
    return add([what = std::move(what)] {
        what();
        return true;
    });
}

Script& Script::until(std::function<bool()> holds) { return add(std::move(holds)); }

void Script::begin() { Start(moment_ms); }

void Script::Notify() {
    if (next_ == acts_.size()) {
        // A dialog that stands long after the last act would hold the tests for ever.
        if (++waited_ > patience) give_up();
        return;
    }
    waited_ = acts_[next_]() ? (++next_, 0) : waited_ + 1;
    if (waited_ > patience) give_up();
}

void Script::give_up() {
    Stop();
    bool stood = false;
    for (wxWindow* top : wxTopLevelWindows) {
        auto* dialog = dynamic_cast<wxDialog*>(top);
        if (dialog == nullptr || !dialog->IsModal()) continue;
        stood = true;
        dialog->EndModal(wxID_CANCEL);
    }
    gave_up_ = stood || next_ != acts_.size();
    if (gave_up_) std::cerr << "script: gave up at act " << next_ << " of " << acts_.size() << '\n';
}

}  // namespace toehold::test
