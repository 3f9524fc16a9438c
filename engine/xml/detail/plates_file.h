#pragma once
// Plate documents: one plate or a library of many, read by themselves or for a detail that refers to one.
#include "model/plate.h"
#include "model/problem.h"
#include "xml/document/reading.h"

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace toehold::xml {

struct PlatesRead {
    std::vector<model::Plate> plates;
    LineMap lines;
    model::Problems problems;
};
[[nodiscard]] PlatesRead read_plates(const std::filesystem::path& file);
[[nodiscard]] PlatesRead read_plates_text(std::string_view text, const std::filesystem::path& file);
[[nodiscard]] std::string write_plates(const std::vector<model::Plate>& plates);

/// The plate a reference gives, from its document beside the detail's file; absent when it gives none.
[[nodiscard]] std::optional<model::Plate> referred_plate(const model::PlateReference& reference,
                                                         const std::filesystem::path& detail_file);

/// SHA-256 of the plate in its canonical written form: changes when the plate does, not when its library does.
[[nodiscard]] std::string plate_sha256(const model::Plate& plate);

}  // namespace toehold::xml
