#pragma once
// The ways forces use a connection, each a force or a couple against what it may take, and how those ways act together.
// A check looks for the worst of hundreds of states, and reads about one of them: words are made for that one alone.
#include "format/phrase.h"

#include <array>
#include <string>
#include <utility>
#include <vector>

namespace toehold::checks {

/// Below these, lb and lb in, nothing needs a path; they are far below any load and above the solver's noise.
inline constexpr double no_force_lb = 0.1;
inline constexpr double no_couple_lb_in = 1.0;

/// Uses of one group load the same wood or metal one instead of another; the groups add up.
enum class UseGroup { shear, lateral, withdrawal };

struct UseWords {
    std::string symbol;
    format::Phrase meaning;
    std::string formula;
    format::Phrase why = {};  ///< where nothing resists it: the sentence that says so, and what would
};

struct EndUse : UseWords {
    double force = 0.0;      ///< >= 0
    double allowable = 0.0;  ///< 0: nothing resists it
    std::string unit = "lb";
    UseGroup group = UseGroup::shear;
};

/// Force over allowable; infinity where nothing resists a force that counts.
[[nodiscard]] double ratio(const EndUse& use);

/// What some forces come to.
class Uses {
  public:
    /// `in_words`: where each use is written down; null: nobody reads them.
    explicit Uses(std::vector<EndUse>* in_words = nullptr) : in_words_(in_words) {}

    /// A force. `words()` -> UseWords, called where somebody reads.
    template <class Words>
    void add(UseGroup group, double force_lb, double allowable_lb, Words&& words) {
        count(group, force_lb, allowable_lb, true);
        if (in_words_ != nullptr) write(group, force_lb, allowable_lb, "lb", std::forward<Words>(words)());
    }
    /// A couple that nothing resists.
    template <class Words>
    void add_unresisted_couple(UseGroup group, double couple_lb_in, Words&& words) {
        count(group, couple_lb_in, 0.0, false);
        if (in_words_ != nullptr) write(group, couple_lb_in, 0.0, "lb in", std::forward<Words>(words)());
    }
    /// Another reason why nothing resists any of them.
    void explain(const format::Phrase& why);

    /// The groups' largest ratios added: linear interaction, on the safe side of NDS 2018 12.4.
    [[nodiscard]] double together() const { return largest_[0] + largest_[1] + largest_[2]; }

  private:
    void count(UseGroup group, double force, double allowable, bool is_force);
    void write(UseGroup group, double force, double allowable, const char* unit, UseWords words);

    std::vector<EndUse>* in_words_;
    std::array<double, 3> largest_{};
};

}  // namespace toehold::checks
