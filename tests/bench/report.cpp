#include "bench/report.h"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <stdexcept>

namespace toehold::bench {
namespace {

/// Keeps each repetition's time beside printing it.
class Keeper : public benchmark::ConsoleReporter {
  public:
    explicit Keeper(Medians& medians) : medians_(medians) {}
    void ReportRuns(const std::vector<Run>& runs) override {
        ConsoleReporter::ReportRuns(runs);
        for (const Run& run : runs) {
            if (run.run_type != Run::RT_Iteration) continue;
            if (run.error_occurred) throw std::runtime_error(run.error_message);
            const double seconds =
                run.run_name.time_type == "manual_time" ? run.real_accumulated_time : run.cpu_accumulated_time;
            medians_.add(run.run_name.function_name, seconds / static_cast<double>(run.iterations));
        }
    }

  private:
    Medians& medians_;
};

}  // namespace

double Medians::seconds(const std::string& name) const {
    const auto found = times_.find(name);
    if (found == times_.end()) throw std::runtime_error("nothing was timed under " + name);
    std::vector<double> sorted = found->second;
    std::sort(sorted.begin(), sorted.end());
    const std::size_t half = sorted.size() / 2;
    return sorted.size() % 2 == 1 ? sorted[half] : 0.5 * (sorted[half - 1] + sorted[half]);
}

std::size_t Medians::repetitions() const { return times_.empty() ? 0 : times_.begin()->second.size(); }

std::set<std::string> take_tables(int& count, char** words) {
    std::set<std::string> tables;
    int kept = 1;
    for (int i = 1; i < count; ++i) {
        const std::string word = words[i];
        if (word == "plate" || word == "reviews" || word == "growth") {
            tables.insert(word);
        } else {
            words[kept++] = words[i];
        }
    }
    count = kept;
    return tables;
}

Medians run_benchmarks(int count, char** words) {
    // Defaults that the caller's words, which follow, may replace. Interleaved, so that a slow moment of the machine
    // falls on all alike.
    std::string name = words[0], repetitions = "--benchmark_repetitions=11",
                interleaving = "--benchmark_enable_random_interleaving=true", least_time = "--benchmark_min_time=0.05";
    std::vector<char*> all = {name.data(), repetitions.data(), interleaving.data(), least_time.data()};
    const bool filtered = std::any_of(words + 1, words + count, [](const char* word) {
        return std::string(word).find("benchmark_filter") != std::string::npos;
    });
    all.insert(all.end(), words + 1, words + count);
    int all_count = static_cast<int>(all.size());
    all.push_back(nullptr);
    benchmark::Initialize(&all_count, all.data());
    if (benchmark::ReportUnrecognizedArguments(all_count, all.data())) throw std::runtime_error("unknown option");
    Medians medians;
    Keeper keeper(medians);
    benchmark::RunSpecifiedBenchmarks(&keeper);
    medians.set_complete(!filtered);
    return medians;
}

}  // namespace toehold::bench
