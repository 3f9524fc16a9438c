#pragma once
// Whole files: to memory and back, with every refusal as a problem; their digest, and the kind of document they hold.
#include "model/problem.h"

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

namespace toehold::xml {

/// Largest document read. A library of a thousand plates is about 0.5 MB; the XML library's work grows with the square
/// of the attributes of one element, so a limit is needed at all.
inline constexpr std::size_t max_document_megabytes = 4;
inline constexpr std::size_t max_document_bytes = max_document_megabytes << 20U;

struct TextRead {
    std::optional<std::string> text;  ///< the file's bytes; absent when there is a problem
    model::Problems problems;         ///< `file` is set
};

/// Reads a regular file of at most `max_document_bytes`. Missing, unreadable, a folder, a pipe or a device, too large:
/// each is a problem. Never waits on a pipe.
[[nodiscard]] TextRead read_text(const std::filesystem::path& file);

/// A problem with the file as a whole.
[[nodiscard]] model::Problem file_problem(const std::filesystem::path& file, const format::Phrase& message);

/// Writes beside the target and renames, so that a good file is never lost; the problem says what the system refused.
[[nodiscard]] std::optional<model::Problem> save_atomically(const std::filesystem::path& file, std::string_view text);

/// SHA-256 (FIPS 180-4) of a text, as 64 hexadecimal digits in lower case.
[[nodiscard]] std::string sha256(std::string_view text);

/// Name of the root element, as far as it can be told: of a damaged document too, after a DOCTYPE, in UTF-16. Empty
/// where there is none, or the file cannot be read.
[[nodiscard]] std::string root_element(const std::filesystem::path& file);

enum class DocumentKind { detail, project, plates, catalog, unknown };
/// By the root element's name; `unknown` when the file cannot be read.
[[nodiscard]] DocumentKind document_kind(const std::filesystem::path& file);

}  // namespace toehold::xml
