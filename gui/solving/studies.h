#pragma once
// Studies of a detail beside the window: ratios over one input, the input that matters most, what holds over two.
#include "catalog/catalog.h"
#include "catalog/resolve.h"
#include "format/phrase.h"
#include "solving/errand.h"
#include "study/study.h"

#include <cstddef>
#include <cstdint>
#include <functional>
#include <memory>
#include <string>

namespace toehold::solving {

struct StudyAsked {
    enum class Kind {
        ratios,   ///< of every check over `across`
        tornado,  ///< a small change of each input
        map,      ///< what holds over `across` and `up`
    };
    Kind kind = Kind::ratios;
    std::string across = {}, up = {};  ///< as study::read_values takes them
    friend bool operator==(const StudyAsked&, const StudyAsked&) = default;
};

struct StudyNews {
    std::uint64_t number = 0;  ///< as `begin` numbered it
    StudyAsked asked;
    std::shared_ptr<const catalog::Resolved> resolved;      ///< what it is a study of, and what its fields refer to
    std::size_t done = 0, all = 0;                          ///< while it runs
    std::shared_ptr<const toehold::study::AnyStudy> study;  ///< absent: it is still running, or failed
    format::Phrase failure;                                 ///< one sentence; empty: none
};

class Studies {
  public:
    /// `deliver` is called on the study's thread, never after the destructor has returned. The catalog outlives this.
    Studies(const catalog::Catalog& catalog, std::function<void(StudyNews)> deliver);

    /// Never waits. A study that still runs is given up.
    std::uint64_t begin(catalog::Resolved resolved, StudyAsked asked);

  private:
    const catalog::Catalog& catalog_;
    std::function<void(StudyNews)> deliver_;
    std::uint64_t last_ = 0;
    Errand errand_;  ///< last, so that what it uses outlives it
};

}  // namespace toehold::solving
