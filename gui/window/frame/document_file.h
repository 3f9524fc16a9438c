#pragma once
// The file of what a window holds, a detail or a project: saving, reading it again, noticing that another program wrote
// it, and the copy kept against a crash.
#include "editing/document.h"
#include "format/phrase.h"

#include <wx/string.h>
#include <wx/timer.h>

#include <filesystem>
#include <functional>
#include <string>

class wxFrame;
class wxInfoBar;

namespace toehold::window {

class Application;

/// Where it comes from and goes to.
struct Document {
    std::filesystem::path file;  ///< empty: never saved
    editing::FileStamp stamp;
    bool recovered = false;  ///< a copy kept against a crash: unsaved, though nothing has been changed here
    bool copy = false;       ///< of part of a project; nothing is lost with it until it is changed
    bool told = false;       ///< made of what its reader told: unsaved too, for it would have to be told again
};

/// What is asked of the window's detail or project, and done with it.
struct Held {
    std::function<bool()> changed;      ///< since it was saved or opened
    std::function<std::string()> name;  ///< its own
    std::function<bool()> commit;       ///< takes up what is still being typed; false: refused, and said why
    std::function<editing::Saved(const std::filesystem::path& file)> write;  ///< as it stands
    std::function<void()> mark_saved;
    /// Shows what the file holds in its place; else why not, in one sentence.
    std::function<wxString(const std::filesystem::path& file)> read_again;
    std::function<bool(const std::filesystem::path& folder, int number, const std::filesystem::path& of)> keep_copy;
    std::function<void()> refresh;  ///< title and menus
    std::function<void(format::Phrase)> say;
    wxString not_saved;   ///< headline: `The detail was not saved.`
    wxString not_read;    ///< headline: it is unchanged
    std::string unnamed;  ///< file name suggested for one without a name
};

class DocumentFile {
  public:
    /// All of them outlive this. `number` tells the windows of one process apart.
    DocumentFile(wxFrame& frame, Application& application, wxInfoBar& notice, int number, Document document, Held held);

    [[nodiscard]] const std::filesystem::path& path() const { return document_.file; }
    [[nodiscard]] bool unsaved() const;
    [[nodiscard]] bool is_copy() const { return document_.copy; }
    /// Another document in this one's place.
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

    wxFrame& frame_;
    Application& application_;
    wxInfoBar& notice_;
    int number_;
    Document document_;
    Held held_;
    wxTimer watch_;               ///< of the file on disk, and of the copy
    wxTimer rest_;                ///< since the last edit
    int watches_ = 0;             ///< since the last copy
    bool copied_ = false;         ///< a copy is there
    editing::FileStamp told_of_;  ///< the last outside change the reader was told of
    bool told_ = false;
};

}  // namespace toehold::window
