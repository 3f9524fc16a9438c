#pragma once
// A folder with a detail that is quickly solved (a rigid plate), and searches on it.
#include "process.h"

#include <filesystem>
#include <string>
#include <vector>

namespace toehold::test {

class Porch {
  public:
    Porch();
    [[nodiscard]] std::string file() const { return (folder_.path() / "porch.xml").string(); }
    [[nodiscard]] std::filesystem::path path(const std::string& name) const { return folder_.path() / name; }
    /// Eight candidates, of which some hold.
    [[nodiscard]] Ran size(const std::vector<std::string>& more, const std::string& input = {}) const;

  private:
    TemporaryFolder folder_;
};

}  // namespace toehold::test
