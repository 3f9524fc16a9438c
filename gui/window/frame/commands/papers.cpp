// Papers and tables, which leave the window as files.
#include "export/csv/review_csv.h"
#include "paper/issue.h"
#include "paper/paper_file.h"
#include "window/frame/application.h"
#include "window/frame/commands.h"
#include "window/frame/detail_frame.h"
#include "window/frame/menus.h"
#include "window/text.h"
#include "xml/document/file.h"

#include <wx/translation.h>
#include <wx/utils.h>

#include <array>
#include <functional>

namespace toehold::window {
namespace {

namespace fs = std::filesystem;

/// One thing that can be written: under which name, with which endings, and how its bytes are made.
struct Writing {
    std::string name;
    std::vector<std::string> endings;
    std::function<std::string(const std::string& ending)> bytes;
    bool needs_all = false;  ///< assumptions and remedies too
};

paper::Issue issue_of(const session::Session& session, const fs::path& file) {
    paper::Issue issue;
    issue.date = paper::today();
    issue.file = file.filename().string();
    issue.program = "Toehold " TOEHOLD_VERSION;
    issue.locale = session.locale();
    // Paper goes with the units: there is no other wish to know it by.
    issue.paper = issue.locale.system == units::System::si ? paper::PaperSize::a4 : paper::PaperSize::letter;
    return issue;
}

Writing paper_writing(paper::Kind kind, const session::Session& session, const fs::path& file) {
    const std::string named = file.empty() ? "base-detail.xml" : file.filename().string();
    Writing writing;
    writing.name = paper::customary_name(kind, named);
    writing.endings = paper::endings(kind);
    writing.bytes = [kind, &session, file](const std::string& ending) {
        return paper::paper_file(kind, ending, *session.review(), issue_of(session, file));
    };
    writing.needs_all = kind == paper::Kind::report;
    return writing;
}

Writing cutting_writing(const session::Session& session, const fs::path& file) {
    Writing writing = paper_writing(paper::Kind::shop_drawing, session, file);
    writing.name = fs::path(writing.name).replace_extension("dxf").string();
    writing.endings = {"dxf"};
    return writing;
}

Writing table_writing(bool anchors, const session::Session& session, const fs::path& file) {
    const std::string named = file.empty() ? "base-detail" : file.stem().string();
    Writing writing;
    writing.name = named + (anchors ? "-anchors.csv" : "-checks.csv");
    writing.endings = {"csv"};
    writing.bytes = [anchors, &session, file](const std::string&) {
        const std::vector<exporting::FiledReview> all{{file.filename().string(), session.review()}};
        return anchors ? exporting::anchors_csv(all) : exporting::checks_csv(all);
    };
    return writing;
}

std::optional<Writing> writing_of(int id, const session::Session& session, const fs::path& file) {
    if (id >= command_report && id <= command_elevation)
        return paper_writing(static_cast<paper::Kind>(id - command_report), session, file);
    if (id == command_cutting_file) return cutting_writing(session, file);
    if (id == command_anchors_table || id == command_checks_table)
        return table_writing(id == command_anchors_table, session, file);
    return std::nullopt;
}

/// Why nothing can be written now; empty where it can.
wxString reason_to_wait(const Writing& writing, const session::Session& session) {
    if (!session.problems().empty()) return text_of(model::sentence(session.problems().front(), session.locale()));
    if (!session.failure().empty()) return text_of(session.failure(), session.locale());
    const bool ready = session.review() != nullptr && session.freshness() == session::Freshness::current;
    if (!ready) return _("The checks are still running. Try again in a moment.");
    if (writing.needs_all && !session.review_is_complete())
        return _("Remedies are still being worked out. Try again in a moment.");
    return {};
}

/// Writes to the file; empty: done, else why not.
wxString written(const fs::path& target, const Writing& writing) {
    try {
        const wxBusyCursor busy;
        const auto problem = xml::save_atomically(target, writing.bytes(target.extension().string().substr(1)));
        return problem ? text_of(model::sentence(*problem)) : wxString();
    } catch (const std::exception& error) {
        return text_of(error.what());
    }
}

}  // namespace

bool run_paper_command(int id, const CommandTarget& target) {
    session::Session& session = target.session;
    const Prompts& prompts = target.application.prompts;
    const fs::path& file = target.file.path();
    const std::optional<Writing> writing = writing_of(id, session, file);
    if (!writing) return false;
    const auto refuse = [&](const wxString& why) { prompts.tell(&target.frame, _("No file was written."), why); };
    if (const wxString why = reason_to_wait(*writing, session); !why.empty()) {
        refuse(why);
        return true;
    }
    const fs::path folder = file.empty() ? fs::path() : file.parent_path();
    const auto path = prompts.paper_to_save(&target.frame, folder / writing->name, writing->endings);
    if (!path) return true;
    // The results may have changed while the reader chose a name.
    wxString why = reason_to_wait(*writing, session);
    if (why.empty()) why = written(*path, *writing);
    if (!why.empty()) {
        refuse(why);
    } else {
        session.say(said(wxString::Format(_("Written to %s."), shown_path(*path))));
    }
    return true;
}

}  // namespace toehold::window
