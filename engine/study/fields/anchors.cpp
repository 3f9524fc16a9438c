// Size and length of the anchors. Groups of the same kind of fastener change together.
#include "study/fields/groups.h"

#include "model/base_detail.h"

#include <algorithm>
#include <cmath>

namespace toehold::study {
namespace {

using format::Phrase;
using format::phrase;
using model::AnchorGroup;
using model::BaseDetail;

/// A row of the catalog of sizes, and what tells it from its neighbors: `3/8` of `lag-3/8`.
struct Row {
    std::string id, name;
    double diameter_in = 0.0;
    [[nodiscard]] std::string tail() const { return id.substr(id.rfind('-') + 1); }
};

template <class CatalogRow>
std::vector<Row> rows_of(const std::vector<CatalogRow>& catalog) {
    std::vector<Row> rows;
    rows.reserve(catalog.size());
    for (const CatalogRow& row : catalog) rows.push_back({row.id, row.name, row.diameter_in});
    std::sort(rows.begin(), rows.end(),
              [](const Row& one, const Row& other) { return one.diameter_in < other.diameter_in; });
    return rows;
}

/// Sizes of the fastener's kind; none for one by its report.
std::vector<Row> rows_for(const model::Fastener& fastener, const catalog::Catalog& catalog) {
    if (std::holds_alternative<model::LagScrew>(fastener)) return rows_of(catalog.lag_screws);
    if (std::holds_alternative<model::WoodScrew>(fastener)) return rows_of(catalog.wood_screws);
    if (std::holds_alternative<model::ThroughBolt>(fastener)) return rows_of(catalog.bolts);
    return {};
}

std::string* size_of(model::Fastener& fastener) {
    if (auto* const lag = std::get_if<model::LagScrew>(&fastener)) return &lag->size;
    if (auto* const screw = std::get_if<model::WoodScrew>(&fastener)) return &screw->size;
    if (auto* const bolt = std::get_if<model::ThroughBolt>(&fastener)) return &bolt->size;
    return nullptr;
}

const Row* row_named(const std::vector<Row>& rows, const std::string& id) {
    const auto found = std::find_if(rows.begin(), rows.end(), [&id](const Row& row) { return row.id == id; });
    return found == rows.end() ? nullptr : &*found;
}

/// `washer-wide-7/16` for `washer-wide-3/8`; absent where the catalog has none such.
std::optional<std::string> washer_for(const catalog::Catalog& catalog, std::string id, const Row& before,
                                      const Row& after) {
    const std::string from = "-" + before.tail();
    const std::size_t at = id.find(from);
    if (at != std::string::npos) {
        id.replace(at, from.size(), "-" + after.tail());
        const catalog::WasherSize* const washer = catalog::find(catalog.washers, id);
        if (washer != nullptr && washer->hole_diameter_in > after.diameter_in) return id;
        return std::nullopt;
    }
    const catalog::WasherSize* const washer = catalog::find(catalog.washers, id);
    if (washer != nullptr && washer->hole_diameter_in > after.diameter_in) return id;
    return std::nullopt;
}

Phrase no_washer(const Row& after) { return phrase("no washer of the catalog goes with a {}", after.name); }

/// The hole has as much clearance as before.
void widen(model::Hole& hole, double by_in) {
    if (auto* const round = std::get_if<model::RoundHole>(&hole.shape)) round->diameter_in += by_in;
    if (auto* const slot = std::get_if<model::Slot>(&hole.shape)) {
        slot->width_in += by_in;
        slot->length_in += by_in;
    }
}

Phrase resize(const catalog::Catalog& catalog, AnchorGroup& group, const Row& before, const Row& after) {
    *size_of(group.fastener) = after.id;
    if (group.washer) {
        const auto washer = washer_for(catalog, group.washer->size, before, after);
        if (!washer) return no_washer(after);
        group.washer->size = *washer;
    }
    auto* const bolt = std::get_if<model::ThroughBolt>(&group.fastener);
    auto* const below = bolt == nullptr ? nullptr : std::get_if<model::Washer>(&bolt->below);
    if (below == nullptr) return {};
    const auto washer = washer_for(catalog, below->size, before, after);
    if (!washer) return no_washer(after);
    below->size = *washer;
    return {};
}

/// What is drilled for the group goes with it: a plate's holes. On a post's side the holes follow the fasteners anyway.
void drill_for(BaseDetail& detail, const AnchorGroup& group, double larger_by) {
    auto* const mount = std::get_if<model::PlateOnDeck>(&detail.mount);
    if (mount == nullptr) return;
    for (model::Hole& hole : mount->plate.holes) {
        if (anchor_group(detail, hole.id) == &group) widen(hole, larger_by);
    }
    if (mount->layers.packing && mount->layers.packing->hole_in > 0.0) mount->layers.packing->hole_in += larger_by;
    mount->plate_reference.reset();
}

Phrase resize_all(const catalog::Catalog& catalog, BaseDetail& detail, std::size_t kind, double diameter_in) {
    for (AnchorGroup& group : anchor_groups(detail)) {
        if (group.fastener.index() != kind) continue;
        const std::vector<Row> rows = rows_for(group.fastener, catalog);
        const Row* const before = row_named(rows, *size_of(group.fastener));
        const auto after = std::find_if(rows.begin(), rows.end(), [diameter_in](const Row& row) {
            return std::abs(row.diameter_in - diameter_in) < 1e-6;
        });
        if (before == nullptr || after == rows.end()) return phrase("the catalog has no such anchor");
        drill_for(detail, group, after->diameter_in - before->diameter_in);
        if (Phrase refusal = resize(catalog, group, *before, *after); !refusal.empty()) return refusal;
    }
    return {};
}

void add_size(FieldList& list, const Subject& subject, model::Fastener fastener) {
    const std::vector<Row> rows = rows_for(fastener, subject.catalog);
    const std::string* const size = size_of(fastener);
    const Row* const now = size == nullptr ? nullptr : row_named(rows, *size);
    if (now == nullptr) return;
    Field field;
    field.id = "anchor-size";
    field.name = phrase("anchor size");
    field.help = phrase("Next sizes of the same kind; holes keep their clearance, washers become those of the size.");
    field.now = now->diameter_in;
    const char* const before = std::holds_alternative<model::WoodScrew>(fastener) ? "No. " : "";
    for (const Row& row : rows) field.sizes.push_back({row.diameter_in, before + row.tail()});
    field.range = {rows.front().diameter_in, rows.back().diameter_in};
    field.step = 0.0;
    const std::size_t kind = fastener.index();
    add(list, std::move(field), [catalog = &subject.catalog, kind](BaseDetail& made, double value) {
        return resize_all(*catalog, made, kind, value);
    });
}

void add_length(FieldList& list, model::Fastener fastener) {
    const double* const now = screw_length_in(fastener);
    if (now == nullptr) return;
    Field field;
    field.id = "anchor-length";
    field.name = phrase("anchor length");
    field.help = phrase("Under the head. A stated length of thread stays.");
    field.now = *now;
    field.step = 0.5;
    field.range = about(*now, field.step);
    const std::size_t kind = fastener.index();
    add(list, std::move(field), [kind](BaseDetail& made, double value) {
        for (AnchorGroup& group : anchor_groups(made)) {
            if (group.fastener.index() == kind) *screw_length_in(group.fastener) = value;
        }
        return Phrase();
    });
}

}  // namespace

double* screw_length_in(model::Fastener& fastener) {
    if (auto* const lag = std::get_if<model::LagScrew>(&fastener)) return &lag->length_in;
    if (auto* const screw = std::get_if<model::WoodScrew>(&fastener)) return &screw->length_in;
    return nullptr;
}

void add_anchor_fields(FieldList& list, const Subject& subject) {
    const std::vector<AnchorGroup>& groups = anchor_groups(subject.resolved.detail);
    if (groups.empty()) return;
    add_size(list, subject, groups.front().fastener);
    add_length(list, groups.front().fastener);
}

}  // namespace toehold::study
