#pragma once
// Reading and writing base details. Unknown names, missing units, two roots, DOCTYPE, bad UTF-8 and
// files over 4 MB are problems with file, line and element; all of a file's problems are returned.
#include "model/base_detail.h"
#include "model/problem.h"
#include "xml/document/reading.h"

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

namespace toehold::xml {

enum class Mode {
    strict,   ///< a detail only when there is no problem
    lenient,  ///< for repair and recovery: whatever could be read, beside the same problems
};

struct DetailRead {
    /// Strict: absent when there is any problem. Lenient: absent only when the text is no base detail at all; what
    /// could not be read then has a harmless value (empty, zero, the first word).
    std::optional<model::BaseDetail> detail;
    LineMap lines;
    model::Problems problems;  ///< of form; without such, of `model::validate`
    std::string sha256;        ///< of the file's bytes, hexadecimal; empty when it could not be read
    /// Everything the text says was read: `problems` are of `model::validate` alone, and a lenient `detail` loses
    /// nothing.
    bool is_whole = false;
};

/// Reads the file and the plate document it refers to, and validates.
[[nodiscard]] DetailRead read_detail(const std::filesystem::path& file, Mode mode = Mode::strict);
/// The same from memory; `file` is used for messages and to find a plate document beside it.
[[nodiscard]] DetailRead read_detail_text(std::string_view text, const std::filesystem::path& file,
                                          Mode mode = Mode::strict);
[[nodiscard]] std::string write_detail(const model::BaseDetail& detail);

}  // namespace toehold::xml
