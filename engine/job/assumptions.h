#pragma once
// The list of assumed values while a detail grows.
#include "job/job.h"

#include <string>
#include <vector>

namespace toehold::job {

class Assumptions {
  public:
    /// An attribute of an element that the job tells in part; its value is read from the detail at the end.
    void attribute(std::string element, std::string name, format::Phrase why);
    /// A whole element, in a few words.
    void element(std::string element, format::Phrase value, format::Phrase why);

    /// With every value, in the order of the file. Throws std::logic_error for an element the detail lacks.
    [[nodiscard]] std::vector<Assumed> of(const model::BaseDetail& detail) const;

  private:
    std::vector<Assumed> all_;
};

}  // namespace toehold::job
