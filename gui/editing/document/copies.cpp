// Copies of unsaved work. Where a copy is from stands in a comment at its end, so that it stays a base detail file.
#include "editing/document.h"
#include "editing/document/process.h"
#include "editing/mounts/mount.h"
#include "xml/detail/detail_file.h"
#include "xml/document/file.h"

#include <fmt/format.h>
#include <sys/stat.h>

#include <algorithm>
#include <cstdlib>
#include <ctime>
#include <utility>

namespace toehold::editing {
namespace {

/// What a copy remembers of where it is from: its file, and its mount's references.
using Origin = References;

constexpr std::string_view comment_start = "<!-- Unsaved work:";
constexpr std::string_view comment_end = " -->\n";
constexpr std::string_view hexadecimal = "0123456789ABCDEF";

/// No blank, and no two hyphens that would end the comment.
std::string encoded(std::string_view value) {
    std::string text;
    for (const char character : value) {
        const bool plain = (character >= 'a' && character <= 'z') || (character >= 'A' && character <= 'Z') ||
                           (character >= '0' && character <= '9') || character == '/' || character == '.' ||
                           character == '_';
        if (plain) {
            text += character;
            continue;
        }
        const auto byte = static_cast<unsigned char>(character);
        text += {'%', hexadecimal[byte >> 4U], hexadecimal[byte & 15U]};
    }
    return text;
}

std::string decoded(std::string_view text) {
    std::string value;
    for (std::size_t at = 0; at < text.size(); ++at) {
        const bool escape = text[at] == '%' && at + 2 < text.size();
        const std::size_t high = escape ? hexadecimal.find(text[at + 1]) : std::string_view::npos;
        const std::size_t low = escape ? hexadecimal.find(text[at + 2]) : std::string_view::npos;
        if (high == std::string_view::npos || low == std::string_view::npos) {
            value += text[at];
            continue;
        }
        value += static_cast<char>(static_cast<unsigned char>(16 * high + low));
        at += 2;
    }
    return value;
}

std::string comment(const Origin& origin) {
    std::string text(comment_start);
    for (const auto& [key, value] : origin) text += fmt::format(" {}={}", key, encoded(value));
    return text + std::string(comment_end);
}

Origin read_comment(std::string_view text) {
    Origin origin;
    const std::size_t start = text.rfind(comment_start);
    if (start == std::string_view::npos) return origin;
    std::string_view rest = text.substr(start + comment_start.size());
    rest = rest.substr(0, rest.find(comment_end));
    while (!rest.empty()) {
        const std::size_t end = std::min(rest.find(' '), rest.size());
        const std::string_view word = rest.substr(0, end);
        const std::size_t equals = word.find('=');
        if (equals != std::string_view::npos)
            origin[std::string(word.substr(0, equals))] = decoded(word.substr(equals + 1));
        rest.remove_prefix(std::min(end + 1, rest.size()));
    }
    return origin;
}

Origin origin_of(const std::filesystem::path& of, Origin references) {
    Origin origin = std::move(references);
    if (!of.empty()) origin["of"] = std::filesystem::absolute(of).string();
    return origin;
}

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
    if (folder.empty() || !make_private_folder(folder)) return false;
    model::BaseDetail whole = detail;
    const Origin origin = origin_of(of, take_references(whole));
    try {
        const std::string text = xml::write_detail(whole) + comment(origin);
        return !xml::save_atomically(own_copy(folder, window), text);
    } catch (const std::exception& /*a number no file may hold, or no memory*/) {
        return false;
    }
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
        RecoveryCopy copy{entry.path(), {}, {}, {}};
        const xml::TextRead bytes = xml::read_text(copy.copy);
        if (bytes.text) {
            Origin origin = read_comment(*bytes.text);
            copy.of = origin["of"];
            const xml::DetailRead read = xml::read_detail_text(*bytes.text, copy.copy, xml::Mode::lenient);
            if (read.detail) copy.name = read.detail->name;
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
    if (copy.of.empty()) return opened;
    const xml::TextRead now = xml::read_text(copy.of);
    if (now.text) opened.stamp.sha256 = xml::sha256(*now.text);
    return opened;
}

void drop_copy(const RecoveryCopy& copy) {
    std::error_code ignored;
    std::filesystem::remove(copy.copy, ignored);
}

}  // namespace toehold::editing
