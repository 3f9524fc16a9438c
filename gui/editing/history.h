#pragma once
// A detail, or a project, with its past: every change is a named step that can be undone and done again.
#include "format/phrase.h"
#include "model/base_detail.h"
#include "model/project.h"

#include <cstddef>
#include <string>
#include <vector>

namespace toehold::editing {

template <class State>
class Past {
  public:
    explicit Past(State start);

    [[nodiscard]] const State& now() const;
    /// Makes `next` the state of today and forgets what was undone. `name` in the imperative, as a menu shows it
    /// (`Move hole A`). A step with the same non-empty `merge_key` as the last one replaces that one's outcome, so that
    /// a drag or a row of nudges is one step; `seal()` ends that, and so do undo, redo and saving. A `next` equal to
    /// now is no step, and a merged step that comes back to where it began is none either.
    void apply(format::Phrase name, State next, std::string merge_key = {});
    void seal();

    [[nodiscard]] bool can_undo() const;
    [[nodiscard]] bool can_redo() const;
    [[nodiscard]] const format::Phrase& undo_name() const;  ///< of the step that undo would take back; empty: none
    [[nodiscard]] const format::Phrase& redo_name() const;
    void undo();  ///< nothing where there is none
    void redo();

    [[nodiscard]] bool changed() const;  ///< since `mark_saved` or the start; undoing back to that point clears it
    void mark_saved();

  private:
    struct Step {
        format::Phrase name;
        std::string merge_key;
        State state;
    };
    std::vector<Step> steps_;  ///< the first is the start
    std::size_t at_ = 0, saved_ = 0;
    bool saved_is_lost_ = false;
};

using History = Past<model::BaseDetail>;
using ProjectHistory = Past<model::Project>;
extern template class Past<model::BaseDetail>;
extern template class Past<model::Project>;

}  // namespace toehold::editing
