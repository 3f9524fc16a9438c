#pragma once
// What the tests of this room share: sample documents, changed at one place, and folders that vanish.
#include "support/file_bytes.h"
#include "support/problems.h"
#include "support/program.h"
#include "support/temporary_folder.h"
#include "xml/detail/detail_file.h"
#include "xml/detail/plates_file.h"
#include "xml/document/file.h"

#include <filesystem>
#include <string>
#include <vector>

namespace toehold::test {

/// A file of tests/files/version_1, whose files are read for ever, or of tests/files/bad.
[[nodiscard]] std::filesystem::path good_file(const std::string& name);
[[nodiscard]] std::filesystem::path bad_file(const std::string& name);
[[nodiscard]] std::vector<std::filesystem::path> good_details();

/// The plainest good detail.
[[nodiscard]] std::string plain_detail();
/// `text` with its only `from` replaced; fails the test when there is none or more than one.
[[nodiscard]] std::string changed(const std::string& text, const std::string& from, const std::string& to);

}  // namespace toehold::test
