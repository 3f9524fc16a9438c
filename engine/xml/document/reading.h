#pragma once
// What the readers of one file share: its problems, and the line of every element they came by.
#include "model/problem.h"

#include <cstddef>
#include <filesystem>
#include <map>
#include <string>

namespace toehold::xml {

/// Element path (as in model::Problem::element) to its line, to give a later problem its place in the file.
using LineMap = std::map<std::string, int, std::less<>>;

/// A hostile file can hold a million problems; beyond this they are not even kept.
inline constexpr std::size_t most_problems_recorded = 1000;

/// `problems` have no file yet; `finish_reading` gives it.
struct Reading {
    model::Problems problems;
    LineMap lines;  ///< every element read; the root's path is empty
};

/// Gives file and, where the element or the nearest element above it is known, line.
void locate(model::Problems& problems, const std::filesystem::path& file, const LineMap& lines);

/// Gives each problem its file and line, puts them in the order of their lines (another file's last) and keeps 100 at
/// most, the last then saying how many more there are.
void finish_reading(Reading& reading, const std::filesystem::path& file);

}  // namespace toehold::xml
