#pragma once
// The file behind a window: opening, saving, the copy kept against a crash, and noticing that somebody else wrote it.
#include "catalog/catalog.h"
#include "job/job.h"
#include "model/base_detail.h"
#include "model/problem.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace toehold::editing {

/// What the file was when it was last read or written here.
struct FileStamp {
    std::string sha256;  ///< of its bytes; empty: there was none
    friend bool operator==(const FileStamp&, const FileStamp&) = default;
};

/// Of the file as it is now; of one that cannot be read, as of none.
[[nodiscard]] FileStamp stamp_of(const std::filesystem::path& file);

struct Opened {
    std::optional<model::BaseDetail> detail;  ///< absent: `problems` says why
    /// To be told even where there is a detail: it is then as the file has it, and cannot be built or computed so.
    model::Problems problems;
    FileStamp stamp;
    bool is_new = false;  ///< made from a plate document: it has no file yet, and must not be saved over that one
};

/// A base detail file, or a plate document (its first plate becomes a new detail, and `problems` stays empty). A file
/// whose form is in doubt, or that has too many members, gives no detail; any other does, even if `model::validate` has
/// problems with it.
[[nodiscard]] Opened open_detail(const std::filesystem::path& file, const catalog::Catalog& catalog);

struct Saved {
    std::optional<FileStamp> stamp;  ///< absent: not saved, the file that was there still is
    std::string refusal;
};
/// The detail as that file will hold it: a reference that does not give what is drawn, looked for from the file's
/// folder, is dropped, and what it stood for written into the detail.
[[nodiscard]] model::BaseDetail as_saved(const std::filesystem::path& file, const model::BaseDetail& detail);
/// Atomic, of the detail `as_saved`. One that `model::validate` has problems with is saved all the same. Of a detail
/// that was `started` from its job, each assumed value that still stands gets its comment.
[[nodiscard]] Saved save_detail(const std::filesystem::path& file, const model::BaseDetail& detail,
                                const job::Started* started = nullptr);

/// Whether the file's bytes are no longer those of the stamp. A file that is gone has changed.
[[nodiscard]] bool changed_outside(const std::filesystem::path& file, const FileStamp& stamp);

/// A copy of unsaved work, in a folder of the user's state (XDG_STATE_HOME/toehold/recovery), named for the process and
/// when it began, so that copies of programs still running are left alone. It is a base detail or project file with its
/// plates in it, and can be opened as one.
struct RecoveryCopy {
    std::filesystem::path copy;
    std::filesystem::path of;  ///< the file it is of; empty: never saved
    std::string name;          ///< of the detail or project
    std::string written;       ///< local date and time
    bool project = false;      ///< it is of a project: `open_project_copy` of project_document.h opens it
};
/// Empty where the user has no folder of state.
[[nodiscard]] std::filesystem::path recovery_folder();
/// Writes or overwrites this window's copy; `window` tells the windows of one process apart. False: could not.
bool keep_copy(const std::filesystem::path& folder, int window, const std::filesystem::path& of,
               const model::BaseDetail& detail);
void drop_copy(const std::filesystem::path& folder, int window);
/// Copies left by processes that are gone, newest first.
[[nodiscard]] std::vector<RecoveryCopy> left_copies(const std::filesystem::path& folder);
/// The detail as it was when the copy was kept, sound or not; `stamp` is of the file it is of, as that is now. A copy
/// that somebody damaged gives what can be read of it, and `problems` tells of the rest.
[[nodiscard]] Opened open_copy(const RecoveryCopy& copy, const catalog::Catalog& catalog);
void drop_copy(const RecoveryCopy& copy);

}  // namespace toehold::editing
