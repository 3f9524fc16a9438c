#pragma once
// The file of a window's detail: saving, reading it again, noticing that another program wrote it, and the copy kept
// against a crash.
#include "editing/document.h"
#include "job/job.h"

#include <wx/timer.h>

#include <filesystem>
#include <optional>
#include <utility>

namespace toehold::session {
class Session;
}

namespace toehold::window {

class Application;
class DetailFrame;
class Panes;

/// Where a window's detail comes from and goes to.
struct Document {
    std::filesystem::path file;  ///< empty: never saved
    editing::FileStamp stamp;
    bool recovered = false;  ///< a copy kept against a crash: unsaved, though nothing has been changed here
    bool told = false;       ///< made of what its reader told: unsaved too, for it would have to be told again
};

class DetailFile {
  public:
    /// All of them outlive this. `number` tells the windows of one process apart.
    DetailFile(DetailFrame& frame, Application& application, session::Session& session, Panes& panes, int number,
               Document document);

    [[nodiscard]] const std::filesystem::path& path() const { return document_.file; }
    [[nodiscard]] bool unsaved() const;
    /// The detail was started from its job: what was assumed is marked where it is saved.
    void started_from(job::Started started) { started_ = std::move(started); }
    /// Another document in this one's place. What was assumed stays known: a detail started from its job gives its
    /// place to its own file alone, read again.
    void take(Document document);

    bool save();  ///< false: not saved; the reader has been told, or thought better of it
    bool save_as();
    bool revert();
    [[nodiscard]] bool may_close();
    void look_for_changes_outside();
    /// Some time after the last edit.
    void copy_soon();
    /// The window goes: no timer runs on, and its copy is dropped.
    void end();

  private:
    bool save_to(const std::filesystem::path& file);
    void read_again();
    void keep_copy();
    void tell_of_change(const wxString& words, bool can_reload);
    [[nodiscard]] std::filesystem::path suggested_file() const;

    DetailFrame& frame_;
    Application& application_;
    session::Session& session_;
    Panes& panes_;
    int number_;
    Document document_;
    std::optional<job::Started> started_;
    wxTimer watch_;               ///< of the file on disk, and of the copy
    wxTimer rest_;                ///< since the last edit
    int watches_ = 0;             ///< since the last copy
    bool copied_ = false;         ///< a copy is there
    editing::FileStamp told_of_;  ///< the last outside change the reader was told of
    bool told_ = false;
};

}  // namespace toehold::window
