#pragma once
// The medians of everything that Google Benchmark timed: processor time, which a busy machine does not stretch.
#include <map>
#include <set>
#include <string>
#include <vector>

namespace toehold::bench {

class Medians {
  public:
    void add(const std::string& name, double seconds) { times_[name].push_back(seconds); }
    /// Throws std::runtime_error where nothing was timed under the name.
    [[nodiscard]] double seconds(const std::string& name) const;
    [[nodiscard]] std::size_t repetitions() const;
    [[nodiscard]] bool complete() const { return complete_; }
    void set_complete(bool complete) { complete_ = complete; }

  private:
    std::map<std::string, std::vector<double>> times_;
    bool complete_ = false;
};

/// The tables asked for by name, taken from the words; empty: none named.
[[nodiscard]] std::set<std::string> take_tables(int& count, char** words);

/// Runs what is registered; the command line may filter or shorten it (`--benchmark_...`). The result is complete when
/// nothing was filtered out. Throws std::runtime_error for a word that is not understood.
[[nodiscard]] Medians run_benchmarks(int count, char** words);

}  // namespace toehold::bench
