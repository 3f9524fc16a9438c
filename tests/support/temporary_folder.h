#pragma once
// A folder or a file of one's own in the system's place for temporary files.
#include <filesystem>
#include <string>
#include <string_view>

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

/// A file with these bytes in a folder of its own, removed with it.
class TemporaryFile {
  public:
    TemporaryFile(const std::string& name, std::string_view bytes);
    [[nodiscard]] std::string path() const { return (folder_.path() / name_).string(); }

  private:
    TemporaryFolder folder_;
    std::string name_;
};

}  // namespace toehold::test
