// What the file describes, drawn and in words.
#include "paper/report/described.h"
#include "paper/report/sections.h"

namespace toehold::paper::report {
namespace {

using units::System;

class PartsTable {
  public:
    PartsTable() { table_.columns = {{"part", 0.2}, {"as described", 0.8}}; }
    void add(std::string part, std::string words) {
        table_.rows.push_back({{std::move(part), true}, words_cell(std::move(words))});
    }
    [[nodiscard]] Table take() { return std::move(table_); }

  private:
    Table table_;
};

std::string several(const std::string& one, const std::vector<std::string>& ids) {
    return (ids.size() == 1 ? one + " " : one + "s ") + listed(ids);
}

void add_framing(PartsTable& table, const catalog::Resolved& resolved, System system) {
    const model::Framing& framing = resolved.detail.framing;
    if (framing.joists) table.add("Joists", joists_words(resolved, system));
    for (std::size_t rim = 0; rim < framing.rims.size(); ++rim)
        table.add("Rim " + framing.rims[rim].id, rim_words(resolved, rim, system));
    for (const model::JoistSupport& support : framing.supports)
        table.add("Support " + support.id, support_words(support, system));
    for (std::size_t block = 0; block < framing.blocks.size(); ++block)
        table.add("Block " + framing.blocks[block].id, block_words(resolved, block, system));
    for (const Alike& ends : block_ends_alike(framing, system)) table.add("Ends", listed(ends.ids) + ": " + ends.words);
    if (!framing.joists && framing.blocks.empty() && framing.rims.empty()) table.add("Framing", "none described");
    table.add("Lumber", framing.preservative_treated ? "preservative treated" : "not treated");
}

Table parts_table(const catalog::Resolved& resolved, System system) {
    PartsTable table;
    table.add("Guard", guard_words(resolved.detail, system));
    table.add("Post", post_words(resolved, system));
    table.add("Weld", weld_words(resolved, system));
    table.add("Plate", plate_words(resolved, system));
    for (const Alike& holes : holes_alike(on_deck(resolved.detail).plate, system))
        table.add(several("Hole", holes.ids), holes.words);
    for (const Alike& anchors : anchors_alike(resolved, system))
        table.add(several("Anchor", anchors.ids), anchors.words);
    table.add("Decking", decking_words(resolved, system));
    add_framing(table, resolved, system);
    return table.take();
}

}  // namespace

void add_detail(Blocks& blocks, const Source& source) {
    blocks.emplace_back(Heading{1, "2  The detail", "detail"});
    blocks.emplace_back(
        paragraph("Places are from the post's centre on the plate's underside: x along the rail, y outward, z up. A "
                  "direction of push is counted from x towards y: 90 deg is outward."));
    add_detail_figures(blocks, source);
    blocks.emplace_back(parts_table(source.review.resolved, source.issue.system));
}

}  // namespace toehold::paper::report
