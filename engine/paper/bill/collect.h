#pragma once
// Items of a bill gathered, those alike added up.
#include "paper/bill/bill.h"

namespace toehold::paper::bill {

class Collected {
  public:
    /// Added to the item of the same kind, name, material, length and weight, where there is one.
    void add(BillItem item);
    [[nodiscard]] std::vector<BillItem> items() const;  ///< by kind, in the order they came

  private:
    std::vector<BillItem> items_;
};

// bill_metal.cpp
/// One post with its plate, what is under it, anchors and washers.
void add_post(Collected& all, const review::ResolvedPost& post, units::System system);

// bill_wood.cpp
/// The blocks of the whole framing, and what holds the ends of blocks and joists. `resolved`: any post's, whose members
/// have the same woods as the project's.
void add_framing(Collected& all, const model::Framing& framing, const catalog::Resolved& resolved,
                 units::System system);
/// Ends of blocks, and lines of joist ends, of which the file says no connection.
[[nodiscard]] std::size_t ends_not_specified(const model::Framing& framing);

}  // namespace toehold::paper::bill
