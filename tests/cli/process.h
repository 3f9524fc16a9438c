#pragma once
// Running the program as a user does, and keeping what it says.
#include "support/contains.h"
#include "support/file_bytes.h"
#include "support/temporary_folder.h"

#include <string>
#include <vector>

namespace toehold::test {

struct Ran {
    int status = -1;  ///< exit status; -1 when a signal ended it
    std::string out, err;
};

struct Surroundings {
    std::string input;                     ///< on standard input
    std::string output_file;               ///< standard output goes there instead of `Ran::out`
    bool close_output = false;             ///< standard output is a pipe nobody reads
    std::vector<std::string> environment;  ///< `NAME=value`, added to the caller's
};

/// The program built beside these tests, while it runs.
class Running {
  public:
    explicit Running(const std::vector<std::string>& arguments, const Surroundings& surroundings = {});
    ~Running();  ///< ends it
    Running(const Running&) = delete;
    Running& operator=(const Running&) = delete;
    Running(Running&&) = delete;
    Running& operator=(Running&&) = delete;

    [[nodiscard]] bool ended() const;
    void signal(int number) const;
    /// Until it ends; what it said. Once.
    [[nodiscard]] Ran wait();

  private:
    TemporaryFolder own_;
    int process_ = -1;  ///< -1: waited for
};

/// Runs it to its end.
[[nodiscard]] Ran run_toehold(const std::vector<std::string>& arguments, const Surroundings& surroundings = {});

}  // namespace toehold::test
