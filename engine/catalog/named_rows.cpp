#include "catalog/named_rows.h"

#include <stdexcept>

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
    [[nodiscard]] std::vector<NamedRow> rows() && { return std::move(rows_); }

  private:
    std::vector<NamedRow> rows_;
};

void add_mount(Rows& rows, const Resolved& resolved) {
    switch (kind(resolved.detail.mount)) {
        case model::MountKind::plate_on_deck:
            return rows.add_mount(on_deck(resolved));
    }
    throw std::logic_error("a mount of no kind");
}

}  // namespace

std::vector<NamedRow> named_rows(const Resolved& resolved) {
    Rows rows;
    rows.add(resolved.post_metal);
    rows.add(resolved.stub_metal);
    rows.add(resolved.post_species);
    rows.add(resolved.post_grade);
    add_mount(rows, resolved);
    for (const Anchor& anchor : resolved.anchors) rows.add_anchor(anchor);
    for (const MemberMaterial& wood : resolved.blocks) rows.add_wood(wood);
    if (resolved.joists) rows.add_wood(*resolved.joists);
    for (const MemberMaterial& wood : resolved.rims) rows.add_wood(wood);
    for (const auto& [id, metal] : resolved.angle_metals) rows.add(metal);
    return std::move(rows).rows();
}

}  // namespace toehold::catalog
