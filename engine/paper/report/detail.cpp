// What the file describes, drawn and in words.
#include "paper/report/described.h"
#include "paper/report/sections.h"
#include "paper/report/side/described_side.h"
#include "review/review.h"

namespace toehold::paper::report {
namespace {

using format::Locale;
using format::Phrase;
using format::phrase;

class PartsTable {
  public:
    explicit PartsTable(const Locale& locale) : locale_(locale) {
        table_.columns = {{written(phrase("part"), locale), 0.2}, {written(phrase("as specified"), locale), 0.8}};
    }
    void add(const Phrase& part, const Phrase& words) {
        table_.rows.push_back({{written(part, locale_), true}, words_cell(written(words, locale_))});
    }
    [[nodiscard]] Table take() { return std::move(table_); }

  private:
    const Locale& locale_;
    Table table_;
};

void add_framing(PartsTable& table, const catalog::Resolved& resolved, const Locale& locale) {
    const model::Framing& framing = resolved.detail.framing;
    if (framing.joists) table.add(phrase("Joists"), joists_words(resolved));
    for (std::size_t rim = 0; rim < framing.rims.size(); ++rim)
        table.add(phrase("Rim {}", framing.rims[rim].id), rim_words(resolved, rim));
    for (const model::JoistSupport& support : framing.supports)
        table.add(phrase("Support {}", support.id), support_words(support));
    for (std::size_t block = 0; block < framing.blocks.size(); ++block)
        table.add(phrase("Block {}", framing.blocks[block].id), block_words(resolved, block));
    for (const Alike& ends : block_ends_alike(framing, locale))
        table.add(phrase("Ends"), phrase("{}: {}", listed(ends.ids), ends.words));
    if (!framing.joists && framing.blocks.empty() && framing.rims.empty())
        table.add(phrase("Framing"), phrase("none specified"));
    table.add(phrase("Lumber"), framing.preservative_treated ? phrase("preservative treated") : phrase("not treated"));
}

void add_plate_on_deck(PartsTable& table, const catalog::Resolved& resolved, const Locale& locale) {
    table.add(phrase("Post"), post_words(resolved));
    table.add(phrase("Weld"), weld_words(resolved));
    table.add(phrase("Plate"), plate_words(resolved));
    for (const Alike& holes : holes_alike(on_deck(resolved.detail).plate, locale)) {
        table.add(holes.ids.size() == 1 ? phrase("Hole {}", holes.ids.front()) : phrase("Holes {}", listed(holes.ids)),
                  format::verbatim(holes.words));
    }
}

/// What is the mount's own, from the post to the anchors' places.
void add_mount(PartsTable& table, const catalog::Resolved& resolved, const Locale& locale) {
    switch (kind(resolved.detail.mount)) {
        case model::MountKind::plate_on_deck:
            return add_plate_on_deck(table, resolved, locale);
        case model::MountKind::side_fastened:
            for (const auto& [part, words] : side_described(resolved)) table.add(part, words);
            return;
    }
}

/// Where places are counted from.
Phrase axes_words(const model::BaseDetail& detail) {
    if (kind(detail.mount) == model::MountKind::plate_on_deck)
        return phrase(
            "Places are from the center of the post on the underside of the plate: x along the rail, y outward, z "
            "up. The direction of a push is counted from x toward y: 90 deg is outward.");
    return phrase(
        "Places are from the axis of the post at the height of the member's top edge: x along the rail, y outward, z "
        "up. The direction of a push is counted from x toward y: 90 deg is outward.");
}

Table parts_table(const catalog::Resolved& resolved, const Locale& locale) {
    PartsTable table(locale);
    table.add(phrase("Guard"), guard_words(resolved.detail));
    add_mount(table, resolved, locale);
    for (const Alike& anchors : anchors_alike(resolved, locale)) {
        table.add(anchors.ids.size() == 1 ? phrase("Anchor {}", anchors.ids.front())
                                          : phrase("Anchors {}", listed(anchors.ids)),
                  format::verbatim(anchors.words));
    }
    table.add(phrase("Decking"), decking_words(resolved));
    add_framing(table, resolved, locale);
    return table.take();
}

}  // namespace

void add_detail(Blocks& blocks, const Source& source) {
    blocks.emplace_back(section(2, phrase("The detail"), "detail", source.locale()));
    blocks.emplace_back(paragraph(source.text(axes_words(source.review.resolved.detail))));
    add_detail_figures(blocks, source);
    blocks.emplace_back(parts_table(source.review.resolved, source.locale()));
}

}  // namespace toehold::paper::report
