#include "support/temporary_folder.h"

#include "support/file_bytes.h"

#include <stdlib.h>  // mkdtemp, which is POSIX's

#include <stdexcept>
#include <string>
#include <system_error>

namespace toehold::test {

TemporaryFolder::TemporaryFolder() {
    std::string pattern = (std::filesystem::temp_directory_path() / "toehold-test-XXXXXX").string();
    if (::mkdtemp(pattern.data()) == nullptr) throw std::runtime_error("no folder for temporary files");
    path_ = pattern;
}

TemporaryFolder::~TemporaryFolder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
}

TemporaryFile::TemporaryFile(const std::string& name, std::string_view bytes) : name_(name) {
    put_bytes(folder_.path() / name, bytes);
}

}  // namespace toehold::test
