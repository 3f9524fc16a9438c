#pragma once
// A detail as its text has it, even where it cannot be built or computed: work in the middle of a change, or a file
// that is to be mended. `xml::read_detail_text` holds such a detail back.
#include "model/base_detail.h"

#include <filesystem>
#include <optional>
#include <string_view>

namespace toehold::editing {

struct FormRead {
    std::optional<model::BaseDetail> detail;  ///< absent: the text is no base detail at all
    bool sound = false;  ///< everything in the text could be read; else what could not holds a harmless value
};

/// `file`: beside which a plate document is looked for.
[[nodiscard]] FormRead read_form(std::string_view text, const std::filesystem::path& file);

/// The plate a reference gives, from its document beside the detail; absent when it gives none.
[[nodiscard]] std::optional<model::Plate> referred_plate(const model::PlateReference& reference,
                                                         const std::filesystem::path& file);

}  // namespace toehold::editing
