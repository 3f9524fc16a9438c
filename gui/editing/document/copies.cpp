// Copies of unsaved work, of details and projects alike.
#include "editing/document.h"
#include "editing/document/origin.h"
#include "editing/document/process.h"
#include "editing/document/project_document.h"
#include "editing/mounts/mount.h"
#include "xml/detail/detail_file.h"
#include "xml/detail/project_file.h"
#include "xml/document/file.h"

#include <fmt/format.h>
#include <sys/stat.h>

#include <algorithm>
#include <cstdlib>
#include <ctime>
#include <utility>

namespace toehold::editing {
namespace {

/// The references the detail had; each kept only while its file gives what the copy has.
void restore_references(model::BaseDetail& detail, const Origin& origin, const std::filesystem::path& of) {
    give_references(detail, origin);
    detail = as_saved(of, detail);
}

struct Written {
    std::string words;  ///< local date and time
    timespec time{};
};

Written written(const std::filesystem::path& file) {
    struct stat status {};
    if (::stat(file.c_str(), &status) != 0) return {};
    std::tm local{};
    ::localtime_r(&status.st_mtim.tv_sec, &local);
    return {fmt::format("{:04}-{:02}-{:02} {:02}:{:02}", local.tm_year + 1900, local.tm_mon + 1, local.tm_mday,
                        local.tm_hour, local.tm_min),
            status.st_mtim};
}

bool make_private_folder(const std::filesystem::path& folder) {
    std::error_code error;
    std::filesystem::create_directories(folder.parent_path(), error);
    std::filesystem::create_directory(folder, error);
    if (!std::filesystem::is_directory(folder, error)) return false;
    std::filesystem::permissions(folder, std::filesystem::perms::owner_all, error);
    return true;
}

std::filesystem::path own_copy(const std::filesystem::path& folder, int window) {
    return folder / copy_name(this_process(), window);
}

/// Of the detail or the project in it; empty where it cannot be read.
std::string name_in(const RecoveryCopy& copy, std::string_view text) {
    if (copy.project) {
        const xml::ProjectRead read = xml::read_project_text(text, copy.copy);
        return read.project ? read.project->name : std::string();
    }
    const xml::DetailRead read = xml::read_detail_text(text, copy.copy, xml::Mode::lenient);
    return read.detail ? read.detail->name : std::string();
}

/// Writes what `text` makes as this window's copy.
template <class Text>
bool keep_text(const std::filesystem::path& folder, int window, const Text& text) {
    if (folder.empty() || !make_private_folder(folder)) return false;
    try {
        return !xml::save_atomically(own_copy(folder, window), text());
    } catch (const std::exception& /*a number no file may hold, or no memory*/) {
        return false;
    }
}

/// A relative folder in such a variable is to be ignored (XDG Base Directory Specification 0.8).
std::filesystem::path folder_named_by(const char* variable) {
    const char* const value = std::getenv(variable);
    const std::filesystem::path folder = value == nullptr ? "" : value;
    return folder.is_absolute() ? folder : std::filesystem::path();
}

}  // namespace

std::filesystem::path recovery_folder() {
    std::filesystem::path state = folder_named_by("XDG_STATE_HOME");
    if (state.empty()) {
        const std::filesystem::path home = folder_named_by("HOME");
        if (home.empty()) return {};
        state = home / ".local" / "state";
    }
    return state / "toehold" / "recovery";
}

bool keep_copy(const std::filesystem::path& folder, int window, const std::filesystem::path& of,
               const model::BaseDetail& detail) {
    return keep_text(folder, window, [&] {
        model::BaseDetail whole = detail;
        const Origin origin = origin_of(of, take_references(whole));
        return xml::write_detail(whole) + comment(origin);
    });
}

bool keep_copy(const std::filesystem::path& folder, int window, const std::filesystem::path& of,
               const model::Project& project) {
    return keep_text(folder, window, [&] { return copy_text(of, project); });
}

void drop_copy(const std::filesystem::path& folder, int window) {
    std::error_code ignored;
    if (!folder.empty()) std::filesystem::remove(own_copy(folder, window), ignored);
}

std::vector<RecoveryCopy> left_copies(const std::filesystem::path& folder) {
    std::vector<std::pair<timespec, RecoveryCopy>> found;
    std::error_code ignored;
    for (const auto& entry : std::filesystem::directory_iterator(folder, ignored)) {
        const std::optional<ProcessMark> process = process_of(entry.path().filename().string());
        if (!process || still_runs(*process)) continue;
        RecoveryCopy copy{entry.path(), {}, {}, {}, xml::document_kind(entry.path()) == xml::DocumentKind::project};
        const xml::TextRead bytes = xml::read_text(copy.copy);
        if (bytes.text) {
            Origin origin = read_comment(*bytes.text);
            copy.of = origin["of"];
            copy.name = name_in(copy, *bytes.text);
        }
        const Written when = written(copy.copy);
        copy.written = when.words;
        found.emplace_back(when.time, std::move(copy));
    }
    std::sort(found.begin(), found.end(), [](const auto& a, const auto& b) {
        return std::pair(a.first.tv_sec, a.first.tv_nsec) > std::pair(b.first.tv_sec, b.first.tv_nsec);
    });
    std::vector<RecoveryCopy> copies;
    copies.reserve(found.size());
    for (auto& [time, copy] : found) copies.push_back(std::move(copy));
    return copies;
}

Opened open_copy(const RecoveryCopy& copy, const catalog::Catalog& /*a copy is a detail, never a plate*/) {
    const xml::TextRead bytes = xml::read_text(copy.copy);
    if (!bytes.text) return {std::nullopt, bytes.problems, {}};
    xml::DetailRead read = xml::read_detail_text(*bytes.text, copy.copy, xml::Mode::lenient);
    Opened opened{std::move(read.detail), std::move(read.problems), {}};
    const Origin origin = read_comment(*bytes.text);
    if (opened.detail) restore_references(*opened.detail, origin, copy.of);
    if (!copy.of.empty()) opened.stamp = stamp_of(copy.of);
    return opened;
}

void drop_copy(const RecoveryCopy& copy) {
    std::error_code ignored;
    std::filesystem::remove(copy.copy, ignored);
}

}  // namespace toehold::editing
