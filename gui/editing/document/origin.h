#pragma once
// Where a copy of unsaved work is from, as a comment at the end of its file, so that the copy stays a file of its kind.
#include <filesystem>
#include <map>
#include <string>
#include <string_view>

namespace toehold::editing {

/// What a copy remembers: the file it is of, under `of`, and its mounts' references. Names without blanks.
using Origin = std::map<std::string, std::string>;

/// `of` empty: never saved.
[[nodiscard]] Origin origin_of(const std::filesystem::path& of, Origin references);
[[nodiscard]] std::string comment(const Origin& origin);
/// Of the last such comment in the text; empty: there is none.
[[nodiscard]] Origin read_comment(std::string_view text);

}  // namespace toehold::editing
