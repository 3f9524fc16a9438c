// The window's program of tests: the application without a window of its own, and the cases run inside its loop.
#include "window/complaints.h"
#include "window/frame/application.h"

#define CATCH_CONFIG_RUNNER
#include <wx/init.h>
#include <wx/log.h>
#include <catch2/catch.hpp>

#include <algorithm>
#include <iostream>
#include <string>
#include <vector>

namespace {

using namespace toehold;

class Heard : public wxLog {
  protected:
    void DoLogRecord(wxLogLevel level, const wxString& words, const wxLogRecordInfo& /*where*/) override {
        if (level <= wxLOG_Warning) test::complain("[log] " + words.utf8_string());
        std::cerr << words.utf8_string() << '\n';
    }
};

class TestProgram : public window::Application {
  public:
    explicit TestProgram(Catch::Session& session) : session_(session) {}

    bool OnInit() override {
        SetExitOnFrameDelete(false);
        delete wxLog::SetActiveTarget(new Heard);
        CallAfter([this] {
            result_ = session_.run();
            ExitMainLoop();
        });
        return true;
    }
    int OnRun() override {
        Application::OnRun();
        return result_;
    }
    int OnExit() override { return wxApp::OnExit(); }  // a test's preferences have gone with its folder
    void OnAssertFailure(const wxChar* file, int line, const wxChar* function, const wxChar* condition,
                         const wxChar* words) override {
        test::complain("[assert] " + wxString::Format("%s:%d %s: %s, %s", file, line, function, condition,
                                                      words == nullptr ? wxString() : wxString(words))
                                         .utf8_string());
    }

  private:
    Catch::Session& session_;
    int result_ = 1;
};

/// Names and help are told without a display.
bool only_tells(const Catch::ConfigData& wanted) {
    return wanted.showHelp || wanted.listTests || wanted.listTestNamesOnly || wanted.listTags || wanted.listReporters;
}

}  // namespace

int main(int count, char** words) {
    Catch::Session session;
    if (const int wrong = session.applyCommandLine(count, words); wrong != 0) return wrong;
    if (only_tells(session.configData())) return session.run();
    test::listen_for_complaints();
    wxApp::SetInstance(new TestProgram(session));
    int one = 1;
    const int result = wxEntry(one, words);
    const std::vector<std::string> complaints = test::complaints();
    for (const std::string& each : complaints) std::cerr << "complaint: " << each << '\n';
    return result != 0 ? result : static_cast<int>(std::min<std::size_t>(complaints.size(), 99));
}
