#pragma once
// Sources of values whose words are too long for a column of the worked steps: numbered, and given in full at the end.
#include "format/phrase.h"

#include <string>
#include <vector>

namespace toehold::review {
struct Review;
}

namespace toehold::paper::report {

/// Of the steps that the report prints, in the order they are met.
class LongSources {
  public:
    explicit LongSources(const review::Review& review);
    /// The clause itself where it is short, else `source 3`.
    [[nodiscard]] format::Phrase words(const std::string& clause, const format::Locale& locale) const;
    [[nodiscard]] bool is_long(const std::string& clause) const;
    [[nodiscard]] const std::vector<std::string>& all() const { return all_; }

  private:
    std::vector<std::string> all_;
};

}  // namespace toehold::paper::report
