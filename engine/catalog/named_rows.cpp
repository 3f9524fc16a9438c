#include "catalog/named_rows.h"

#include <variant>

namespace toehold::catalog {
namespace {

class Rows {
  public:
    template <class Row>
    void add(const Row& row) {
        rows_.push_back({row.name, row.source});
    }
    template <class Row>
    void add(const std::optional<Row>& row) {
        if (row) add(*row);
    }
    void add_anchor(const Anchor& anchor) {
        rows_.push_back({anchor.name, anchor.size_source});
        if (!anchor.metal.id.empty()) add(anchor.metal);
        add(anchor.bolt_grade);
        add(anchor.washer);
        add(anchor.washer_below);
        add(anchor.backing_metal);
        add(anchor.head_plate_metal);
    }
    void add_wood(const MemberMaterial& wood) {
        add(wood.species);
        rows_.push_back({wood.species.name + ", " + wood.grade.name, wood.grade.source});
    }
    void add_mount(const PlateOnDeck& mount) {
        add(mount.plate_metal);
        add(mount.filler);
        add(mount.decking);
        for (const DeckingMaterial& shim : mount.shims) add(shim);
        add(mount.packing);
    }
    void add_mount(const SideFastened& mount) {
        for (const DeckingMaterial& layer : mount.layers) add(layer);
        add(mount.decking);
        add(mount.bracket_metal);
        add(mount.filler);
    }
    [[nodiscard]] std::vector<NamedRow> rows() && { return std::move(rows_); }

  private:
    std::vector<NamedRow> rows_;
};

}  // namespace

std::vector<NamedRow> named_rows(const Resolved& resolved) {
    Rows rows;
    if (!resolved.post_metal.id.empty()) rows.add(resolved.post_metal);
    rows.add(resolved.stub_metal);
    rows.add(resolved.post_species);
    rows.add(resolved.post_grade);
    std::visit([&rows](const auto& mount) { rows.add_mount(mount); }, resolved.mount);
    for (const Anchor& anchor : resolved.anchors) rows.add_anchor(anchor);
    for (const MemberMaterial& wood : resolved.blocks) rows.add_wood(wood);
    if (resolved.joists) rows.add_wood(*resolved.joists);
    for (const MemberMaterial& wood : resolved.rims) rows.add_wood(wood);
    for (const auto& [id, metal] : resolved.angle_metals) rows.add(metal);
    return std::move(rows).rows();
}

}  // namespace toehold::catalog
