#pragma once
// Finding sizes for a session's detail: the ranges asked for, the search that runs, what it found, and the found detail
// taken as the session's own. GUI thread only, no toolkit in it.
#include "editing/sizes/ranges_form.h"
#include "format/phrase.h"
#include "search/run/run.h"
#include "solving/sizing.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace toehold::session {

class Session;

/// Which number the results are put in order by.
enum class SizeOrder { cost, weight, pieces, anchors, ratio, misplaced };

class Sizes {
  public:
    enum class State { idle, running, done, failed };
    /// The search beside the window.
    struct Search {
        std::function<std::uint64_t(search::Space)> begin;
        std::function<void()> stop;
    };
    /// The session outlives this. `told` is called after every change here.
    Sizes(Session& session, Search search, std::function<void()> told);
    ~Sizes();
    Sizes(const Sizes&) = delete;
    Sizes& operator=(const Sizes&) = delete;

    // --- what is asked for ---
    /// nullptr: the detail as it stands cannot be resolved, so that nothing can be looked for.
    [[nodiscard]] const editing::RangesForm* form();
    void tick(std::size_t row, std::size_t tick, bool on);
    void tick_all(std::size_t row, bool on);
    void type(std::size_t row, std::size_t entry, const std::string& text);
    void reset_ranges();  ///< to what a shop would try for the detail as it stands
    /// How many candidates there are; absent: the ranges cannot be read, or there are more than can be counted.
    [[nodiscard]] std::optional<search::Candidate> count();
    /// Why no search can begin; empty: one can.
    [[nodiscard]] format::Phrase why_not();

    // --- the search ---
    void begin();
    void stop();
    [[nodiscard]] State state() const { return state_; }
    [[nodiscard]] const search::Progress& progress() const { return progress_; }
    void receive(const solving::SizingNews& news);

    // --- what came of it ---
    /// One to three sentences; empty: nothing yet.
    [[nodiscard]] format::Phrase summary() const;
    /// Where nothing holds, what would have to change for the nearest miss; empty: none is known.
    [[nodiscard]] format::Phrase nearest_words() const;
    [[nodiscard]] bool has_nearest() const { return outcome_ && outcome_->nearest.has_value(); }
    /// In the order wished; by default only those no other beats.
    [[nodiscard]] const std::vector<const search::Result*>& rows() const { return rows_; }
    /// What was chosen for a result, axis by axis: `8 in by 8 in; 1/2 in; 1/2 in lag screw ...`.
    [[nodiscard]] format::Phrase choices_of(const search::Result& result) const;
    void order_by(SizeOrder order);
    [[nodiscard]] SizeOrder order() const { return order_; }
    void show_all(bool all);
    [[nodiscard]] bool shows_all() const { return all_; }
    [[nodiscard]] std::size_t holding() const { return outcome_ ? outcome_->holding.size() : 0; }

    /// Whether the results are still of the detail: it is what the search began with, or one of them.
    [[nodiscard]] bool fits() const;
    /// Makes the result in this row the session's detail, as one step that can be undone; opening another after it
    /// takes that step's place. Where the results no longer fit, nothing is done and the session says why.
    void open(std::size_t row);
    void open_nearest();
    /// The row of the detail as it stands; absent: none of them.
    [[nodiscard]] std::optional<std::size_t> opened() const;

  private:
    void put_in_order();
    void take(const model::BaseDetail& detail, const format::Phrase& step);
    void changed() const { told_(); }

    Session& session_;
    Search search_;
    std::function<void()> told_;
    std::optional<editing::RangesForm> form_;
    std::optional<search::Space> counted_;        ///< of the ranges and of the detail as they stand
    std::shared_ptr<const search::Space> space_;  ///< of the last search
    State state_ = State::idle;
    std::uint64_t number_ = 0;
    search::Progress progress_;
    std::shared_ptr<const search::Outcome> outcome_;
    format::Phrase failure_;
    std::vector<const search::Result*> rows_;
    SizeOrder order_ = SizeOrder::cost;
    bool all_ = false;
    std::optional<model::BaseDetail> opened_;  ///< what was taken last from the results
    int searches_ = 0;                         ///< so that a step merges with those of the same search only
    int listening_ = 0;
};

/// `12,960`: thousands apart, whatever the language.
[[nodiscard]] std::string thousands(search::Candidate number);

}  // namespace toehold::session
