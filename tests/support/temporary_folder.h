#pragma once
// A folder of one's own in the system's place for temporary files.
#include <filesystem>

namespace toehold::test {

/// New and empty, removed with everything in it. Throws std::runtime_error where none can be made.
class TemporaryFolder {
  public:
    TemporaryFolder();
    TemporaryFolder(const TemporaryFolder&) = delete;
    TemporaryFolder& operator=(const TemporaryFolder&) = delete;
    ~TemporaryFolder();
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

  private:
    std::filesystem::path path_;
};

}  // namespace toehold::test
