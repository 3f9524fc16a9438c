#pragma once
// Reading and writing base details and plate documents. Unknown names, missing units, two roots, DOCTYPE, bad UTF-8 and
// files over 4 MB are problems with file, line and element; all of a file's problems are returned.
#include "model/base_detail.h"
#include "model/problem.h"

#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace toehold::xml {

/// Element path (as in model::Problem::element) to its line, to give a later problem its place in the file.
using LineMap = std::map<std::string, int, std::less<>>;

enum class Mode {
    strict,   ///< a detail only when there is no problem
    lenient,  ///< for repair and recovery: whatever could be read, beside the same problems
};

struct DetailRead {
    /// Strict: absent when there is any problem. Lenient: absent only when the text is no base detail at all; what could
    /// not be read then has a harmless value (empty, zero, the first word).
    std::optional<model::BaseDetail> detail;
    LineMap lines;
    model::Problems problems;  ///< of form; without such, of `model::validate`
    std::string sha256;        ///< of the file's bytes, hexadecimal; empty when it could not be read
    /// Everything the text says was read: `problems` are of `model::validate` alone, and a lenient `detail` loses nothing.
    bool is_whole = false;
};

/// Reads the file and the plate document it refers to, and validates.
[[nodiscard]] DetailRead read_detail(const std::filesystem::path& file, Mode mode = Mode::strict);
/// The same from memory; `file` is used for messages and to find a plate document beside it.
[[nodiscard]] DetailRead read_detail_text(std::string_view text, const std::filesystem::path& file,
                                          Mode mode = Mode::strict);
[[nodiscard]] std::string write_detail(const model::BaseDetail& detail);

struct PlatesRead {
    std::vector<model::Plate> plates;
    LineMap lines;
    model::Problems problems;
};
/// A plate document: one plate or a library of many.
[[nodiscard]] PlatesRead read_plates(const std::filesystem::path& file);
[[nodiscard]] PlatesRead read_plates_text(std::string_view text, const std::filesystem::path& file);
[[nodiscard]] std::string write_plates(const std::vector<model::Plate>& plates);

/// The plate a reference gives, from its document beside the detail's file; absent when it gives none.
[[nodiscard]] std::optional<model::Plate> referred_plate(const model::PlateReference& reference,
                                                         const std::filesystem::path& detail_file);

/// SHA-256 of the plate in its canonical written form: changes when the plate does, not when its library does.
[[nodiscard]] std::string plate_sha256(const model::Plate& plate);

enum class DocumentKind { detail, plates, catalog, unknown };
/// By the root element's name; `unknown` when the file cannot be read.
[[nodiscard]] DocumentKind document_kind(const std::filesystem::path& file);

/// Writes beside the target and renames, so that a good file is never lost; the problem says what the system refused.
[[nodiscard]] std::optional<model::Problem> save_atomically(const std::filesystem::path& file, std::string_view text);

/// Gives file and, where the element or the nearest element above it is known, line.
void locate(model::Problems& problems, const std::filesystem::path& file, const LineMap& lines);

}  // namespace toehold::xml
