#pragma once
// The file behind a window: opening, saving, the copy kept against a crash, and noticing that somebody else wrote it.
#include "catalog/catalog.h"
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

struct Opened {
    std::optional<model::BaseDetail> detail;  ///< absent: `problems` says why
    model::Problems problems;
    FileStamp stamp;
};

/// A base detail file, or a plate document (its first plate becomes a new detail, and `problems` stays empty).
[[nodiscard]] Opened open_detail(const std::filesystem::path& file, const catalog::Catalog& catalog);

struct Saved {
    std::optional<FileStamp> stamp;  ///< absent: not saved, the file that was there still is
    std::string refusal;
};
/// Atomic. A plate reference that no longer gives the plate as drawn is dropped, and the plate written into the detail.
[[nodiscard]] Saved save_detail(const std::filesystem::path& file, const model::BaseDetail& detail);

/// Whether the file's bytes are no longer those of the stamp. A file that is gone has changed.
[[nodiscard]] bool changed_outside(const std::filesystem::path& file, const FileStamp& stamp);

/// A copy of unsaved work, in a folder of the user's state (XDG_STATE_HOME/toehold/recovery), named for the process, so
/// that copies of programs still running are left alone.
struct RecoveryCopy {
    std::filesystem::path copy;
    std::filesystem::path of;  ///< the file it is of; empty: never saved
    std::string name;          ///< of the detail
    std::string written;       ///< local date and time
};
[[nodiscard]] std::filesystem::path recovery_folder();
/// Writes or overwrites this window's copy; `window` tells the windows of one process apart. False: could not.
bool keep_copy(const std::filesystem::path& folder, int window, const std::filesystem::path& of,
               const model::BaseDetail& detail);
void drop_copy(const std::filesystem::path& folder, int window);
/// Copies left by processes that are gone, newest first.
[[nodiscard]] std::vector<RecoveryCopy> left_copies(const std::filesystem::path& folder);
[[nodiscard]] Opened open_copy(const RecoveryCopy& copy, const catalog::Catalog& catalog);
void drop_copy(const RecoveryCopy& copy);

}  // namespace toehold::editing
